import { parse } from './formula/parse.ts';
import { childrenOf, closesList, type Tree } from './formula/tree.ts';
import { parseEntry, type Entry } from './quantity/parse.ts';
import { quantityOf, unitOf, type QuantityName } from './quantity/units.ts';
import { findRootBy } from './root-by.ts';
import { siOf } from './si-of.ts';
import { useRootFinder } from './solve.ts';

/** A number the reader gives. `least` and `most` are the ends of its range, both allowed, in SI. */
export interface Given {
  readonly name: string;
  readonly means: string;
  readonly quantity: QuantityName;
  /** The unit meant when none is typed, and the one its number has in the working. */
  readonly unit: string;
  readonly usual: Entry;
  readonly least: number;
  readonly most: number;
  /** Integers only. */
  readonly whole?: true;
  /** One number a wheel: how few and how many. */
  readonly list?: readonly [fewest: number, most: number];
  /** A choice by word: what may be chosen, and the number each word stands for in the formulas. */
  readonly options?: Readonly<Record<string, number>>;
}

interface StepBase {
  readonly name: string;
  readonly means: string;
  readonly quantity: QuantityName;
  readonly unit: string;
  /** One number a wheel. */
  readonly list: boolean;
  /** Why the step holds, in a sentence or two. */
  readonly why?: string;
  /** Printed on one line without its numbers: a count, a size, something the eye can do. */
  readonly brief?: true;
}

/** name = formula */
export interface FormulaStep extends StepBase {
  readonly kind: 'formula';
  readonly formula: string;
  readonly tree: Tree;
}

/**
 * The value of `name` between `from` and `to` for which `formula` equals `target`; found by closing in on it. A list is
 * found wheel by wheel.
 */
export interface RootStep extends StepBase {
  readonly kind: 'root';
  readonly formula: string;
  readonly tree: Tree;
  /** The name whose value the formula must reach. */
  readonly target: string;
  readonly from: Tree;
  readonly to: Tree;
  /** What the formula is worked out by from a trial value. These stand as steps of their own right behind it. */
  readonly by?: readonly FormulaStep[];
}

/** A value read from a published table, between rows by straight lines or at a row exactly. */
export interface LookUpStep extends StepBase {
  readonly kind: 'look-up';
  readonly table: Table;
  readonly at: Tree;
}

export interface Table {
  readonly title: string;
  /** Id of an entry of the bibliography, and the place in it. */
  readonly source: string;
  readonly place: string;
  /** What the first column is, and its values with the second column's, in SI, rising. */
  readonly of: string;
  readonly rows: readonly (readonly [at: number, value: number])[];
  readonly between: 'straight lines' | 'rows only';
}

export type Step = FormulaStep | RootStep | LookUpStep;

/** What must hold of the inputs together; if not, the sentence stands beside `given` and there is no result. */
export interface Requirement {
  readonly given: string;
  readonly holds: Tree;
  readonly says: string;
}

/** A sentence shown always, or when a condition holds; `{name}` and `{name in unit}` stand for values. */
export interface Caution {
  readonly when?: Tree;
  readonly says: string;
}

/** A place where the model ends, as a question; `at` are inputs that show what the reader sees there. */
export interface Limit {
  readonly asks: string;
  readonly answer: string;
  readonly at?: Readonly<Record<string, string>>;
}

export interface Calculator {
  readonly id: string;
  readonly edition: number;
  readonly module: ModuleId;
  readonly title: string;
  readonly question: string;
  readonly given: readonly Given[];
  readonly steps: readonly Step[];
  /** The steps that answer the question. */
  readonly results: readonly string[];
  readonly requires: readonly Requirement[];
  readonly cautions: readonly Caution[];
  readonly limits: readonly Limit[];
}

export type ModuleId = 'wheel-kinematics' | 'motors' | 'belt-drives' | 'friction' | 'step-climbing' | 'power';

/** A given of the catalogue; range and usual value are written as a reader would type them. */
export function given(
  name: string,
  means: string,
  quantity: QuantityName,
  usual: string,
  range: readonly [least: string, most: string],
  more: Pick<Given, 'whole' | 'list' | 'options'> = {},
): Given {
  const si = quantityOf(quantity).units[0].symbol;
  const entry = (text: string, list = false): Entry => {
    const parsed = parseEntry(text, quantity, si, list);
    if (!parsed.ok) throw new Error(`invalid given: ${name}: ${parsed.problem}`);
    return parsed.entry;
  };
  const [least, most] = range.map((text) => Number(siOf(entry(text), quantity)));
  const usualEntry = entry(usual, more.list !== undefined);
  return {
    name,
    means,
    quantity,
    unit: usualEntry.unit,
    usual: usualEntry,
    least: least ?? NaN,
    most: most ?? NaN,
    ...more,
  };
}

/** The same given with another usual value, where a question needs it. */
export function withUsual(one: Given, usual: string): Given {
  const parsed = parseEntry(usual, one.quantity, one.unit, one.list !== undefined);
  if (!parsed.ok) throw new Error(`invalid given: ${one.name}: ${parsed.problem}`);
  return { ...one, usual: parsed.entry, unit: parsed.entry.unit };
}

interface StepText {
  readonly name: string;
  readonly means: string;
  /** The printed unit; it tells the quantity unless `quantity` does. */
  readonly unit: string;
  readonly quantity: QuantityName;
  readonly why?: string;
  readonly brief?: true;
}

type FormulaSource = StepText & { readonly formula: string };

type RootSource = StepText & {
  readonly solve: string;
  readonly equals: string;
  readonly between: readonly [string, string];
  readonly by?: readonly FormulaSource[];
};

type StepSource = FormulaSource | RootSource | (StepText & { readonly table: Table; readonly at: string });

export interface CalculatorSource extends Omit<Calculator, 'steps' | 'requires' | 'cautions'> {
  readonly steps: readonly StepSource[];
  readonly requires?: readonly { readonly given: string; readonly holds: string; readonly says: string }[];
  readonly cautions?: readonly { readonly when?: string; readonly says: string }[];
}

/** Does the formula give one number a wheel? Lists inside sum, min, max and count do not count. */
function givesList(tree: Tree, lists: ReadonlySet<string>): boolean {
  if (tree.kind === 'name') return lists.has(tree.name);
  if (tree.kind === 'call' && tree.name === 'upto') return true;
  if (tree.kind === 'call' && closesList(tree.name, tree.args.length)) return false;
  return childrenOf(tree).some((child) => givesList(child, lists));
}

/**
 * Reads the formulas of a calculator. A step may name givens and earlier steps only.
 * @throws FormulaError for a formula that cannot be read, Error for a name used twice or a result that is no step.
 */
export function defineCalculator(source: CalculatorSource): Calculator {
  const known = new Set(source.given.map((one) => one.name));
  if (known.size < source.given.length) throw new Error(`invalid calculator: a given named twice (${source.id})`);
  const lists = new Set(source.given.filter((one) => one.list).map((one) => one.name));
  const steps = source.steps.flatMap((text): readonly Step[] => {
    const read = readSteps(text, known, lists);
    for (const step of read) {
      if (known.has(step.name)) throw new Error(`invalid step: ${step.name} is taken (${source.id})`);
      known.add(step.name);
      if (step.list) lists.add(step.name);
    }
    return read;
  });
  for (const name of source.results) {
    if (!steps.some((step) => step.name === name)) throw new Error(`unknown result: ${name} (${source.id})`);
  }
  return {
    ...source,
    steps,
    requires: (source.requires ?? []).map((one) => ({ ...one, holds: parse(one.holds, known) })),
    cautions: (source.cautions ?? []).map(({ when, says }) =>
      when === undefined ? { says } : { says, when: parse(when, known) },
    ),
  };
}

type Names = ReadonlySet<string>;

/** One step, or a root and the steps it is worked out by. */
function readSteps(text: StepSource, known: Names, lists: Names): readonly Step[] {
  if ('formula' in text) return [readFormula(text, known, lists)];
  if ('solve' in text) {
    const root = readRoot(text, known, lists);
    if (root.by) useRootFinder(findRootBy);
    return [root, ...(root.by ?? [])];
  }
  const at = parse(text.at, known);
  return [{ ...baseOf(text), kind: 'look-up', table: text.table, at, list: givesList(at, lists) }];
}

function baseOf({ name, means, unit, quantity, why, brief }: StepText): Omit<StepBase, 'list'> {
  unitOf(quantityOf(quantity), unit);
  return { name, means, unit, quantity, ...(why ? { why } : {}), ...(brief ? { brief } : {}) };
}

function readFormula(text: FormulaSource, known: Names, lists: Names): FormulaStep {
  const tree = parse(text.formula, known);
  return { ...baseOf(text), kind: 'formula', formula: text.formula, tree, list: givesList(tree, lists) };
}

function readRoot(text: RootSource, known: Names, lists: Names): RootStep {
  const [from, to] = text.between;
  const behind = [...known, text.name];
  const plain = readBy(text.by ?? [], behind, lists);
  const list = plain.some((step) => step.list);
  const by = list ? readBy(text.by ?? [], behind, new Set([...lists, text.name])) : plain;
  return {
    ...baseOf(text),
    kind: 'root',
    formula: text.solve,
    tree: parse(text.solve, new Set([...behind, ...by.map((step) => step.name)])),
    target: targetName(text.equals, known),
    from: parse(from, known),
    to: parse(to, known),
    list,
    ...(by.length > 0 ? { by } : {}),
  };
}

function readBy(texts: readonly FormulaSource[], known: readonly string[], lists: Names): readonly FormulaStep[] {
  const names = new Set(known);
  const found = new Set(lists);
  return texts.map((text): FormulaStep => {
    const step = readFormula(text, names, found);
    names.add(step.name);
    if (step.list) found.add(step.name);
    return step;
  });
}

function targetName(text: string, known: ReadonlySet<string>): string {
  const tree = parse(text, known);
  if (tree.kind !== 'name') throw new Error(`invalid target: ${text}: make it a step of its own`);
  return tree.name;
}

/** Names of a calculator that hold one number a wheel. */
export const listNames = (calculator: Pick<Calculator, 'given' | 'steps'>): ReadonlySet<string> =>
  new Set([
    ...calculator.given.filter((one) => one.list).map((one) => one.name),
    ...calculator.steps.filter((step) => step.list).map((step) => step.name),
  ]);
