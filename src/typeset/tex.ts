import katex from 'katex';

/**
 * The HTML of a formula: the visible half and the MathML half that a screen reader hears. A formula KaTeX cannot set
 * fails the build.
 */
export const renderTex = (tex: string, display = false): string =>
  katex
    .renderToString(`\\displaystyle ${tex}`, {
      displayMode: display,
      output: 'htmlAndMathml',
      strict: 'error',
      throwOnError: true,
    })
    .replace(/<annotation[^>]*>[^]*?<\/annotation>/g, '');
