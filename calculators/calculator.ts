import type { Value } from './formula/evaluate.ts';
import { parse } from './formula/parse.ts';
import { childrenOf, closesList, type Tree } from './formula/tree.ts';
import { parseEntry, type Entry } from './quantity/parse.ts';
import { quantityOf, unitOf, type QuantityName } from './quantity/units.ts';

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

/** The value of `name` between `from` and `to` for which `formula` equals `target`; found by bisection. */
export interface RootStep extends StepBase {
  readonly kind: 'root';
  readonly formula: string;
  readonly tree: Tree;
  /** The name whose value the formula must reach. */
  readonly target: string;
  readonly from: Tree;
  readonly to: Tree;
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

/** An entry in SI: a number, or one a wheel. */
export function siOf(entry: Entry, quantity: QuantityName): Value {
  const { factor } = unitOf(quantityOf(quantity), entry.unit);
  return typeof entry.value === 'number' ? entry.value * factor : entry.value.map((x) => x * factor);
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

type StepSource =
  | (StepText & { readonly formula: string })
  | (StepText & { readonly solve: string; readonly equals: string; readonly between: readonly [string, string] })
  | (StepText & { readonly table: Table; readonly at: string });

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
  const steps = source.steps.map((text): Step => {
    if (known.has(text.name)) throw new Error(`invalid step: ${text.name} is taken (${source.id})`);
    const step = readStep(text, known, lists);
    known.add(step.name);
    if (step.list) lists.add(step.name);
    return step;
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

function readStep(text: StepSource, known: ReadonlySet<string>, lists: ReadonlySet<string>): Step {
  unitOf(quantityOf(text.quantity), text.unit);
  const { name, means, unit, quantity, why, brief } = text;
  const base = { name, means, unit, quantity, ...(why ? { why } : {}), ...(brief ? { brief } : {}) };
  if ('formula' in text) {
    const tree = parse(text.formula, known);
    return { ...base, kind: 'formula', formula: text.formula, tree, list: givesList(tree, lists) };
  }
  if ('solve' in text) {
    const [from, to] = text.between;
    return {
      ...base,
      kind: 'root',
      formula: text.solve,
      tree: parse(text.solve, new Set([...known, name])),
      target: targetName(text.equals, known),
      from: parse(from, known),
      to: parse(to, known),
      list: false,
    };
  }
  const at = parse(text.at, known);
  return { ...base, kind: 'look-up', table: text.table, at, list: givesList(at, lists) };
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
