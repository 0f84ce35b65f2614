import type { Calculator, Caution, Given, Step } from './calculator.ts';

/** A calculator as a page needs it: what is solved and printed, without the prose. */
export interface Program {
  readonly id: string;
  readonly edition: number;
  readonly given: readonly Given[];
  readonly steps: readonly Step[];
  readonly results: readonly string[];
  readonly requires: Calculator['requires'];
  readonly cautions: readonly Caution[];
}

/** The program of a calculator, ready for JSON. */
export const programOf = ({ id, edition, given, steps, results, requires, cautions }: Calculator): Program => ({
  id,
  edition,
  given,
  steps: steps.map((step): Step => {
    const { why, ...rest } = step;
    return 'formula' in rest ? { ...rest, formula: '' } : rest;
  }),
  results,
  requires,
  cautions,
});
