import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { slopeOf, type Numbers } from '../../../calculators/formula/derivative.ts';
import { evaluateNumber } from '../../../calculators/formula/evaluate.ts';
import { parse } from '../../../calculators/formula/parse.ts';
import { childrenOf, type Tree } from '../../../calculators/formula/tree.ts';
import { randomTree } from './random-trees.ts';

describe('known derivatives', () => {
  test.each<[string, number, number]>([
    ['7', 3, 0],
    ['x', 3, 1],
    ['y', 3, 0],
    ['-x', 3, -1],
    ['x^2', 3, 6],
    ['x^-1', 2, -0.25],
    ['2^x', 3, 8 * Math.LN2],
    ['x * x * x', 2, 12],
    ['1 / x', 2, -0.25],
    ['x / (1 + x)', 1, 0.25],
    ['sqrt(x)', 4, 0.25],
    ['exp(2 * x)', 0, 2],
    ['ln(x)', 4, 0.25],
    ['sin(x)', 0, 1],
    ['cos(x)', Math.PI / 2, -1],
    ['tan(x)', Math.PI / 4, 2],
    ['asin(x)', 0, 1],
    ['acos(x)', 0, -1],
    ['atan(x)', 1, 0.5],
    ['atan2(x, 1)', 1, 0.5],
    ['atan2(1, x)', 1, -0.5],
    ['abs(x)', -2, -1],
    ['max(x, 1)', 2, 1],
    ['max(x, 1)', 0, 0],
    ['min(x, 1, 2 * x)', -1, 2],
    ['mod(x, 3)', 4, 1],
    ['mod(7, x)', 3, -2],
    ['if(x > 0, x^2, 5)', 3, 6],
    ['if(x > 0, x^2, 5)', -3, 0],
    ['round(x) + floor(x) + ceil(x) + sign(x)', 0.3, 0],
    ['x < 2', 1, 0],
  ])('of %s at %d', (formula, x, wanted) => {
    expect(slopeOf(parse(formula), { x, y: 5 }, { x: 1 })).toBeCloseTo(wanted, 12);
  });

  test('what does not change has no slope, even where the function has none', () => {
    expect(slopeOf(parse('asin(y) + sqrt(z) + x'), { x: 1, y: 1, z: 0 }, { x: 1 })).toBe(1);
    expect(slopeOf(parse('z^0.5 + x'), { x: 1, z: 0 }, { x: 1 })).toBe(1);
  });

  test('a missing slope is 0, whatever the name', () => {
    expect(slopeOf(parse('constructor * x'), { constructor: 2, x: 3 } as Numbers, { x: 1 })).toBe(2);
  });

  test('slopes of earlier steps chain', () => {
    expect(slopeOf(parse('u * x'), { u: 9, x: 3 }, { x: 1, u: 6 })).toBe(27);
  });
});

const smooth = randomTree({
  names: ['x', 'y'],
  operators: ['+', '-', '*', '/', '^'],
  functions: [
    ...(['sin', 'cos', 'tan', 'asin', 'acos', 'atan', 'atan2', 'sqrt', 'exp', 'ln'] as const),
    ...(['abs', 'min', 'max', 'mod', 'if', 'floor', 'round'] as const),
  ],
  numbers: fc.integer({ min: 1, max: 40 }).map((k) => k / 8),
  degrees: true,
});

const touches = (tree: Tree, x: string): boolean =>
  tree.kind === 'name' ? tree.name === x : childrenOf(tree).some((child) => touches(child, x));

/** Central differences with two steps that agree: so there is no kink, jump or pole nearby, and no noise. */
function difference(tree: Tree, x: number, y: number): number | undefined {
  const at = (shift: number): number => evaluateNumber(tree, { x: x + shift, y });
  const central = (h: number): number => (at(h) - at(-h)) / (2 * h);
  const [wide, close] = [central(2e-4), central(1e-4)];
  const sided = [(at(1e-4) - at(0)) / 1e-4, (at(0) - at(-1e-4)) / 1e-4] as const;
  const scale = Math.max(1, Math.abs(close));
  if (!(Math.abs(at(0)) < 1e4 && scale < 1e3)) return undefined;
  if (!(Math.abs(wide - close) < 1e-5 * scale && Math.abs(sided[0] - sided[1]) < 1e-1 * scale)) return undefined;
  return (4 * close - wide) / 3;
}

test('agrees with central differences away from kinks', () => {
  let compared = 0;
  const number = fc.double({ min: -3, max: 3, noNaN: true });
  fc.assert(
    fc.property(smooth, number, number, (tree, x, y) => {
      if (!touches(tree, 'x')) return;
      const wanted = difference(tree, x, y);
      if (wanted === undefined) return;
      const slope = slopeOf(tree, { x, y }, { x: 1 });
      expect(Math.abs(slope - wanted)).toBeLessThan(1e-4 * Math.max(1, Math.abs(wanted)));
      if (wanted !== 0) compared++;
    }),
    { numRuns: 6000 },
  );
  expect(compared).toBeGreaterThan(500);
});
