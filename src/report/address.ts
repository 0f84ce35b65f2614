import { toQuery } from '../../calculators/permalink.ts';
import type { Working } from '../../calculators/work.ts';

/** Where a piece of working lives on the site. */
export const addressOf = (working: Working): string => {
  const entries = Object.fromEntries(working.given.map(({ given, entry }) => [given.name, entry]));
  return `/calculators/${working.calculator.id}/?${toQuery(working.calculator, entries)}`;
};
