import type { Calculator, LookUpStep, RootStep, Step, Table } from '../../../calculators/calculator.ts';
import { evaluateNumber, isSum, termsOf, type Value, type Values } from '../../../calculators/formula/evaluate.ts';
import { ceil, cos, floor, round, sin, sumOf } from '../../../calculators/formula/math.ts';
import { closesList, type FunctionName, type Operator, type Tree } from '../../../calculators/formula/tree.ts';
import { solve } from '../../../calculators/solve.ts';

/** A number, and how far from it written code may come out. */
export interface Bounded {
  readonly x: number;
  readonly e: number;
}

type BoundedValue = Bounded | readonly Bounded[];
export type BoundedValues = Readonly<Record<string, BoundedValue>>;

/** How written code computes. */
export interface Arithmetic {
  /** Half a unit in the last place of 1. Functions of its library are taken to be good to two units. */
  readonly half: number;
  /** Whether an operation on numbers that are the same on both sides gives the same here. */
  readonly same: (x: number) => boolean;
  /** The share of its terms below which a sum may be dropped. */
  readonly dust: number;
  /** How far past 1 an arc is still that of 1. */
  readonly past: number;
  /** How far apart compared numbers may be and count as equal. */
  readonly apart: number;
  /** The error of its π, relatively. */
  readonly pi: number;
  /** How far a number may be from a whole one or a half and be taken for it. */
  readonly snaps: (x: number) => number;
}

const floatHalf = 2 ** -24;
const doubleHalf = 2 ** -53;

/** The C code. An operation is exact where its result is a float. */
export const inFloat: Arithmetic = {
  half: floatHalf,
  same: (x) => Math.fround(x) === x,
  dust: 1.001e-6,
  past: 1e-6,
  apart: 0,
  pi: floatHalf,
  snaps: (x) => 2.5e-7 * Math.abs(x),
};

/** The Python code: the same double operations as ours, so only the functions of the library differ. */
export const inDouble: Arithmetic = {
  half: doubleHalf,
  same: () => true,
  dust: 1.001e-12,
  past: 1e-12,
  apart: 0,
  pi: 0,
  snaps: () => 0,
};

/** The cells: as in double, but for comparisons, a π of fifteen digits, and a hair that is no share of the number. */
export const inCells: Arithmetic = { ...inDouble, apart: 1.001e-12, pi: 16 * doubleHalf, snaps: () => 5.1e-10 };

const exact = (x: number): Bounded => ({ x, e: 0 });
const far = (x: number): Bounded => ({ x, e: Infinity });
const minus = ({ x, e }: Bounded): Bounded => ({ x: -x, e });
const isList = (value: BoundedValue | Value | undefined): value is readonly Bounded[] & readonly number[] =>
  Array.isArray(value);

/** The numbers of a value: one, or one a wheel. */
export const boundsOf = (value: BoundedValue): readonly Bounded[] => (isList(value) ? value : [value as Bounded]);

/** A result that the code drops as dust when it is that small. */
const mayVanish = ({ x, e }: Bounded, limit: number): Bounded =>
  Math.abs(x) - e <= limit ? { x, e: Math.max(e, Math.abs(x)) } : { x, e };

/** Which truths are possible. */
const truthOf = ({ x, e }: Bounded): { readonly may: boolean; readonly mayNot: boolean } =>
  e === 0 ? { may: x !== 0, mayNot: x === 0 } : { may: true, mayNot: Math.abs(x) <= e };

function choose(condition: Bounded, then: Bounded, otherwise: Bounded): Bounded {
  const { may, mayNot } = truthOf(condition);
  const taken = condition.x === 0 ? otherwise : then;
  if (!may || !mayNot) return taken;
  const e = Math.abs(then.x - otherwise.x) + Math.max(then.e, otherwise.e);
  return Number.isNaN(e) ? far(taken.x) : { x: taken.x, e };
}

function broadcast(f: (...args: Bounded[]) => Bounded, args: readonly BoundedValue[]): BoundedValue {
  const list = args.find(isList);
  if (!list) return f(...(args as Bounded[]));
  return list.map((_, k) => f(...args.map((arg) => (isList(arg) ? (arg[k] ?? far(NaN)) : (arg as Bounded)))));
}

const oneOf = (value: BoundedValue | undefined): Bounded => (value && !isList(value) ? (value as Bounded) : far(NaN));

/**
 * A running error analysis: every value carries a bound on how far the code's may be from ours; each operation adds its
 * own rounding and what it makes of the bounds it is handed. See N. J. Higham, Accuracy and Stability of Numerical
 * Algorithms, 2nd edition, section 3.3 (from memory). Where a comparison or a jump cannot be told, both outcomes are
 * within the bound; where one of them has no value, the bound is infinite.
 */
export class Rounding {
  readonly #in: Arithmetic;

  constructor(arithmetic: Arithmetic) {
    this.#in = arithmetic;
  }

  /** Givens and steps with their bounds, for inputs that the code holds exactly. */
  bounds(calculator: Calculator, inputs: Values): BoundedValues {
    const { values } = solve(calculator, inputs);
    const found: Record<string, BoundedValue> = {};
    for (const { name } of calculator.given) {
      const input = inputs[name] ?? NaN;
      found[name] = typeof input === 'number' ? exact(input) : input.map(exact);
    }
    for (const step of calculator.steps) found[step.name] = this.#step(step, found, values[step.name] ?? NaN);
    return found;
  }

  formula(tree: Tree, values: BoundedValues): BoundedValue {
    const walk = (node: Tree): BoundedValue => {
      switch (node.kind) {
        case 'number':
          return this.#literal(node);
        case 'name':
          return values[node.name] ?? { x: Math.PI, e: this.#in.pi * Math.PI };
        case 'negate':
          return broadcast(minus, [walk(node.of)]);
        case 'operate':
          if (isSum(node)) {
            const terms = termsOf(node).map(({ tree: term, minus: less }) =>
              less ? broadcast(minus, [walk(term)]) : walk(term),
            );
            return broadcast((...ones) => this.#sum(ones), terms);
          }
          return broadcast((a, b) => this.#operate(node.op, a, b), [walk(node.left), walk(node.right)]);
        case 'call':
          return this.#call(node.name, node.args.map(walk));
      }
    };
    return walk(tree);
  }

  #step(step: Step, values: BoundedValues, value: Value): BoundedValue {
    if (step.kind === 'formula') return this.formula(step.tree, values);
    if (step.kind === 'look-up') return this.#lookUp(step, values, value);
    const found = [value].flat().map((x, wheel) => this.#root(step, values, value, x, wheel));
    return typeof value === 'number' ? (found[0] ?? far(NaN)) : found;
  }

  /** Adds the rounding of one operation, and the arithmetic's smallest steps. */
  #rounded(x: number, e: number, unit = this.#in.half): Bounded {
    if (unit === 0 || (e === 0 && unit === this.#in.half && this.#in.same(x))) return { x, e };
    return e < Infinity ? { x, e: e + unit * (Math.abs(x) + e) + 1e-44 } : far(x);
  }

  get #library(): number {
    return 4 * this.#in.half;
  }

  #literal(node: Extract<Tree, { kind: 'number' }>): Bounded {
    const x = evaluateNumber(node, {});
    return { x, e: node.unit === undefined && this.#in.same(x) ? 0 : this.#in.half * x };
  }

  /** The sum of all terms; dust in it is told by the largest. */
  #sum(terms: readonly Bounded[]): Bounded {
    const numbers = terms.map(({ x }) => x);
    const sizes = terms.map(({ x, e }) => Math.abs(x) + e);
    const total = sumOf(numbers);
    const plain = numbers.reduce((so, x) => so + x, 0);
    const order = terms.length > 2 ? terms.length * this.#in.half * sizes.reduce((so, size) => so + size, 0) : 0;
    const e = terms.reduce((so, one) => so + one.e, 0) + order + Math.abs(plain - total);
    return mayVanish(this.#rounded(total, e), this.#in.dust * Math.max(0, ...sizes));
  }

  #times(a: Bounded, b: Bounded): Bounded {
    return this.#rounded(a.x * b.x, Math.abs(a.x) * b.e + Math.abs(b.x) * a.e + a.e * b.e);
  }

  #over(a: Bounded, b: Bounded): Bounded {
    const x = a.x / b.x;
    const least = Math.abs(b.x) - b.e;
    return least > 0 ? this.#rounded(x, (a.e + Math.abs(x) * b.e) / least) : far(x);
  }

  #raise(a: Bounded, b: Bounded): Bounded {
    const x = a.x ** b.x;
    const ends = [a.x - a.e, a.x + a.e].flatMap((base) => [b.x - b.e, b.x + b.e].map((power) => base ** power));
    return this.#rounded(x, Math.max(...ends.map((end) => Math.abs(end - x))), this.#library);
  }

  /** For a function that rises or falls throughout: the ends of what it is handed give the ends of what it gives. */
  #monotone(f: (x: number) => number, a: Bounded, unit = this.#library): Bounded {
    const x = f(a.x);
    return this.#rounded(x, Math.max(Math.abs(f(a.x - a.e) - x), Math.abs(f(a.x + a.e) - x)), unit);
  }

  /** @param plainly the same without dust dropped. */
  #wave(f: (x: number) => number, plainly: (x: number) => number, a: Bounded): Bounded {
    const scale = Math.max(1, Math.abs(a.x));
    return mayVanish(
      this.#rounded(f(a.x), Math.min(2, a.e) + Math.abs(f(a.x) - plainly(a.x)), this.#library),
      this.#in.dust * scale,
    );
  }

  #arc(f: (x: number) => number, a: Bounded): Bounded {
    const forgiven = (x: number): number => (Math.abs(x) > 1 && Math.abs(x) < 1 + this.#in.past ? Math.sign(x) : x);
    return this.#monotone((x) => f(forgiven(x)), a);
  }

  #angle(y: Bounded, x: Bounded): Bounded {
    const angle = Math.atan2(y.x, x.x);
    const up = Math.abs(y.x) <= this.#in.apart ? Math.max(y.e, Math.abs(y.x)) : y.e;
    if (up === 0 && x.e === 0) return this.#rounded(angle, 0, this.#library);
    const off = Math.hypot(up, x.e);
    const reach = Math.hypot(y.x, x.x);
    if (off >= reach) return { x: angle, e: 2 * Math.PI };
    const acrossTheCut = x.x - x.e < 0 && Math.abs(y.x) <= up;
    return this.#rounded(angle, acrossTheCut ? 2 * Math.PI : off / (reach - off), this.#library);
  }

  #compare(op: Operator, a: Bounded, b: Bounded): Bounded {
    const tree: Tree = { kind: 'operate', op, left: { kind: 'name', name: 'a' }, right: { kind: 'name', name: 'b' } };
    const x = evaluateNumber(tree, { a: a.x, b: b.x });
    const between = Math.abs(a.x - b.x);
    const open = (between <= a.e + b.e && a.e + b.e > 0) || (between > 0 && between <= a.e + b.e + this.#in.apart);
    return { x, e: open || Number.isNaN(between) ? 1 : 0 };
  }

  /** A jump between whole numbers. */
  #stairs(f: (x: number) => number, { x, e }: Bounded): Bounded {
    return this.#monotone(f, { x, e: e === 0 && Number.isInteger(2 * x) ? 0 : e + this.#in.snaps(x) }, 0);
  }

  #remainder(a: Bounded, b: Bounded): Bounded {
    return this.#sum([a, minus(this.#times(b, this.#stairs(floor, this.#over(a, b))))]);
  }

  #operate(op: Operator, a: Bounded, b: Bounded): Bounded {
    const [p, q] = [truthOf(a), truthOf(b)];
    switch (op) {
      case '*':
        return this.#times(a, b);
      case '/':
        return this.#over(a, b);
      case '^':
        return this.#raise(a, b);
      case 'and':
        return { x: a.x !== 0 && b.x !== 0 ? 1 : 0, e: p.may && q.may && (p.mayNot || q.mayNot) ? 1 : 0 };
      case 'or':
        return { x: a.x !== 0 || b.x !== 0 ? 1 : 0, e: (p.may || q.may) && p.mayNot && q.mayNot ? 1 : 0 };
      default:
        return this.#compare(op, a, b);
    }
  }

  #call(name: FunctionName, args: readonly BoundedValue[]): BoundedValue {
    const [first = far(NaN)] = args;
    const list = boundsOf(first);
    if (name === 'upto') return Array.from({ length: list[0]?.x ?? 0 }, (_, k) => exact(k + 1));
    if (!isList(first) || !closesList(name, args.length)) {
      return broadcast((...ones) => this.#scalar(name, ones), args);
    }
    if (name === 'count') return exact(list.length);
    return name === 'sum' ? this.#sum(list) : this.#scalar(name, list);
  }

  #scalar(name: FunctionName, args: readonly Bounded[]): Bounded {
    const [a = far(NaN), b = far(NaN), c = far(NaN)] = args;
    switch (name) {
      case 'sin':
        return this.#wave(sin, Math.sin, a);
      case 'cos':
        return this.#wave(cos, Math.cos, a);
      case 'tan':
        return this.#over(this.#wave(sin, Math.sin, a), this.#wave(cos, Math.cos, a));
      case 'asin':
        return this.#arc(Math.asin, a);
      case 'acos':
        return this.#arc(Math.acos, a);
      case 'atan':
        return this.#monotone(Math.atan, a);
      case 'atan2':
        return this.#angle(a, b);
      case 'sqrt':
        return this.#monotone(Math.sqrt, a);
      case 'exp':
        return this.#monotone(Math.exp, a);
      case 'ln':
        return this.#monotone(Math.log, a);
      case 'abs':
        return { x: Math.abs(a.x), e: a.e };
      case 'sign':
        return this.#monotone(Math.sign, { x: a.x, e: a.x === 0 ? a.e : Math.max(a.e, this.#in.apart) }, 0);
      case 'round':
        return this.#stairs(round, a);
      case 'floor':
        return this.#stairs(floor, a);
      case 'ceil':
        return this.#stairs(ceil, a);
      case 'mod':
        return this.#remainder(a, b);
      case 'min':
        return minus(this.#most(args.map(minus)));
      case 'max':
        return this.#most(args);
      case 'if':
        return choose(a, b, c);
      default:
        throw new Error(`no bound for ${name}`);
    }
  }

  /** Between the largest of the lower ends and that of the upper ends. */
  #most(args: readonly Bounded[]): Bounded {
    const x = Math.max(...args.map((one) => one.x));
    const low = Math.max(...args.map((one) => one.x - one.e));
    const high = Math.max(...args.map((one) => one.x + one.e));
    return { x, e: Math.max(x - low, high - x) };
  }

  /** A root moves by what its formula is off, over the slope; bisection leaves it to a few units. */
  #root(step: RootStep, values: BoundedValues, all: Value, x: number, wheel: number): Bounded {
    const at = (place: number): Bounded => {
      const moved = [all].flat().map((one, k) => exact(k === wheel ? place : one));
      const tried: Record<string, BoundedValue> = { ...values, [step.name]: step.list ? moved : exact(place) };
      for (const one of step.by ?? []) tried[one.name] = this.formula(one.tree, tried);
      return boundsOf(this.formula(step.tree, tried))[step.list ? wheel : 0] ?? far(NaN);
    };
    const nearby = 1e-5 * Math.abs(x) + 1e-12;
    const slope = (at(x + nearby).x - at(x - nearby).x) / (2 * nearby);
    const off = at(x).e + oneOf(values[step.target]).e + this.#in.half * Math.abs(at(x).x);
    return this.#rounded(x, (2 * off) / Math.abs(slope), this.#library);
  }

  #lookUp(step: LookUpStep, values: BoundedValues, value: Value): BoundedValue {
    const found = [value].flat();
    const read = boundsOf(this.formula(step.at, values)).map((at, k) => this.#read(step.table, at, found[k] ?? NaN));
    return typeof value === 'number' ? (read[0] ?? far(NaN)) : read;
  }

  /** A value between rows moves with what it is read at, by the steepest of the lines. */
  #read({ rows, between }: Table, { x, e }: Bounded, value: number): Bounded {
    if (between === 'rows only') return this.#rounded(value, this.#in.half * Math.abs(value));
    const lines = rows.slice(1).map(([at, up], k): number => {
      const [from = NaN, low = NaN] = rows[k] ?? [];
      return Math.abs((up - low) / (at - from));
    });
    const size = Math.max(...rows.map(([, one]) => Math.abs(one)));
    return this.#rounded(value, Math.max(...lines) * (e + 2 * this.#in.past * Math.abs(x)) + 8 * this.#in.half * size);
  }
}
