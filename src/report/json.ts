import type { Value } from '../../calculators/formula/evaluate.ts';
import { inUnit } from '../../calculators/line.ts';
import { substituted, type Working, type WorkedStep } from '../../calculators/work.ts';
import { addressOf } from './address.ts';

interface Measured {
  readonly value: Value;
  readonly unit: string;
  readonly si: Value;
}

/** A piece of working as JSON; a value that differs from wheel to wheel is a list. */
export function asJson(working: Working): string {
  const { calculator } = working;
  const results = working.steps.filter(({ step }) => calculator.results.includes(step.name));
  return JSON.stringify(
    {
      calculator: calculator.id,
      version: calculator.edition,
      given: Object.fromEntries(
        working.given.map(({ given, entry, si }) => [given.name, { value: entry.value, unit: entry.unit, si }]),
      ),
      results: Object.fromEntries(results.map((worked) => [worked.step.name, measured(worked)])),
      steps: working.steps.map(stepJson),
      cautions: working.cautions,
      link: addressOf(working),
    },
    null,
    2,
  );
}

const measured = ({ step, value }: WorkedStep): Measured => ({
  value: inUnit(value, step.quantity, step.unit),
  unit: step.unit,
  si: value,
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
