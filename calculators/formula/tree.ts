/**
 * A formula as a tree: plain data, so that it can be frozen, compared and sent to a page as JSON.
 * Every reading (evaluate, dimension, typeset, ...) is a walk over these five kinds of node.
 */
export type Tree =
  | { readonly kind: 'number'; readonly value: number; readonly unit?: 'deg' }
  | { readonly kind: 'name'; readonly name: string }
  | { readonly kind: 'negate'; readonly of: Tree }
  | { readonly kind: 'operate'; readonly op: Operator; readonly left: Tree; readonly right: Tree }
  | { readonly kind: 'call'; readonly name: FunctionName; readonly args: readonly Tree[] };

export type Operator = '+' | '-' | '*' | '/' | '^' | '<' | '<=' | '>' | '>=' | '==' | 'and' | 'or';

/** Every function a formula may use, with the number of arguments it takes. */
export const functionArguments = {
  sin: 1,
  cos: 1,
  tan: 1,
  asin: 1,
  acos: 1,
  atan: 1,
  atan2: 2,
  sqrt: 1,
  exp: 1,
  ln: 1,
  abs: 1,
  sign: 1,
  round: 1,
  floor: 1,
  ceil: 1,
  mod: 2,
  min: [1, 4],
  max: [1, 4],
  sum: 1,
  count: 1,
  upto: 1,
  if: 3,
} as const satisfies Record<string, number | readonly [number, number]>;

export type FunctionName = keyof typeof functionArguments;

/** Functions that turn a list into one number; their argument is a single name, so that a printed line stays short. */
export const closesList = (name: FunctionName, args: number): boolean =>
  name === 'sum' || name === 'count' || ((name === 'min' || name === 'max') && args === 1);

/** The names a formula uses, in order of first use, without `pi`. */
export function namesIn(tree: Tree): string[] {
  const found = new Set<string>();
  const visit = (node: Tree): void => {
    if (node.kind === 'name') found.add(node.name);
    else for (const child of childrenOf(node)) visit(child);
  };
  visit(tree);
  found.delete('pi');
  return [...found];
}

export function childrenOf(tree: Tree): readonly Tree[] {
  switch (tree.kind) {
    case 'negate':
      return [tree.of];
    case 'operate':
      return [tree.left, tree.right];
    case 'call':
      return tree.args;
    default:
      return [];
  }
}
