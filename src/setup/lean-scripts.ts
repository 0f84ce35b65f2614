import type { Plugin } from 'vite';

/** Vite's name for what it wraps every `import()` in. */
const PRELOAD_HELPER = '\0vite/preload-helper.js';
const UNITS_IN_PAGE = `export const quantities = [...document.querySelectorAll('[data-units]')]
  .flatMap((script) => JSON.parse(script.textContent));`;
const FIGURE_PARTS = /\/src\/figures\/(?:svg|values|robot|turn-arrow|key)\.ts$/;
const UNIT_TABLE = /\/calculators\/quantity\/unit-table\.ts$/;
/** The script of a calculator and all that it stands on. */
const CALCULATOR = /\/src\/live\/calculator-element\.ts$|\/Calculator\.astro\?.*type=script/;

/**
 * Scripts as small as may be: no code that looks for stylesheets and scripts to fetch beside a fetched script, for there are
 * no such stylesheets and the scripts are small; few files, which compress better; and of the table of units no more than
 * the page has in it, where `PageUnits.astro` left it.
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
      if (id === PRELOAD_HELPER) return 'export const __vitePreload = (load) => load();';
      return this.environment.name === 'client' && UNIT_TABLE.test(id) ? UNITS_IN_PAGE : undefined;
    },
  };
}
