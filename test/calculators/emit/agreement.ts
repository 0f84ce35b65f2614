import { expect } from 'vitest';
import type { Calculator } from '../../../calculators/calculator.ts';
import type { Value } from '../../../calculators/formula/evaluate.ts';
import { solve } from '../../../calculators/solve.ts';
import type { Point } from './points.ts';
import { boundsOf, type BoundedValues, type Rounding } from './rounding.ts';

/** What written code says at a point: a number or list for each result, or nothing where it refuses. */
export type Answer = Readonly<Record<string, Value>> | undefined;

/** What answers are held against; numbers are shares of the size of a result. */
export interface Measure {
  readonly rounding: Rounding;
  /** A larger bound is loose: the comparison proves little. */
  readonly wanted: number;
  /** No more is asked, however small the bound. */
  readonly enough: number;
}

export interface Tally {
  compared: number;
  loose: number;
  /** Numbers without a bound, and points at which it cannot be told whether there is a result. */
  open: number;
  readonly wrong: string[];
}

/**
 * Holds answers against ours. Nothing is skipped: every number must be within the bound of the error analysis, or within
 * what is enough.
 */
export function judge(
  calculator: Calculator,
  points: readonly Point[],
  answers: readonly Answer[],
  measure: Measure,
): Tally {
  const tally: Tally = { compared: 0, loose: 0, open: 0, wrong: [] };
  expect(answers).toHaveLength(points.length);
  points.forEach((point, k) => judgePoint(calculator, point, answers[k], measure, tally));
  return tally;
}

function judgePoint(
  calculator: Calculator,
  point: Point,
  answer: Answer,
  { rounding, wanted, enough }: Measure,
  tally: Tally,
): void {
  const { values, refusal } = solve(calculator, point);
  const found = rounding.bounds(calculator, point);
  const at = ` at ${JSON.stringify(point)}`;
  if ((refusal === undefined) !== (answer !== undefined)) {
    if (isOpen(calculator, found, rounding)) tally.open++;
    else tally.wrong.push(`refused by ${answer ? 'us' : 'the code'} alone${at}`);
  }
  if (refusal || !answer) return;
  for (const name of calculator.results) {
    const want = [values[name] ?? NaN].flat();
    const got = [answer[name] ?? NaN].flat();
    const size = Math.max(...want.map(Math.abs));
    expect(got).toHaveLength(want.length);
    boundsOf(found[name] ?? []).forEach(({ e }, i) => {
      tally.compared++;
      if (!(e < Infinity)) tally.open++;
      else if (e > wanted * size) tally.loose++;
      const off = Math.abs((got[i] ?? NaN) - (want[i] ?? NaN));
      if (!(off <= Math.max(e, enough * size))) tally.wrong.push(`${name}: ${got[i]} for ${want[i]} ± ${e}${at}`);
    });
  }
}

/** Whether rounding leaves it open that there is a result. */
const isOpen = (calculator: Calculator, found: BoundedValues, rounding: Rounding): boolean =>
  calculator.steps.some(({ name }) => boundsOf(found[name] ?? []).some(({ e }) => !(e < Infinity))) ||
  calculator.requires.some(({ holds }) => boundsOf(rounding.formula(holds, found)).some(({ e }) => e > 0));

/** Among inputs as a workbench has them answers are right, and seldom loose or open, so that the comparison means something. */
export function expectSharp(tally: Tally, most: { readonly loose: number; readonly open: number }): void {
  expect(tally.wrong).toEqual([]);
  expect(tally.compared).toBeGreaterThan(20);
  expect(tally.loose).toBeLessThanOrEqual(most.loose * tally.compared);
  expect(tally.open).toBeLessThanOrEqual(most.open * tally.compared);
}

/** What differs at points where terms cancel but for rounding: there answers must be ours, whatever a bound allows. */
export function tipped(
  calculator: Calculator,
  points: readonly Point[],
  answers: readonly Answer[],
  within: number,
): string[] {
  expect(answers).toHaveLength(points.length);
  return points.flatMap((point, k) => {
    const { values } = solve(calculator, point);
    return calculator.results.flatMap((name) => {
      const want = [values[name] ?? NaN].flat();
      const got = [answers[k]?.[name] ?? NaN].flat();
      const same = want.every((x, i) => Math.abs((got[i] ?? NaN) - x) <= within);
      return same ? [] : [`${name}: ${got.join()} for ${want.join()} at ${JSON.stringify(point)}`];
    });
  });
}
