import { isSum, termsOf } from '../formula/evaluate.ts';
import { infix, type Dialect } from '../formula/infix.ts';
import { closesList, type FunctionName, type Operator, type Tree } from '../formula/tree.ts';
import { isComparison, jumpsSomewhere } from './decisive.ts';
import { isWhole } from './whole.ts';

/** How a programming language spells the parts of a formula. Every text but a name is closed: it may stand anywhere. */
export interface Language {
  /** A name where it stands for one number; for a list, the number of the wheel at hand. */
  readonly name: (name: string) => string;
  readonly number: (value: number, unit?: 'deg') => string;
  /** `undefined` where the language has an operator for it, spelt by `operator`. */
  readonly power: (base: string, exponent: string, literal: number | undefined) => string | undefined;
  readonly operator: (op: Operator) => string;
  /** @param exact whether both sides are whole numbers, which rounding leaves alone. */
  readonly compare: (op: Operator, left: string, right: string, exact: boolean) => string;
  readonly logic: (op: Operator, left: string, right: string) => string;
  readonly choose: (condition: string, then: string, otherwise: string) => string;
  /**
   * @param careful whether the dust of rounding must not be mistaken for a number here.
   * @param exact whether all arguments are whole numbers.
   */
  readonly call: (name: FunctionName, args: readonly string[], careful: boolean, exact: boolean) => string;
  /** `sum`, `min`, `max` or `count` of a list, by its name. */
  readonly whole: (name: FunctionName, list: string, careful: boolean) => string;
  /** A sum in which dust must be dropped; left out by a language that does not. */
  readonly careful?: (terms: readonly SignedTerm[]) => string;
}

export interface SignedTerm {
  readonly minus: boolean;
  /** Without its sign, and with it. */
  readonly text: string;
  readonly signed: string;
}

export interface Facts {
  readonly lists: ReadonlySet<string>;
  readonly whole: ReadonlySet<string>;
}

export interface Writer {
  /** @param careful whether the dust of rounding must be dropped, for a comparison hangs on the value. */
  readonly formula: (tree: Tree, careful?: boolean) => string;
  /** A condition as the language writes it between `if` and `then`. */
  readonly condition: (tree: Tree) => string;
}

type Operate = Extract<Tree, { kind: 'operate' }>;
type Call = Extract<Tree, { kind: 'call' }>;

/** Writes formulas in a language, in their own shape. */
export function writerOf(language: Language, { lists, whole }: Facts): Writer {
  const formula = (tree: Tree, careful = false): string => infix(tree, careful ? carefully : plainly);

  const condition = (tree: Tree): string => {
    if (tree.kind !== 'operate') return formula(tree, true);
    const { op, left, right } = tree;
    if (isLogic(op)) return language.logic(op, side(left, op), side(right, op));
    if (!isComparison(op)) return formula(tree, true);
    return language.compare(
      op,
      formula(left, true),
      formula(right, true),
      isWhole(left, whole) && isWhole(right, whole),
    );
  };

  /** `and` within `or` has parentheses, for those who do not know which binds tighter. */
  const side = (tree: Tree, within: Operator): string => {
    const mixed = tree.kind === 'operate' && isLogic(tree.op) && tree.op !== within;
    return mixed ? `(${condition(tree)})` : condition(tree);
  };

  const operation = (node: Operate, careful: boolean): string | undefined => {
    const { op, left, right } = node;
    if (isLogic(op) || isComparison(op)) {
      return language.choose(condition(node), language.number(1), language.number(0));
    }
    if (op === '^') return language.power(formula(left, careful), formula(right, careful), literalOf(right));
    if (!careful || !isSum(node) || isWhole(node, whole)) return undefined;
    return language.careful?.(
      termsOf(node).map(({ tree, minus }) => ({
        minus,
        text: formula(tree, true),
        signed: formula(minus ? { kind: 'negate', of: tree } : tree, true),
      })),
    );
  };

  const call = ({ name, args }: Call, careful: boolean): string | undefined => {
    const [first, second, third] = args;
    if (first?.kind === 'name' && closesList(name, args.length) && lists.has(first.name)) {
      return language.whole(name, first.name, careful);
    }
    if (name === 'if' && first && second && third) {
      return language.choose(condition(first), formula(second, careful), formula(third, careful));
    }
    if (!jumpsSomewhere(name)) return undefined;
    const texts = args.map((arg) => formula(arg, true));
    return language.call(
      name,
      texts,
      true,
      args.every((arg) => isWhole(arg, whole)),
    );
  };

  const dialect = (careful: boolean): Dialect => ({
    name: language.name,
    number: language.number,
    operator: language.operator,
    call: (name, args) => language.call(name, args, careful, false),
    instead: (node) => {
      if (node.kind === 'operate') return operation(node, careful);
      return node.kind === 'call' ? call(node, careful) : undefined;
    },
  });
  const plainly = dialect(false);
  const carefully = dialect(true);
  return { formula, condition };
}

const isLogic = (op: Operator): boolean => op === 'and' || op === 'or';

const literalOf = (tree: Tree): number | undefined =>
  tree.kind === 'number' && tree.unit === undefined ? tree.value : undefined;

/** Without the parentheses round the whole. */
export function bare(text: string): string {
  if (!text.startsWith('(') || !text.endsWith(')')) return text;
  let depth = 0;
  for (let k = 0; k < text.length - 1; k++) {
    depth += text[k] === '(' ? 1 : text[k] === ')' ? -1 : 0;
    if (depth === 0) return text;
  }
  return text.slice(1, -1);
}
