import type { Step } from '../calculator.ts';
import { namesBehind } from '../dependencies.ts';
import { childrenOf, namesIn, type FunctionName, type Tree } from '../formula/tree.ts';
import { decisiveNames } from './decisive.ts';
import type { Emittable } from './emittable.ts';
import type { Facts } from './express.ts';
import { identifiers } from './identifiers.ts';
import { listLengths, type Length } from './list-lengths.ts';
import { wholeNames } from './whole.ts';

/** What every language needs to know of a calculator before it writes a line. */
export interface Plan {
  readonly calculator: Emittable;
  readonly facts: Facts;
  /** Whether a comparison hangs on a name, so that the dust of rounding matters in it. */
  readonly careful: (name: string) => boolean;
  readonly lengths: ReadonlyMap<string, Length>;
  /** The variable that holds a length. */
  readonly lengthName: (length: Length) => string;
  /** A name as the language may have it. */
  readonly called: (name: string) => string;
}

/** @param taken words that names must not be. */
export function planOf(calculator: Emittable, taken: ReadonlySet<string>): Plan {
  const decisive = decisiveNames(calculator);
  const lengths = listLengths(calculator);
  const names = [...calculator.given, ...calculator.steps].map((one) => one.name);
  const distinct = [...new Set(lengths.values())];
  const lengthTexts = distinct.map((one) => (distinct.length === 1 ? 'wheels' : `${one.lists[0] ?? ''}_count`));
  const called = identifiers(names, [...taken, ...lengthTexts, ...names.flatMap(namesBeside)]);
  return {
    calculator,
    facts: { lists: new Set(lengths.keys()), whole: wholeNames(calculator) },
    careful: (name) => decisive.has(name),
    lengths,
    lengthName: (length) => lengthTexts[distinct.indexOf(length)] ?? '',
    called: (name) => called.get(name) ?? name,
  };
}

/** What the written code calls things that belong to a name. */
const namesBeside = (name: string): string[] => ['count', 'rows', 'miss'].map((kind) => `${name}_${kind}`);

const partial = new Set<FunctionName>(['sqrt', 'ln', 'exp', 'tan', 'asin', 'acos', 'atan2']);

const mayFail = (tree: Tree): boolean =>
  (tree.kind === 'operate' && (tree.op === '/' || tree.op === '^')) ||
  (tree.kind === 'call' && partial.has(tree.name)) ||
  childrenOf(tree).some(mayFail);

/** Steps that can be without a finite value, and steps that nothing else asks for. */
export function stepsToCheck({ steps, results, requires }: Emittable): readonly Step[] {
  const used = new Set([...steps.flatMap(namesBehind), ...requires.flatMap((one) => namesIn(one.holds)), ...results]);
  return steps.filter((step) => step.kind !== 'formula' || mayFail(step.tree) || !used.has(step.name));
}
