import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { slopeOf } from '../../../calculators/formula/derivative.ts';
import { evaluateNumber, type Value, type Values } from '../../../calculators/formula/evaluate.ts';
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
    ['0^x', 3, 0],
    ['x^x', 2, 4 * (Math.LN2 + 1)],
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
    expect(slopeOf(parse('constructor * x'), { constructor: 2, x: 3 }, { x: 1 })).toBe(2);
  });

  test('slopes of earlier steps chain', () => {
    expect(slopeOf(parse('u * x'), { u: 9, x: 3 }, { x: 1, u: 6 })).toBe(27);
  });
});

describe('lists', () => {
  const values = { u: [1, -2, 4], w: [3, 5, 7], k: 2 };

  test.each<[string, Value]>([
    ['u + k', [1, 0, 0]],
    ['k * w', [0, 4, 0]],
    ['u * w', [3, -4, 0]],
    ['u^2', [2, 0, 0]],
    ['abs(u)', [1, 0, 0]],
    ['sum(u)', 1],
    ['sum(u) / count(u)', 1 / 3],
    ['sum(w)', 2],
    ['max(w)', 0],
    ['min(u)', 0],
    ['max(u) + min(w)', 0],
    ['u - sum(u)', [0, -1, -1]],
  ])('%s', (formula, wanted) => {
    expect(slopeOf(parse(formula), values, { u: [1, 0, 0], w: [0, 2, 0] })).toEqual(wanted);
  });

  test('an extreme moves with the wheel that has it', () => {
    const slopes = { u: [5, 6, 7] };
    expect(slopeOf(parse('max(u)'), values, slopes)).toBe(7);
    expect(slopeOf(parse('min(u)'), values, slopes)).toBe(6);
    expect(slopeOf(parse('2 * max(u) + k'), values, { ...slopes, k: 1 })).toBe(15);
  });

  test('wheel by wheel it is the slope of one wheel', () => {
    const formula = parse('if(x > y, x * sin(y), x - y^2) + k / (1 + abs(x))');
    const number = fc.double({ min: -10, max: 10, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(number, number), { minLength: 1, maxLength: 8 }), number, (pairs, k) => {
        const together = slopeOf(formula, { x: pairs.map(([a]) => a), y: pairs.map(([, b]) => b), k }, { x: 1 });
        expect(together).toEqual(pairs.map(([x, y]) => slopeOf(formula, { x, y, k }, { x: 1 })));
      }),
    );
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

/** Whether every part of the formula has a value of ordinary size. */
const isOrdinary = (tree: Tree, values: Values): boolean =>
  Math.abs(evaluateNumber(tree, values)) < 1e6 && childrenOf(tree).every((child) => isOrdinary(child, values));

/** Which branch each part of the formula is on: at a kink or a jump it changes. */
function branches(tree: Tree, values: Values): readonly number[] {
  const own = (): number[] => {
    if (tree.kind !== 'call') return [];
    const args = tree.args.map((arg) => evaluateNumber(arg, values));
    const [a = NaN, b = NaN] = args;
    switch (tree.name) {
      case 'mod':
        return [Math.floor(a / b)];
      case 'if':
        return [Number(a !== 0)];
      case 'abs':
        return [Math.sign(a)];
      case 'min':
      case 'max':
        return args.flatMap((x) => args.map((y) => Math.sign(x - y)));
      case 'floor':
      case 'round':
        return [evaluateNumber(tree, values)];
      default:
        return [];
    }
  };
  return [...own(), ...childrenOf(tree).flatMap((child) => branches(child, values))];
}

/** The central difference, by two steps that agree; `undefined` near a kink, a jump or a pole. */
function difference(tree: Tree, x: number, y: number): number | undefined {
  const at = (shift: number): number => evaluateNumber(tree, { x: x + shift, y });
  const branch = (shift: number): string => branches(tree, { x: x + shift, y }).join();
  const central = (h: number): number => (at(h) - at(-h)) / (2 * h);
  if ([-2e-4, -1e-4, 1e-4, 2e-4].some((shift) => branch(shift) !== branch(0))) return undefined;
  const [wide, close] = [central(2e-4), central(1e-4)];
  const agree = Math.abs(wide - close) < 1e-5 * Math.max(1, Math.abs(close));
  return agree && Math.abs(close) < 1e3 ? (4 * close - wide) / 3 : undefined;
}

test('agrees with central differences away from kinks', { timeout: 30_000 }, () => {
  let compared = 0;
  // Neither is ever 0, nor are they equal: there a formula may have a value of its own.
  const number = (shift: number) => fc.integer({ min: -3000, max: 3000 }).map((k) => k / 1000 + shift);
  fc.assert(
    fc.property(smooth, number(0.00037), number(0.00071), (tree, x, y) => {
      if (!touches(tree, 'x') || !isOrdinary(tree, { x, y })) return;
      const wanted = difference(tree, x, y);
      if (wanted === undefined) return;
      const slope = Number(slopeOf(tree, { x, y }, { x: 1 }));
      expect(Math.abs(slope - wanted)).toBeLessThan(1e-4 * Math.max(1, Math.abs(wanted)));
      if (wanted !== 0) compared++;
    }),
    { numRuns: 6000 },
  );
  expect(compared).toBeGreaterThan(500);
});
