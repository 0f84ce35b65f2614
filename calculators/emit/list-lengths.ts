import type { Step } from '../calculator.ts';
import { childrenOf, closesList, type Tree } from '../formula/tree.ts';
import type { Emittable } from './emittable.ts';

/** Where the length of lists comes from: a list the reader gives, or what a step's `upto` counts to. */
export type LengthSource =
  | { readonly kind: 'given'; readonly name: string; readonly most: number }
  | { readonly kind: 'upto'; readonly to: Tree; readonly step: string; readonly most: number };

/** A length that lists share, because they are combined wheel by wheel. */
export interface Length {
  readonly lists: readonly string[];
  /** The first one tells the length; the others must agree with it. */
  readonly sources: readonly LengthSource[];
  readonly most: number;
}

interface Growing {
  lists: string[];
  sources: LengthSource[];
}

/**
 * The lengths of a calculator's lists, by the name of the list; lists of one length share one object.
 * @throws Error where the formulas set no bound to a length: an author's mistake.
 */
export function listLengths(calculator: Emittable): ReadonlyMap<string, Length> {
  const found = new Map<string, Growing>();
  const counted = new Map<string, Growing>();
  const steps = new Map(calculator.steps.map((step) => [step.name, step]));

  /** A step that is another value by another name stands for that one. */
  const originOf = (tree: Tree): Tree => {
    const step = tree.kind === 'name' ? steps.get(tree.name) : undefined;
    return step?.kind === 'formula' ? originOf(step.tree) : tree;
  };

  const mostOf = (tree: Tree): number => {
    const origin = originOf(tree);
    if (origin.kind === 'number') return origin.value;
    const list = listCounted(origin);
    if (list !== undefined) return most(found.get(list)?.sources ?? []);
    const given = origin.kind === 'name' ? calculator.given.find((one) => one.name === origin.name) : undefined;
    if (!given)
      throw new Error(`unbounded list: upto (${calculator.id}) must count to a given, a list's count or a number`);
    return given.most;
  };

  const lengthOf = (part: ListPart, step: string): Growing => {
    const known = typeof part === 'string' ? found.get(part) : lengthCounted(originOf(part));
    if (known) return known;
    const fresh: Growing = { lists: [], sources: [] };
    if (typeof part === 'string') return fresh;
    fresh.sources.push({ kind: 'upto', to: part, step, most: mostOf(part) });
    counted.set(JSON.stringify(originOf(part)), fresh);
    return fresh;
  };

  const lengthCounted = (origin: Tree): Growing | undefined => {
    const list = listCounted(origin);
    return list === undefined ? counted.get(JSON.stringify(origin)) : found.get(list);
  };

  const join = (one: Growing, other: Growing): void => {
    if (one === other) return;
    one.lists.push(...other.lists);
    one.sources.push(...other.sources);
    for (const name of other.lists) found.set(name, one);
    for (const [key, length] of counted) if (length === other) counted.set(key, one);
  };

  for (const { name, list } of calculator.given) {
    if (list) found.set(name, { lists: [name], sources: [{ kind: 'given', name, most: list[1] }] });
  }
  for (const step of calculator.steps.filter((one) => one.list)) {
    const [first, ...others] = listParts(step, found).map((part) => lengthOf(part, step.name));
    if (!first) throw new Error(`invalid list: ${step.name} (${calculator.id}) has no length`);
    for (const other of others) join(first, other);
    first.lists.push(step.name);
    found.set(step.name, first);
  }
  return finished(found, calculator.steps);
}

function finished(found: ReadonlyMap<string, Growing>, steps: readonly Step[]): ReadonlyMap<string, Length> {
  const place = (source: LengthSource): number =>
    source.kind === 'given' ? -1 : steps.findIndex((step) => step.name === source.step);
  const lengths = new Map(
    [...new Set(found.values())].map(({ lists, sources }): [object, Length] => {
      const inOrder = [...sources].sort((a, b) => place(a) - place(b));
      return [sources, { lists, sources: inOrder, most: most(sources) }];
    }),
  );
  return new Map(
    [...found].flatMap(([name, { sources }]): [string, Length][] => {
      const length = lengths.get(sources);
      return length ? [[name, length]] : [];
    }),
  );
}

const most = (sources: readonly LengthSource[]): number => Math.max(...sources.map((one) => one.most));

/** A list taken wheel by wheel, by its name, or what an `upto` counts to. */
type ListPart = string | Tree;

const listParts = (step: Step, lists: ReadonlyMap<string, unknown>): ListPart[] => {
  if (step.kind === 'look-up') return partsOf(step.at, lists);
  const by = step.kind === 'root' ? (step.by ?? []) : [];
  return [...by.map(({ tree }) => tree), step.tree].flatMap((tree) => partsOf(tree, lists));
};

function partsOf(tree: Tree, lists: ReadonlyMap<string, unknown>): ListPart[] {
  if (tree.kind === 'name') return lists.has(tree.name) ? [tree.name] : [];
  if (tree.kind === 'call' && tree.name === 'upto') return tree.args.slice(0, 1);
  if (tree.kind === 'call' && closesList(tree.name, tree.args.length)) return [];
  return childrenOf(tree).flatMap((child) => partsOf(child, lists));
}

function listCounted(tree: Tree): string | undefined {
  const [list] = tree.kind === 'call' && tree.name === 'count' ? tree.args : [];
  return list?.kind === 'name' ? list.name : undefined;
}
