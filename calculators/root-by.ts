import type { RootStep } from './calculator.ts';
import { closeIn } from './close-in.ts';
import { namesBehind } from './dependencies.ts';
import { compile, needsList, type Run } from './formula/compile.ts';
import { evaluate, evaluateNumber, type Value, type Values } from './formula/evaluate.ts';

/** How far each wheel's trial value is off. */
type MissAt = (trials: readonly number[]) => readonly number[];

/** Finds a root through the steps its formula is worked out by; wheel by wheel where those are lists. */
export function findRootBy(step: RootStep, values: Values): Value {
  const wheels = step.list ? lengthOfLists(step, values) : 1;
  const [low = [], high = []] = [step.from, step.to].map((end) =>
    Array<number>(wheels).fill(evaluateNumber(end, values)),
  );
  const chain = chainOf(step);
  const found = closeIn(chain ? missOfChain(chain, step, values, wheels) : missOfSteps(step, values), low, high);
  return step.list ? found : (found[0] ?? NaN);
}

/** The lists it is worked out from are of one length; what is summed up of others is one number by then. */
function lengthOfLists(step: RootStep, values: Values): number {
  const lists = namesBehind(step).map((name) => values[name] ?? NaN);
  return Math.max(...lists.map((value) => (typeof value === 'number' ? 0 : value.length)));
}

function missOfSteps({ name, by = [], tree, list, target }: RootStep, values: Values): MissAt {
  const goal = Number(values[target]);
  return (trials) => {
    const tried: Record<string, Value> = { ...values, [name]: list ? trials : (trials[0] ?? NaN) };
    for (const one of by) tried[one.name] = evaluate(one.tree, tried);
    return [evaluate(tree, tried)].flat().map((got) => got - goal);
  };
}

/** The steps made ready: a row holds what they start from, then the trial value, then what comes of it. */
interface Chain {
  readonly starts: readonly string[];
  readonly runs: readonly Run[];
}

const chains = new WeakMap<RootStep, Chain | null>();

/** A chain made once for a root; none where a step needs a whole list. */
function chainOf(step: RootStep): Chain | null {
  const known = chains.get(step);
  if (known !== undefined) return known;
  const by = step.by ?? [];
  const trees = [...by.map(({ tree }) => tree), step.tree];
  const starts = namesBehind(step);
  const row = [...starts, step.name, ...by.map(({ name }) => name)];
  const chain = trees.some(needsList)
    ? null
    : { starts, runs: trees.map((tree) => compile(tree, (name) => row.indexOf(name))) };
  chains.set(step, chain);
  return chain;
}

function missOfChain({ starts, runs }: Chain, { target }: RootStep, values: Values, wheels: number): MissAt {
  const goal = Number(values[target]);
  const rows = Array.from({ length: wheels }, (_, wheel) =>
    starts.map((name): number => {
      const value = values[name] ?? NaN;
      return typeof value === 'number' ? value : (value[wheel] ?? NaN);
    }),
  );
  return (trials) =>
    rows.map((start, wheel) => {
      const row = [...start, trials[wheel] ?? NaN];
      for (const run of runs) row.push(run(row));
      return (row.at(-1) ?? NaN) - goal;
    });
}
