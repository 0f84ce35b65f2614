import type { Plugin } from 'vite';

/** Vite's name for what it wraps every `import()` in. */
const PRELOAD_HELPER = '\0vite/preload-helper.js';
const FIGURE_PARTS = /\/src\/figures\/(?:svg|values|robot|turn-arrow|key)\.ts$/;
/** The script of a calculator and all that it stands on. */
const CALCULATOR = /\/src\/live\/calculator-element\.ts$|\/Calculator\.astro\?.*type=script/;

/**
 * Scripts as small as may be: no code that looks for stylesheets and scripts to fetch beside a fetched script, for there are
 * no such stylesheets and the scripts are small; and few files, which compress better.
 */
export function leanScripts(): Plugin {
  return {
    name: 'lean-scripts',
    enforce: 'pre',
    apply: 'build',
    configEnvironment(name) {
      if (name !== 'client') return undefined;
      const groups = [
        { name: 'figure-parts', test: FIGURE_PARTS },
        { name: 'calculator', test: CALCULATOR },
      ];
      return {
        build: {
          modulePreload: false,
          rolldownOptions: { output: { codeSplitting: { groups }, chunkFileNames: '_astro/[hash:6].js' } },
        },
      };
    },
    load(id) {
      return id === PRELOAD_HELPER ? 'export const __vitePreload = (load) => load();' : undefined;
    },
  };
}
