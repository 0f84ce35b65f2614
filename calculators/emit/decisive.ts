import { namesBehind } from '../dependencies.ts';
import type { Step } from '../calculator.ts';
import { childrenOf, namesIn, type FunctionName, type Operator, type Tree } from '../formula/tree.ts';
import type { Emittable } from './emittable.ts';

const comparisons = new Set<Operator>(['<', '<=', '>', '>=', '==']);
const jumps = new Set<FunctionName>(['sign', 'round', 'floor', 'ceil', 'mod', 'atan2']);

export const isComparison = (op: Operator): boolean => comparisons.has(op);

/** Functions whose value jumps somewhere, so that a trace of rounding can change it altogether. */
export const jumpsSomewhere = (name: FunctionName): boolean => jumps.has(name);

/** The steps and givens that some comparison or jump hangs on, however far behind it: rounding matters there. */
export function decisiveNames({ steps, requires }: Emittable): ReadonlySet<string> {
  const decisive = new Set([...steps.flatMap(treesOf), ...requires.map((one) => one.holds)].flatMap(namesDecidingIn));
  for (const step of [...steps].reverse()) {
    if (decisive.has(step.name)) for (const name of namesBehind(step)) decisive.add(name);
  }
  return decisive;
}

function treesOf(step: Step): readonly Tree[] {
  switch (step.kind) {
    case 'formula':
      return [step.tree];
    case 'root':
      return [...(step.by ?? []).map(({ tree }) => tree), step.tree, step.from, step.to];
    case 'look-up':
      return [step.at];
  }
}

function namesDecidingIn(tree: Tree): readonly string[] {
  const decides =
    (tree.kind === 'operate' && comparisons.has(tree.op)) || (tree.kind === 'call' && jumps.has(tree.name));
  if (decides) return namesIn(tree);
  const condition = tree.kind === 'call' && tree.name === 'if' ? tree.args[0] : undefined;
  return [...(condition ? namesIn(condition) : []), ...childrenOf(tree).flatMap(namesDecidingIn)];
}
