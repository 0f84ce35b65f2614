import { dimensionless, multiply, power, sameDimension, showDimension, type Dimension } from '../quantity/dimension.ts';
import type { FunctionName, Tree } from './tree.ts';
import { evaluateNumber } from './evaluate.ts';

/** `undefined` stands for a literal zero, which fits any dimension. */
type Found = Dimension | undefined;

/**
 * The physical dimension of what a formula gives.
 * @param of the dimension of each name.
 * @throws Error where the formula adds, compares or takes functions of quantities that do not fit.
 */
export function dimensionOf(tree: Tree, of: Readonly<Record<string, Dimension>>): Dimension {
  const walk = (node: Tree): Found => {
    switch (node.kind) {
      case 'number':
        return node.value === 0 ? undefined : dimensionless;
      case 'name':
        return node.name === 'pi' ? dimensionless : nameDimension(node.name, of);
      case 'negate':
        return walk(node.of);
      case 'operate':
        return operate(node, walk);
      case 'call':
        return call(node.name, node.args.map(walk));
    }
  };
  return walk(tree) ?? dimensionless;
}

function nameDimension(name: string, of: Readonly<Record<string, Dimension>>): Dimension {
  const dimension = Object.hasOwn(of, name) ? of[name] : undefined;
  if (!dimension) throw new Error(`missing dimension: ${name}`);
  return dimension;
}

function agree(found: readonly Found[], doing: string): Found {
  const known = found.filter((one): one is Dimension => one !== undefined);
  const [first] = known;
  if (!first) return undefined;
  const other = known.find((one) => !sameDimension(one, first));
  if (other) throw new Error(`invalid dimensions: ${doing} of ${showDimension(first)} and ${showDimension(other)}`);
  return first;
}

function plain(found: Found, doing: string): Dimension {
  if (found && !sameDimension(found, dimensionless)) {
    throw new Error(`invalid dimension: ${doing} of ${showDimension(found)}`);
  }
  return dimensionless;
}

function operate(node: Extract<Tree, { kind: 'operate' }>, walk: (tree: Tree) => Found): Found {
  const left = walk(node.left);
  const right = walk(node.right);
  switch (node.op) {
    case '+':
    case '-':
      return agree([left, right], node.op === '+' ? 'sum' : 'difference');
    case '*':
      return multiply(left ?? dimensionless, right ?? dimensionless);
    case '/':
      return multiply(left ?? dimensionless, power(right ?? dimensionless, -1));
    case '^':
      plain(right, 'an exponent');
      if (!left || sameDimension(left, dimensionless)) return dimensionless;
      return power(left, evaluateNumber(node.right, {}));
    case 'and':
    case 'or':
      plain(left, node.op);
      plain(right, node.op);
      return dimensionless;
    default:
      agree([left, right], 'comparison');
      return dimensionless;
  }
}

function call(name: FunctionName, args: readonly Found[]): Found {
  const [first, second] = args;
  switch (name) {
    case 'sqrt':
      return power(first ?? dimensionless, 0.5);
    case 'abs':
    case 'sum':
      return first;
    case 'min':
    case 'max':
    case 'mod':
      return agree(args, name);
    case 'if':
      plain(first, 'a condition');
      return agree(args.slice(1), 'choice');
    case 'atan2':
      agree([first, second], name);
      return dimensionless;
    case 'count':
    case 'sign':
      return dimensionless;
    default:
      return plain(first, name);
  }
}
