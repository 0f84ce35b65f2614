import type { Calculator } from './calculator.ts';
import type { Value, Values } from './formula/evaluate.ts';
import { namesBehind } from './dependencies.ts';
import { namesIn } from './formula/tree.ts';
import { solve, type Solvable } from './solve.ts';

type Sweepable = Solvable & Pick<Calculator, 'given'>;

export interface Sweep {
  /** Values of the given, in SI. */
  readonly at: readonly number[];
  /** The result at each; NaN where the inputs are refused. */
  readonly values: readonly Value[];
}

/**
 * How results change with one given, all others held.
 * @param inputs SI values of all givens.
 * @param points how many values, both ends counted.
 * @returns one sweep for each result.
 */
export function sweep<const Names extends readonly string[]>(
  calculator: Sweepable,
  inputs: Values,
  given: string,
  [from, to]: readonly [number, number],
  results: Names,
  points: number,
): { readonly [K in keyof Names]: Sweep } {
  const { held, moved } = parted(cutTo(calculator, results), given);
  const still = solve(held, inputs);
  const at = Array.from({ length: points }, (_, k) => from + ((to - from) * k) / (points - 1));
  const all = at.map((x) => {
    const { values, refusal } = solve(moved, { ...still.values, [given]: x });
    return still.refusal || refusal ? {} : values;
  });
  const of = (result: string): Sweep => ({ at, values: all.map((values: Values) => values[result] ?? NaN) });
  return results.map(of) as { readonly [K in keyof Names]: Sweep };
}

/** The steps that a given does not move are worked once, and the others for each of its values. */
function parted({ steps, requires }: Solvable, given: string): { readonly held: Solvable; readonly moved: Solvable } {
  const moving = new Set([given]);
  for (const step of steps) if (namesBehind(step).some((name) => moving.has(name))) moving.add(step.name);
  const of = (moves: boolean): Solvable['steps'] => steps.filter(({ name }) => moving.has(name) === moves);
  return { held: { steps: of(false), requires: [] }, moved: { steps: of(true), requires } };
}

/** The steps that results and the requirements depend on, in order. */
function cutTo(calculator: Sweepable, results: readonly string[]): Solvable {
  const wanted = new Set([...results, ...calculator.requires.flatMap((one) => namesIn(one.holds))]);
  const steps = [...calculator.steps].reverse().filter((step) => {
    if (!wanted.has(step.name)) return false;
    for (const name of namesBehind(step)) wanted.add(name);
    return true;
  });
  return { steps: steps.reverse(), requires: calculator.requires };
}
