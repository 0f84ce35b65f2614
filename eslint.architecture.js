import { builtinModules } from 'node:module';

/** @typedef {import('eslint').Linter.Config} Config */

/** The rules that keep the arrows between folders one way, and the output free of chance, clock and locale. */

const DEEPEST = 4;
const DEPTHS = Array.from({ length: DEEPEST + 1 }, (_, depth) => depth);
const SOURCES = '{ts,js,mjs,astro}';

/** @param {string} folder @param {number} depth */
const filesAt = (folder, depth) => `${folder}/${'*/'.repeat(depth)}*.${SOURCES}`;

/** A path that leaves the top folder, seen from a file `depth` folders below it.
 * @param {number} depth */
const leavingFrom = (depth) => `^(\\.\\./){${depth + 1}}`;

const PACKAGE = '^[^.]';
const NODE_BUILT_IN = `^(node:|(${builtinModules.join('|')})(/|$))`;

const ANY_DYNAMIC_IMPORT = { selector: 'ImportExpression', message: 'This folder imports statically only.' };
const KATEX_OR_NODE_ON_DEMAND = {
  selector: 'ImportExpression[source.value=/^(katex|node:)/]',
  message: 'What runs in the reader’s browser needs neither KaTeX nor Node.',
};
const LOCALE_METHOD = {
  selector: 'MemberExpression[property.name=/^(toLocale|localeCompare)/]',
  message: 'Output must not depend on the locale.',
};

/** @type {import('eslint').Linter.RulesRecord} */
const NO_CHANCE_CLOCK_OR_LOCALE = {
  'no-restricted-globals': [
    'error',
    { name: 'Date', message: 'Output must not depend on the clock.' },
    { name: 'Intl', message: 'Output must not depend on the locale.' },
  ],
  'no-restricted-properties': [
    'error',
    { object: 'Math', property: 'random', message: 'Output must not depend on chance.' },
  ],
};

/**
 * @param {...{ regex: string, message: string, allowTypeImports?: boolean }} patterns
 * @returns {import('eslint').Linter.RulesRecord}
 */
const mayNotImport = (...patterns) => ({ '@typescript-eslint/no-restricted-imports': ['error', { patterns }] });

/** @type {Config} */
const reproducible = {
  name: 'architecture/reproducible',
  files: [`{calculators,src}/**/*.${SOURCES}`],
  ignores: ['src/setup/**'],
  rules: { ...NO_CHANCE_CLOCK_OR_LOCALE, 'no-restricted-syntax': ['error', LOCALE_METHOD] },
};

/** @type {Config[]} */
const calculators = DEPTHS.map((depth) => ({
  name: `architecture/calculators/${depth}`,
  files: [filesAt('calculators', depth)],
  rules: {
    ...mayNotImport(
      { regex: PACKAGE, message: 'calculators/ is a pure core: no package and no Node built-in.' },
      { regex: leavingFrom(depth), message: 'calculators/ looks at nothing above it.' },
    ),
    'no-restricted-syntax': ['error', LOCALE_METHOD, ANY_DYNAMIC_IMPORT],
  },
}));

/** @type {Config[]} */
const figures = DEPTHS.map((depth) => ({
  name: `architecture/figures/${depth}`,
  files: [filesAt('src/figures', depth)],
  rules: {
    ...mayNotImport(
      { regex: PACKAGE, message: 'src/figures/ draws with calculators/quantity/ and itself only.' },
      {
        regex: `${leavingFrom(depth)}(?!\\.\\./calculators/quantity/)`,
        message: 'src/figures/ draws with calculators/quantity/ and itself only.',
      },
    ),
    'no-restricted-syntax': ['error', LOCALE_METHOD, ANY_DYNAMIC_IMPORT],
  },
}));

/** @type {Config} */
const live = {
  name: 'architecture/live',
  files: [`src/live/**/*.${SOURCES}`],
  rules: {
    ...mayNotImport(
      { regex: '^katex(/|$)', message: 'Formulas are set when the site is built, not in the browser.' },
      { regex: NODE_BUILT_IN, message: 'src/live/ runs in the browser.' },
      {
        regex: '^@observablehq/plot(/|$)',
        message: 'Load Plot on demand: await import("@observablehq/plot").',
        allowTypeImports: true,
      },
    ),
    'no-restricted-syntax': ['error', LOCALE_METHOD, KATEX_OR_NODE_ON_DEMAND],
  },
};

export default [reproducible, ...calculators, ...figures, live];
