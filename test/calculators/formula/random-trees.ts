import fc from 'fast-check';
import {
  closesList,
  functionArguments,
  type FunctionName,
  type Operator,
  type Tree,
} from '../../../calculators/formula/tree.ts';

/** Trees as the parser could make them: numbers are not negative, and lists are closed over a single name. */
export interface Kind {
  readonly names: readonly string[];
  readonly operators: readonly Operator[];
  readonly functions: readonly FunctionName[];
  readonly numbers: fc.Arbitrary<number>;
  readonly degrees: boolean;
}

export const allFunctions = Object.keys(functionArguments) as FunctionName[];
export const allOperators: readonly Operator[] = ['+', '-', '*', '/', '^', '<', '<=', '>', '>=', '==', 'and', 'or'];

export const anyTree: Kind = {
  names: ['x', 'y', 'z', 'alpha_i', 'omega_max', 'z1', 'pi'],
  operators: allOperators,
  functions: allFunctions,
  numbers: fc.oneof(
    fc.nat(999),
    fc.double({ min: 0, noNaN: true, noDefaultInfinity: true }).map((x) => x + 0),
  ),
  degrees: true,
};

export function randomTree(kind: Kind): fc.Arbitrary<Tree> {
  const name = fc.constantFrom(...kind.names).map((one): Tree => ({ kind: 'name', name: one }));
  const number = kind.numbers.map((value): Tree => ({ kind: 'number', value }));
  const degree = fc.nat(360).map((value): Tree => ({ kind: 'number', value, unit: 'deg' }));
  const leaves = kind.degrees ? [name, number, degree] : [name, number];
  const { tree } = fc.letrec<{ tree: Tree }>((tie) => {
    const inner = tie('tree');
    const call = (of: FunctionName): fc.Arbitrary<Tree> =>
      argumentCounts(of).chain((count) => {
        const args = closesList(of, count) ? [name] : Array.from({ length: count }, () => inner);
        return fc.tuple(...args).map((found): Tree => ({ kind: 'call', name: of, args: found }));
      });
    return {
      tree: fc.oneof(
        { maxDepth: 5, depthSize: 'medium', withCrossShrink: true },
        { weight: 2, arbitrary: fc.oneof(...leaves) },
        { weight: 2, arbitrary: inner.map((of): Tree => ({ kind: 'negate', of })) },
        {
          weight: 6,
          arbitrary: fc
            .tuple(fc.constantFrom(...kind.operators), inner, inner)
            .map(([op, left, right]): Tree => ({ kind: 'operate', op, left, right })),
        },
        { weight: 4, arbitrary: fc.constantFrom(...kind.functions).chain(call) },
      ),
    };
  });
  return tree;
}

function argumentCounts(of: FunctionName): fc.Arbitrary<number> {
  const wanted: number | readonly [number, number] = functionArguments[of];
  return typeof wanted === 'number' ? fc.constant(wanted) : fc.integer({ min: wanted[0], max: wanted[1] });
}
