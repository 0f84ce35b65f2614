import type { Calculator, LookUpStep, RootStep, Step } from './calculator.ts';
import { evaluate, evaluateNumber, type Value, type Values } from './formula/evaluate.ts';

/** A calculator cut down to what solving needs; a whole `Calculator` is one. */
export type Solvable = Pick<Calculator, 'steps' | 'requires'>;

/** Why there is no result: the given to look at, and a sentence with `{name in unit}` still to be filled. */
export interface Refusal {
  readonly given?: string;
  readonly says: string;
}

export interface Solution {
  /** SI values of givens and steps. With a refusal, not to be shown. */
  readonly values: Values;
  readonly refusal?: Refusal;
}

export type RootFinder = (step: RootStep, values: Values) => Value;

let findRootBy: RootFinder = () => NaN;

/** What finds a root through further steps: few calculators have one, so a page fetches it only when it must. */
export function useRootFinder(finder: RootFinder): void {
  findRootBy = finder;
}

/**
 * Works a calculator through.
 * @param inputs an SI value for every given, within its range.
 */
export function solve(calculator: Solvable, inputs: Values): Solution {
  const values: Record<string, Value> = { ...inputs };
  let missing: Refusal | undefined;
  for (const step of calculator.steps) {
    const value = stepValue(step, values);
    values[step.name] = value;
    if (!missing && ![value].flat().every(Number.isFinite)) missing = { says: noResult(step) };
  }
  const broken = calculator.requires.find((one) => evaluate(one.holds, values) !== 1);
  const refusal = broken ?? missing;
  return refusal ? { values, refusal } : { values };
}

const noResult = (step: Step): string =>
  `There is no ${step.means} for these values: the formula has no finite result.`;

function stepValue(step: Step, values: Values): Value {
  switch (step.kind) {
    case 'formula':
      return evaluate(step.tree, values);
    case 'root':
      return step.by ? findRootBy(step, values) : findRoot(step, values);
    case 'look-up':
      return lookUp(step, values);
  }
}

const halvings = 100;

/** NaN when the two ends do not bracket a root. */
function findRoot(step: RootStep, values: Values): number {
  const target = Number(values[step.target]);
  const miss = (x: number): number => evaluateNumber(step.tree, { ...values, [step.name]: x }) - target;
  let low = evaluateNumber(step.from, values);
  let high = evaluateNumber(step.to, values);
  const missLow = miss(low);
  if (missLow === 0) return low;
  if (!(missLow * miss(high) <= 0)) return NaN;
  for (let k = 0; k < halvings; k++) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (miss(middle) * missLow > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** NaN outside the table. */
function lookUp(step: LookUpStep, values: Values): Value {
  const at = evaluate(step.at, values);
  return typeof at === 'number' ? readTable(step, at) : at.map((one) => readTable(step, one));
}

function readTable({ table }: LookUpStep, at: number): number {
  const above = table.rows.findIndex(([row]) => row >= at - 1e-9 * Math.abs(at));
  const [high, highValue] = table.rows[above] ?? [NaN, NaN];
  if (Math.abs(high - at) <= 1e-9 * Math.abs(at)) return highValue;
  if (table.between === 'rows only') return NaN;
  const [low, lowValue] = table.rows[above - 1] ?? [NaN, NaN];
  return lowValue + ((highValue - lowValue) * (at - low)) / (high - low);
}
