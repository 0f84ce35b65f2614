import type { Calculator, Caution, FormulaStep, Given, Step } from './calculator.ts';

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

const bare = ({ why, brief, ...rest }: FormulaStep): FormulaStep => ({ ...rest, means: '', formula: '' });

/** The program of a calculator, ready for JSON. */
export const programOf = ({ id, edition, given, steps, results, requires, cautions }: Calculator): Program => ({
  id,
  edition,
  given,
  steps: steps.map((step): Step => {
    const { why, ...rest } = step;
    if (rest.kind === 'look-up') return rest;
    // What a root is worked out by stands with its words as steps of its own.
    if (rest.kind === 'root' && rest.by) return { ...rest, formula: '', by: rest.by.map(bare) };
    return { ...rest, formula: '' };
  }),
  results,
  requires,
  cautions,
});
