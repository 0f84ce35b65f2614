import { acos, add, asin, ceil, cos, floor, mod, round, sin, sumOf, tan } from './math.ts';
import type { FunctionName, Operator, Tree } from './tree.ts';

/** A number, or one number a wheel. */
export type Value = number | readonly number[];
export type Values = Readonly<Record<string, Value>>;

/** In which unit angles are handed in and out; the formula is the same. */
export type AngleUnit = 'rad' | 'deg';

const truth = (holds: boolean): number => (holds ? 1 : 0);

export const operators: Record<Operator, (a: number, b: number) => number> = {
  '+': add,
  '-': (a, b) => add(a, -b),
  '*': (a, b) => a * b,
  '/': (a, b) => a / b,
  '^': (a, b) => a ** b,
  '<': (a, b) => truth(a < b),
  '<=': (a, b) => truth(a <= b),
  '>': (a, b) => truth(a > b),
  '>=': (a, b) => truth(a >= b),
  '==': (a, b) => truth(a === b),
  and: (a, b) => truth(a !== 0 && b !== 0),
  or: (a, b) => truth(a !== 0 || b !== 0),
};

export type Scalar = (...args: number[]) => number;
const negative = (x: number): number => -x;
const sumOfTerms: Scalar = (...args) => sumOf(args);
const at0 = (args: number[]): number => args[0] ?? NaN;
const at1 = (args: number[]): number => args[1] ?? NaN;
const one =
  (f: (x: number) => number): Scalar =>
  (...args) =>
    f(at0(args));

export const scalars: Partial<Record<FunctionName, Scalar>> = {
  sin: one(sin),
  cos: one(cos),
  tan: one(tan),
  asin: one(asin),
  acos: one(acos),
  atan: one(Math.atan),
  atan2: (...args) => Math.atan2(at0(args), at1(args)),
  sqrt: one(Math.sqrt),
  exp: one(Math.exp),
  ln: one(Math.log),
  abs: one(Math.abs),
  sign: one(Math.sign),
  round: one(round),
  floor: one(floor),
  ceil: one(ceil),
  mod: (...args) => mod(at0(args), at1(args)),
  min: (...args) => Math.min(...args),
  max: (...args) => Math.max(...args),
  if: (...args) => (at0(args) === 0 ? (args[2] ?? NaN) : at1(args)),
};

const lists: Partial<Record<FunctionName, (list: readonly number[]) => Value>> = {
  sum: sumOf,
  count: (list) => list.length,
  min: (list) => Math.min(...list),
  max: (list) => Math.max(...list),
  upto: (list) => Array.from({ length: list[0] ?? 0 }, (_, i) => i + 1),
};

const takesAngle = new Set<FunctionName>(['sin', 'cos', 'tan']);
const givesAngle = new Set<FunctionName>(['asin', 'acos', 'atan', 'atan2']);
const degree = Math.PI / 180;

/**
 * The number a formula gives. Lists broadcast: an operation on a list and a number, or on two lists of one length,
 * is done wheel by wheel.
 * @param values SI values by name (angles in radians, unless `angles` is 'deg').
 * @throws Error for a name without a value or lists of unequal length; those are mistakes of the author, not of the reader.
 */
export function evaluate(tree: Tree, values: Values, angles: AngleUnit = 'rad'): Value {
  const walk = (node: Tree): Value => {
    switch (node.kind) {
      case 'number':
        return node.unit === 'deg' && angles === 'rad' ? node.value * degree : node.value;
      case 'name':
        return valueOf(node.name, values);
      case 'negate':
        return broadcast(negative, [walk(node.of)]);
      case 'operate':
        return isSum(node) && knownTerms(node).length > 2
          ? broadcast(sumOfTerms, knownTerms(node).map(signed))
          : broadcast(operators[node.op], [walk(node.left), walk(node.right)]);
      case 'call':
        return call(node.name, node.args.map(walk), angles);
    }
  };
  const signed = ({ tree: term, minus }: Term): Value => (minus ? broadcast(negative, [walk(term)]) : walk(term));
  return walk(tree);
}

export interface Term {
  readonly tree: Tree;
  readonly minus: boolean;
}

export const isSum = (tree: Tree): boolean => tree.kind === 'operate' && (tree.op === '+' || tree.op === '-');

/** The terms of a sum, those of the sums in it among them: what is dust in u - (a + b) depends on the largest of all. */
export function termsOf(tree: Tree, minus = false): readonly Term[] {
  if (tree.kind === 'negate' && isSum(tree.of)) return termsOf(tree.of, !minus);
  if (tree.kind !== 'operate' || !isSum(tree)) return [{ tree, minus }];
  return [...termsOf(tree.left, minus), ...termsOf(tree.right, minus !== (tree.op === '-'))];
}

const terms = new WeakMap<Tree, readonly Term[]>();

/** The terms of a sum, found once. */
function knownTerms(sum: Tree): readonly Term[] {
  const known = terms.get(sum) ?? termsOf(sum);
  terms.set(sum, known);
  return known;
}

/** As `evaluate`, for a formula that must give one number. */
export function evaluateNumber(tree: Tree, values: Values, angles: AngleUnit = 'rad'): number {
  const value = evaluate(tree, values, angles);
  if (typeof value !== 'number') throw new Error('invalid value: a list where one number is wanted');
  return value;
}

function valueOf(name: string, values: Values): Value {
  if (Object.hasOwn(values, name)) return values[name] ?? NaN;
  if (name === 'pi') return Math.PI;
  throw new Error(`missing value: ${name}`);
}

function call(name: FunctionName, args: readonly Value[], angles: AngleUnit): Value {
  const list = lists[name];
  const [first = NaN] = args;
  if (list && args.length === 1 && (typeof first !== 'number' || name === 'upto')) return list([first].flat());
  const scalar = scalars[name];
  if (!scalar) throw new Error(`invalid argument: ${name} takes a list`);
  if (angles === 'rad') return broadcast(scalar, args);
  if (takesAngle.has(name)) return broadcast((x) => scalar(x * degree), args);
  if (givesAngle.has(name)) return broadcast((...xs) => scalar(...xs) / degree, args);
  return broadcast(scalar, args);
}

function broadcast(f: Scalar, args: readonly Value[]): Value {
  const length = commonLength(args);
  if (length === undefined) return f(...(args as number[]));
  const [first = NaN, second = NaN] = args;
  const results = new Array<number>(length);
  for (let i = 0; i < length; i++) {
    // Nearly all there is has one or two arguments, and sheaves of them cost time.
    if (args.length === 1) results[i] = f(pick(first, i));
    else if (args.length === 2) results[i] = f(pick(first, i), pick(second, i));
    else results[i] = f(...args.map((arg) => pick(arg, i)));
  }
  return results;
}

const pick = (value: Value, i: number): number => (typeof value === 'number' ? value : (value[i] ?? NaN));

/** How long the lists among the arguments are; undefined when all are numbers. */
function commonLength(args: readonly Value[]): number | undefined {
  let length: number | undefined;
  for (const arg of args) {
    if (typeof arg === 'number' || arg.length === length) continue;
    if (length !== undefined) throw new Error(`invalid lists: lengths ${length} and ${arg.length} differ`);
    length = arg.length;
  }
  return length;
}
