import type { Value } from '../../calculators/formula/evaluate.ts';
import { inUnit } from '../../calculators/line.ts';
import { substituted, type Working, type WorkedStep } from '../../calculators/work.ts';
import { addressOf } from './address.ts';

interface Measured {
  readonly value: Value;
  readonly unit: string;
  readonly si: Value;
  /** The ±, in the unit; only where there is one. */
  readonly spread?: Value;
}

/** A piece of working as JSON; a value that differs from wheel to wheel is a list. */
export function asJson(working: Working): string {
  const { calculator } = working;
  const results = working.steps.filter(({ step }) => calculator.results.includes(step.name));
  return JSON.stringify(
    {
      calculator: calculator.id,
      version: calculator.edition,
      given: Object.fromEntries(working.given.map(({ given, entry, si }) => [given.name, { ...entry, si }])),
      results: Object.fromEntries(results.map((worked) => [worked.step.name, measured(worked)])),
      steps: working.steps.map(stepJson),
      cautions: working.cautions,
      link: addressOf(working),
    },
    null,
    2,
  );
}

const measured = ({ step, value, spread }: WorkedStep): Measured => ({
  value: inUnit(value, step.quantity, step.unit),
  unit: step.unit,
  si: value,
  ...(spread ? { spread: inUnit(spread.spread, step.quantity, step.unit) } : {}),
});

function stepJson(worked: WorkedStep): object {
  const { step, line, rows } = worked;
  const { value, unit } = measured(worked);
  const lines = line ? rows.map((row) => substituted(line, row)) : [];
  return {
    symbol: step.name,
    means: step.means,
    formula: step.kind === 'look-up' ? step.table.title : step.formula,
    substituted: step.list ? lines : (lines[0] ?? ''),
    value,
    unit,
  };
}
