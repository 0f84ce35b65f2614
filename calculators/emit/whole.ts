import type { FunctionName, Operator, Tree } from '../formula/tree.ts';
import type { Emittable } from './emittable.ts';

const keepsWhole = new Set<FunctionName>(['abs', 'min', 'max', 'sum', 'mod']);
const givesWhole = new Set<FunctionName>(['sign', 'round', 'floor', 'ceil', 'count', 'upto']);
const keeps = new Set<Operator>(['+', '-', '*']);
const neverWhole = new Set<Operator>(['/', '^']);

/** Is the value a whole number whatever the inputs, so that no rounding can touch it? */
export function isWhole(tree: Tree, whole: ReadonlySet<string>): boolean {
  switch (tree.kind) {
    case 'number':
      return tree.unit === undefined && Number.isInteger(tree.value);
    case 'name':
      return whole.has(tree.name);
    case 'negate':
      return isWhole(tree.of, whole);
    case 'operate':
      if (neverWhole.has(tree.op)) return false;
      return !keeps.has(tree.op) || (isWhole(tree.left, whole) && isWhole(tree.right, whole));
    case 'call':
      if (givesWhole.has(tree.name)) return true;
      if (tree.name === 'if') return tree.args.slice(1).every((arg) => isWhole(arg, whole));
      return keepsWhole.has(tree.name) && tree.args.every((arg) => isWhole(arg, whole));
  }
}

/** Names of givens and steps that hold whole numbers only. */
export function wholeNames({ given, steps }: Emittable): ReadonlySet<string> {
  const whole = new Set(
    given
      .filter((one) => one.whole ?? (one.options && Object.values(one.options).every(Number.isInteger)))
      .map((one) => one.name),
  );
  for (const step of steps) if (step.kind === 'formula' && isWhole(step.tree, whole)) whole.add(step.name);
  return whole;
}
