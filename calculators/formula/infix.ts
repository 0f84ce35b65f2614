import type { FunctionName, Operator, Tree } from './tree.ts';

/** How a written language spells the parts of a formula; the walk and the parentheses are the same for all. */
export interface Dialect {
  /** @param bare whether a negative number here needs no parentheses. */
  readonly name: (name: string, bare: boolean) => string;
  readonly number: (value: number, unit: 'deg' | undefined) => string;
  readonly call: (name: FunctionName, args: readonly string[]) => string;
  readonly operator: (op: Operator) => string;
  /** A node that the language spells in its own way, closed so that it may stand anywhere; `undefined` for the others. */
  readonly instead?: (node: Tree) => string | undefined;
}

const strength: Record<Operator, number> = {
  or: 1,
  and: 2,
  '<': 3,
  '<=': 3,
  '>': 3,
  '>=': 3,
  '==': 3,
  '+': 4,
  '-': 4,
  '*': 5,
  '/': 5,
  '^': 7,
};
const strengthOfMinus = 6;

/** Writes a formula on one line in a dialect, with the fewest parentheses that keep its meaning. */
export function infix(tree: Tree, dialect: Dialect): string {
  /** @param outer the binding of what surrounds the node: weaker nodes get parentheses. */
  const walk = (node: Tree, outer: number, bare: boolean): string =>
    dialect.instead?.(node) ?? spell(node, outer, bare);

  const spell = (node: Tree, outer: number, bare: boolean): string => {
    switch (node.kind) {
      case 'number':
        return dialect.number(node.value, node.unit);
      case 'name':
        return dialect.name(node.name, bare);
      case 'negate':
        return wrap(`-${walk(node.of, strengthOfMinus + 1, false)}`, strengthOfMinus < outer || !bare);
      case 'call':
        return dialect.call(
          node.name,
          node.args.map((arg) => walk(arg, 0, true)),
        );
      case 'operate':
        return operate(node, outer, bare);
    }
  };

  const operate = (node: Extract<Tree, { kind: 'operate' }>, outer: number, bare: boolean): string => {
    const own = strength[node.op];
    const wrapped = own < outer;
    const left = walk(node.left, node.op === '^' ? own + 1 : own, (bare || wrapped) && node.op !== '^');
    const right = walk(node.right, node.op === '^' ? own : own + 1, false);
    return wrap(`${left} ${dialect.operator(node.op)} ${right}`, wrapped);
  };

  return walk(tree, 0, true);
}

const wrap = (text: string, needed: boolean): string => (needed ? `(${text})` : text);

/** The dialect of formula strings themselves, with names (or numbers in their place) written by `name`. */
export const plainDialect = (name: Dialect['name']): Dialect => ({
  name,
  number: (value, unit) => `${value}${unit === 'deg' ? '°' : ''}`,
  call: (of, args) => `${of}(${args.join(', ')})`,
  operator: (op) => op,
});
