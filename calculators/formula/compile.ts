import { isSum, operators, scalars, termsOf } from './evaluate.ts';
import { sumOf } from './math.ts';
import { childrenOf, closesList, type Tree } from './tree.ts';

/** A formula of plain numbers, which stand in a row. */
export type Run = (row: readonly number[]) => number;

/** Whether a formula asks for a whole list, which a row of plain numbers has not. */
export const needsList = (tree: Tree): boolean =>
  (tree.kind === 'call' && (tree.name === 'upto' || closesList(tree.name, tree.args.length))) ||
  childrenOf(tree).some(needsList);

const degree = Math.PI / 180;

/**
 * A formula made ready to be worked out many times over, for one wheel. It gives what `evaluate` gives.
 * @param placeOf where a name stands in the row.
 */
export function compile(tree: Tree, placeOf: (name: string) => number): Run {
  const part = (node: Tree): Run => compile(node, placeOf);
  switch (tree.kind) {
    case 'number': {
      const value = tree.unit === 'deg' ? tree.value * degree : tree.value;
      return () => value;
    }
    case 'name': {
      if (tree.name === 'pi') return () => Math.PI;
      const place = placeOf(tree.name);
      return (row) => row[place] ?? NaN;
    }
    case 'negate': {
      const of = part(tree.of);
      return (row) => -of(row);
    }
    case 'operate':
      return compileOperation(tree, part);
    case 'call':
      return compileCall(tree, part);
  }
}

type Part = (node: Tree) => Run;

function compileOperation(tree: Extract<Tree, { kind: 'operate' }>, part: Part): Run {
  const terms = isSum(tree) ? termsOf(tree) : [];
  if (terms.length > 2) {
    const runs = terms.map(({ tree: term, minus }): Run => {
      const run = part(term);
      return minus ? (row) => -run(row) : run;
    });
    return (row) => sumOf(runs.map((run) => run(row)));
  }
  const [operator, left, right] = [operators[tree.op], part(tree.left), part(tree.right)];
  return (row) => operator(left(row), right(row));
}

function compileCall(tree: Extract<Tree, { kind: 'call' }>, part: Part): Run {
  const scalar = scalars[tree.name];
  if (!scalar) throw new Error(`invalid argument: ${tree.name} takes a list`);
  const runs = tree.args.map(part);
  const [first, second] = runs;
  if (first && runs.length === 1) return (row) => scalar(first(row));
  if (first && second && runs.length === 2) return (row) => scalar(first(row), second(row));
  return (row) => scalar(...runs.map((run) => run(row)));
}
