import { evaluateNumber } from './evaluate.ts';
import type { FunctionName, Operator, Tree } from './tree.ts';

/** Scalar values by name, and how fast each changes with the given under study. */
export type Numbers = Readonly<Record<string, number>>;

/**
 * How fast a formula's value changes, by forward mode: exact to rounding, no step size.
 * @param values the value of every name, each one number.
 * @param slopes the derivative of every name; a missing one is 0.
 */
export function slopeOf(tree: Tree, values: Numbers, slopes: Numbers): number {
  const value = (node: Tree): number => evaluateNumber(node, values);
  const slope = (node: Tree): number => {
    switch (node.kind) {
      case 'number':
        return 0;
      case 'name':
        return Object.hasOwn(slopes, node.name) ? (slopes[node.name] ?? 0) : 0;
      case 'negate':
        return -slope(node.of);
      case 'operate':
        return operate(node.op, value(node.left), value(node.right), slope(node.left), slope(node.right));
      case 'call':
        return call(node.name, node.args.map(value), node.args.map(slope));
    }
  };
  return slope(tree);
}

function operate(op: Operator, a: number, b: number, da: number, db: number): number {
  switch (op) {
    case '+':
      return da + db;
    case '-':
      return da - db;
    case '*':
      return da * b + a * db;
    case '/':
      return (da - (a / b) * db) / b;
    case '^':
      return (da === 0 ? 0 : b * a ** (b - 1) * da) + (db === 0 ? 0 : a ** b * Math.log(a) * db);
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
      return dx - Math.floor(x / y) * dy;
    case 'if':
      return (x === 0 ? slopes[2] : slopes[1]) ?? 0;
    default:
      return 0;
  }
}
