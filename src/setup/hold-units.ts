import type { Plugin } from 'vite';
import { holdUnits } from '../typeset/hold-units.ts';

/** Numbers keep their units in the prose of lessons. In what is typed as an input such a space reads as any other. */
export function holdUnitsInLessons(): Plugin {
  return {
    name: 'hold-units',
    enforce: 'pre',
    transform: (code, id) => (/\/content\/lessons\/.*\.mdx$/.test(id) ? holdUnits(code) : undefined),
  };
}
