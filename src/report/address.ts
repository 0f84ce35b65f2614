import type { Entries } from '../../calculators/inputs.ts';
import { toQuery } from '../../calculators/permalink.ts';
import type { Working } from '../../calculators/work.ts';

/** The inputs of a piece of working. */
export const entriesOf = (working: Working): Entries =>
  Object.fromEntries(working.given.map(({ given, entry }) => [given.name, entry]));

/** Where a piece of working lives on the site. */
export const addressOf = (working: Working): string =>
  `/calculators/${working.calculator.id}/?${toQuery(working.calculator, entriesOf(working))}`;
