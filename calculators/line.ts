import type { Calculator, Step } from './calculator.ts';
import { evaluate, type AngleUnit, type Value, type Values } from './formula/evaluate.ts';
import { childrenOf, closesList, namesIn, type Tree } from './formula/tree.ts';
import { formatNumber, formatUnit, roundTo } from './quantity/format.ts';
import { quantityOf, unitOf, type QuantityName } from './quantity/units.ts';
import { solve, type Solvable } from './solve.ts';

/** What the printing of lines needs to know of a calculator. */
export type Printable = Solvable & Pick<Calculator, 'given'>;

interface Printed {
  readonly name: string;
  readonly unit: string;
  readonly factor: number;
}

interface PrintedName extends Printed {
  /** Typed by the reader, so printed as typed. */
  readonly given: boolean;
  /** For a list that stands whole inside sum, min or max: what is written between its numbers. */
  readonly joiner?: string;
}

/**
 * How a step's line is printed. A printed line must be true: whoever types its numbers into a pocket calculator gets its
 * result. So its numbers are in units in which that very line holds: the printed units where they do (mm in, mm out),
 * coherent SI otherwise. Which it is depends on the formula, not on the inputs.
 */
export interface Line {
  readonly step: Step;
  readonly tree: Tree;
  readonly angles: AngleUnit;
  readonly names: readonly PrintedName[];
  readonly result: Printed;
  /** The unit of the step where it differs from the line's. */
  readonly converted?: Printed;
}

/** One printed row: a text for every name on it, the result, and the result in the unit of the step if that differs. */
export interface Row {
  readonly numbers: Readonly<Record<string, string>>;
  readonly result: string;
  readonly converted?: string;
}

interface Named {
  readonly name: string;
  readonly quantity: QuantityName;
  readonly unit: string;
}

/** The systems of units tried for a line, the most readable first. */
const systems: readonly { readonly units: 'printed' | 'SI'; readonly angles: AngleUnit }[] = [
  { units: 'printed', angles: 'deg' },
  { units: 'printed', angles: 'rad' },
  { units: 'SI', angles: 'deg' },
  { units: 'SI', angles: 'rad' },
];

const siUnit = (one: Named): string => quantityOf(one.quantity).units[0].symbol;

const printedIn = (one: Named, unit: string): Printed => ({
  name: one.name,
  unit,
  factor: unitOf(quantityOf(one.quantity), unit).factor,
});

const scaled = (value: Value, factor: number): Value =>
  typeof value === 'number' ? value / factor : value.map((x) => x / factor);

/** The lines of a calculator, by step. A step that looks a value up has none. */
export function planLines(calculator: Printable): ReadonlyMap<string, Line> {
  const named = new Map<string, Named>([...calculator.given, ...calculator.steps].map((one) => [one.name, one]));
  const givens = new Set(calculator.given.map((one) => one.name));
  const samples = [0.0173, 0.0411].map((shift) => solve(calculator, sample(calculator, shift)).values);
  const plans = new Map<string, Line>();
  for (const step of calculator.steps) {
    if (step.kind === 'look-up') continue;
    const lines = systems.map((system) => planLine(step, named, givens, system));
    const plan = lines.find((line) => samples.every((values) => holds(line, values)));
    if (!plan) throw new Error(`invalid line: no units in which ${step.name} holds`);
    plans.set(step.name, plan);
  }
  return plans;
}

function planLine(
  step: Exclude<Step, { kind: 'look-up' }>,
  named: ReadonlyMap<string, Named>,
  givens: ReadonlySet<string>,
  system: (typeof systems)[number],
): Line {
  const find = (name: string): Named => {
    const one = named.get(name);
    if (!one) throw new Error(`unknown name: ${name}`);
    return one;
  };
  const print = (name: string): Printed => {
    const one = find(name);
    const unit = system.units === 'printed' ? one.unit : siUnit(one);
    return printedIn(one, one.quantity === 'angle' ? system.angles : unit);
  };
  const joiners = joinersIn(step.tree);
  const names = namesIn(step.tree).map((name): PrintedName => {
    const joiner = joiners.get(name);
    return { ...print(name), given: givens.has(name), ...(joiner === undefined ? {} : { joiner }) };
  });
  const target = find(step.kind === 'root' ? step.target : step.name);
  const result = print(target.name);
  const plan: Line = { step, tree: step.tree, angles: system.angles, names, result };
  return result.unit === target.unit ? plan : { ...plan, converted: printedIn(target, target.unit) };
}

/**
 * Inputs near the usual ones, with no special values such as 0 or equal lengths. Lists are as long as they may be: a
 * short one can hide what differs from wheel to wheel.
 */
function sample(calculator: Printable, shift: number): Values {
  return Object.fromEntries(
    calculator.given.map((one, k): [string, Value] => {
      const { factor } = printedIn(one, one.usual.unit);
      const move = (x: number): number => {
        if (one.whole || one.options) return x * factor;
        const moved = x * factor + shift * (1 + k / 7) * (Math.abs(x * factor) || factor);
        return Math.min(one.most, Math.max(one.least, moved));
      };
      const { value } = one.usual;
      if (typeof value === 'number') return [one.name, move(value)];
      const longest = Array.from({ length: one.list?.[1] ?? value.length }, (_, i) => value[i % value.length] ?? NaN);
      return [one.name, longest.map((x, i) => move(x * (1 + (i * i) / 50)))];
    }),
  );
}

function holds(line: Line, values: Values): boolean {
  const printed = ({ name, factor }: Printed): Value => scaled(values[name] ?? NaN, factor);
  const numbers = Object.fromEntries(line.names.map((one) => [one.name, printed(one)]));
  const onLine = (tree: Tree): readonly number[] => [evaluate(tree, numbers, line.angles)].flat();
  const inSi = (tree: Tree): readonly number[] => [evaluate(tree, values)].flat();
  return agree(onLine(line.tree), [printed(line.result)].flat()) && fits(line.tree, onLine, inSi);
}

/** What a list of roots is solved for may be one number for all. */
const agree = (got: readonly number[], want: readonly number[]): boolean =>
  got.every((x, i) => {
    const wanted = want.length === 1 ? want[0] : want[i];
    return Math.abs(x - (wanted ?? NaN)) <= 1e-9 * Math.max(Math.abs(x), 1e-9);
  });

type Numbers = (tree: Tree) => readonly number[];

/** Whether what is added, compared or chosen between is in one unit: the result alone does not tell which way an if goes. */
function fits(tree: Tree, onLine: Numbers, inSi: Numbers): boolean {
  const scales = alike(tree).flatMap((part) => {
    const si = inSi(part);
    const scale = onLine(part).map((x, i) => x / (si[i] ?? NaN));
    return scale.find((one) => Number.isFinite(one) && one !== 0) ?? [];
  });
  const same = scales.every((scale) => agree([scale], scales.slice(0, 1)));
  return same && childrenOf(tree).every((child) => fits(child, onLine, inSi));
}

/** The parts of a node that must be in one unit. */
function alike(node: Tree): readonly Tree[] {
  if (node.kind === 'operate') return ['*', '/', '^', 'and', 'or'].includes(node.op) ? [] : [node.left, node.right];
  if (node.kind !== 'call') return [];
  if (node.name === 'if') return node.args.slice(1);
  return ['min', 'max', 'mod', 'atan2'].includes(node.name) ? node.args : [];
}

const resultDigits = 4;
const shortDigits = 8;
const mostDigits = 17;
const exportDigits = 12;

/**
 * Prints the line of a step: one row, or one a wheel. The numbers put in carry as many digits as it takes for the row to
 * give the printed result.
 */
export function printRows(line: Line, values: Values): Row[] {
  const value = values[line.step.name] ?? NaN;
  const rows = line.step.list && typeof value !== 'number' ? value.length : 1;
  return Array.from({ length: rows }, (_, i) => printRow(line, values, i));
}

function printRow(line: Line, values: Values, i: number): Row {
  const take = (one: Printed, whole = false): Value => {
    const value = values[one.name] ?? NaN;
    return scaled(line.step.list && !whole && typeof value !== 'number' ? (value[i] ?? NaN) : value, one.factor);
  };
  const exact = line.names.map((one) => take(one, one.joiner !== undefined));
  const rounded = (digits: number): Value[] =>
    exact.map((value, k) => round(value, line.names[k]?.given && isShort(value) ? shortDigits : digits));
  const result = printNumbers(take(line.result), resultDigits);
  let digits = resultDigits;
  while (digits < mostDigits && gives(line, rounded(digits)) !== result) digits++;
  const numbers = rounded(digits).map((value, k) => printName(value, line.names[k]));
  const row = {
    numbers: Object.fromEntries(line.names.map((one, k) => [one.name, numbers[k] ?? ''])),
    result: result + formatUnit(line.result.unit),
  };
  if (!line.converted) return row;
  return { ...row, converted: printNumbers(take(line.converted), resultDigits) + formatUnit(line.converted.unit) };
}

function printName(value: Value, one: PrintedName | undefined): string {
  const printed = [value].flat().map((x) => formatNumber(x, mostDigits) + (one?.unit === 'deg' ? '°' : ''));
  return printed.join(one?.joiner ?? ', ').replaceAll('+ −', '− ');
}

/** A value as working prints it: four digits and its unit; a list with commas. */
export function printValue(value: Value, quantity: QuantityName, unit: string, digits = resultDigits): string {
  const { factor } = unitOf(quantityOf(quantity), unit);
  return printNumbers(scaled(value, factor), digits) + formatUnit(unit);
}

/** A value in a unit, rounded to twelve digits so that 60 mm is 60 and not 59.99999999999999. */
export function inUnit(value: Value, quantity: QuantityName, unit: string): Value {
  return round(scaled(value, unitOf(quantityOf(quantity), unit).factor), exportDigits);
}

const printNumbers = (value: Value, digits: number): string =>
  [value]
    .flat()
    .map((x) => formatNumber(x, digits))
    .join(', ');

const round = (value: Value, digits: number): Value =>
  typeof value === 'number' ? roundTo(value, digits) : value.map((x) => roundTo(x, digits));

/** What a reader types is short and is printed as typed; 150 rpm in rad/s is not. */
const isShort = (value: Value): boolean =>
  [value].flat().every((x) => Math.abs(roundTo(x, shortDigits) - x) <= 1e-12 * Math.abs(x));

/** What the line gives for the numbers printed on it, as it would be printed. */
function gives(line: Line, numbers: readonly Value[]): string {
  const values = Object.fromEntries(line.names.map((one, k) => [one.name, numbers[k] ?? NaN]));
  return printNumbers(evaluate(line.tree, values, line.angles), resultDigits);
}

/**
 * The names of a formula; for a list that stands whole inside sum, min, max or count, what is written between its numbers.
 * @throws Error for a name needed in two ways: a line has one text for it.
 */
function joinersIn(tree: Tree): ReadonlyMap<string, string | undefined> {
  const found = new Map<string, string | undefined>();
  const note = (name: string, joiner?: string): void => {
    if (found.has(name) && found.get(name) !== joiner) {
      throw new Error(`invalid line: ${name} stands in it in two ways: make one of them a step of its own`);
    }
    found.set(name, joiner);
  };
  const visit = (node: Tree): void => {
    const [first] = childrenOf(node);
    if (node.kind === 'name') note(node.name);
    else if (node.kind === 'call' && first?.kind === 'name' && closesList(node.name, node.args.length)) {
      note(first.name, node.name === 'sum' ? ' + ' : ', ');
    } else childrenOf(node).forEach(visit);
  };
  visit(tree);
  return found;
}

/** Must a pocket calculator be set to radians for this line? Where degrees do, the numbers carry their sign. */
export const inRadians = (line: Line): boolean => line.angles === 'rad' && usesAngles(line.tree);

const usesAngles = (tree: Tree): boolean =>
  (tree.kind === 'call' && /^a?(sin|cos|tan)2?$/.test(tree.name)) || childrenOf(tree).some(usesAngles);

/** A number text where a negative number, a list or a power of ten must be held together by parentheses. */
export const held = (text: string): string => (/^−| /.test(text) ? `(${text})` : text);
