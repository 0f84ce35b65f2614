import { evaluate, type Value, type Values } from './evaluate.ts';
import { add, floor, sumOf } from './math.ts';
import { closesList, type FunctionName, type Operator, type Tree } from './tree.ts';

/**
 * How fast a formula's value changes with one number, by forward mode: exact to rounding, no step size.
 * @param values the value of every name.
 * @param slopes the derivative of every name with respect to that number; a missing one is 0.
 * @returns one slope, or one a wheel, as the formula gives.
 */
export function slopeOf(tree: Tree, values: Values, slopes: Values): Value {
  const value = evaluate(tree, values);
  if (typeof value === 'number') return slopeAt(tree, values, slopes, 0);
  return value.map((_, wheel) => slopeAt(tree, values, slopes, wheel));
}

const pick = (value: Value, wheel: number): number => (typeof value === 'object' ? (value[wheel] ?? NaN) : value);

/** The slope for one wheel. */
function slopeAt(tree: Tree, values: Values, slopes: Values, wheel: number): number {
  const value = (node: Tree): number => pick(evaluate(node, values), wheel);
  const slope = (node: Tree): number => {
    switch (node.kind) {
      case 'number':
        return 0;
      case 'name':
        return pick(slopeOfName(node.name, slopes), wheel);
      case 'negate':
        return -slope(node.of);
      case 'operate':
        return operate(node.op, value(node.left), value(node.right), slope(node.left), slope(node.right));
      case 'call': {
        const [first] = node.args;
        return first?.kind === 'name' && closesList(node.name, node.args.length)
          ? closed(node.name, valuesOf(first, values), slopeOfName(first.name, slopes))
          : call(node.name, node.args.map(value), node.args.map(slope));
      }
    }
  };
  return slope(tree);
}

const slopeOfName = (name: string, slopes: Values): Value => (Object.hasOwn(slopes, name) ? (slopes[name] ?? 0) : 0);

const valuesOf = (tree: Tree, values: Values): readonly number[] => [evaluate(tree, values)].flat();

/** The slope of a sum or of an extreme over all wheels; a count does not change. */
function closed(name: FunctionName, numbers: readonly number[], slopes: Value): number {
  const of = numbers.map((_, k) => pick(slopes, k));
  if (name === 'sum') return sumOf(of);
  if (name === 'count') return 0;
  return of[numbers.indexOf(name === 'min' ? Math.min(...numbers) : Math.max(...numbers))] ?? 0;
}

function operate(op: Operator, a: number, b: number, da: number, db: number): number {
  switch (op) {
    case '+':
      return add(da, db);
    case '-':
      return add(da, -db);
    case '*':
      return da * b + a * db;
    case '/':
      return (da - (a / b) * db) / b;
    case '^':
      return (da === 0 ? 0 : b * a ** (b - 1) * da) + (db === 0 || a ** b === 0 ? 0 : a ** b * Math.log(a) * db);
    default:
      return 0;
  }
}

function call(name: FunctionName, args: readonly number[], slopes: readonly number[]): number {
  const [x = NaN, y = NaN] = args;
  const [dx = 0, dy = 0] = slopes;
  if (dx === 0 && slopes.every((d) => d === 0)) return 0;
  switch (name) {
    case 'sin':
      return Math.cos(x) * dx;
    case 'cos':
      return -Math.sin(x) * dx;
    case 'tan':
      return dx / Math.cos(x) ** 2;
    case 'asin':
      return dx / Math.sqrt(1 - x * x);
    case 'acos':
      return -dx / Math.sqrt(1 - x * x);
    case 'atan':
      return dx / (1 + x * x);
    case 'atan2':
      return (dx * y - x * dy) / (x * x + y * y);
    case 'sqrt':
      return dx / (2 * Math.sqrt(x));
    case 'exp':
      return Math.exp(x) * dx;
    case 'ln':
      return dx / x;
    case 'abs':
      return Math.sign(x) * dx;
    case 'min':
      return slopes[args.indexOf(Math.min(...args))] ?? 0;
    case 'max':
      return slopes[args.indexOf(Math.max(...args))] ?? 0;
    case 'mod':
      return dx - floor(x / y) * dy;
    case 'if':
      return (x === 0 ? slopes[2] : slopes[1]) ?? 0;
    default:
      return 0;
  }
}
