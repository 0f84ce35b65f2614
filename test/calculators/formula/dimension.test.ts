import { describe, expect, test } from 'vitest';
import { dimensionOf } from '../../../calculators/formula/dimension.ts';
import { parse } from '../../../calculators/formula/parse.ts';
import { dimensionless, showDimension, type Dimension } from '../../../calculators/quantity/dimension.ts';

const metre: Dimension = [0, 1, 0, 0, 0];
const second: Dimension = [0, 0, 1, 0, 0];
const names: Readonly<Record<string, Dimension>> = {
  L: metre,
  D: metre,
  t: second,
  m: [1, 0, 0, 0, 0],
  v: [0, 1, -1, 0, 0],
  I: [0, 0, 0, 1, 0],
  U: [1, 2, -3, -1, 0],
  n: dimensionless,
  alpha: dimensionless,
};
const shown = (formula: string): string => showDimension(dimensionOf(parse(formula), names));

describe('fits', () => {
  test.each([
    ['L / t', 'm s^-1'],
    ['L * D', 'm^2'],
    ['L^3', 'm^3'],
    ['L^-1', 'm^-1'],
    ['L^(1/2)', 'm^0.5'],
    ['sqrt(L * D)', 'm'],
    ['(L^(1/3))^3', 'm'],
    ['m * v^2 / 2', 'kg m^2 s^-2'],
    ['U * I', 'kg m^2 s^-3'],
    ['L + D', 'm'],
    ['L - 0', 'm'],
    ['0 + L', 'm'],
    ['max(L, D, 0)', 'm'],
    ['mod(L, D)', 'm'],
    ['abs(-L)', 'm'],
    ['sum(L)', 'm'],
    ['min(L)', 'm'],
    ['count(L)', '1'],
    ['upto(n)', '1'],
    ['sign(v)', '1'],
    ['if(L > D, v, 0)', 'm s^-1'],
    ['if(L > 0 and n == 3, L, D)', 'm'],
    ['atan2(L, D)', '1'],
    ['sin(alpha + 90deg) * L', 'm'],
    ['cos(L / D)', '1'],
    ['exp(n)', '1'],
    ['2^n', '1'],
    ['n^alpha', '1'],
    ['pi * L', 'm'],
    ['L < D', '1'],
    ['0', '1'],
    ['v * t == L', '1'],
  ])('%s is in %s', (formula, wanted) => {
    expect(shown(formula)).toBe(wanted);
  });
});

describe('does not fit', () => {
  test.each([
    ['L + t', 'invalid dimensions: sum of m and s'],
    ['L - t', 'invalid dimensions: difference of m and s'],
    ['L + 1', 'invalid dimensions: sum of m and 1'],
    ['L < t', 'invalid dimensions: comparison of m and s'],
    ['L == t', 'invalid dimensions: comparison of m and s'],
    ['max(L, t)', 'invalid dimensions: max of m and s'],
    ['mod(L, n)', 'invalid dimensions: mod of m and 1'],
    ['if(n, L, t)', 'invalid dimensions: choice of m and s'],
    ['if(L, 1, 2)', 'invalid dimension: a condition of m'],
    ['L and n', 'invalid dimension: and of m'],
    ['n or L', 'invalid dimension: or of m'],
    ['atan2(L, t)', 'invalid dimensions: atan2 of m and s'],
    ['sin(L)', 'invalid dimension: sin of m'],
    ['cos(L * D)', 'invalid dimension: cos of m^2'],
    ['asin(L)', 'invalid dimension: asin of m'],
    ['exp(t)', 'invalid dimension: exp of s'],
    ['ln(L)', 'invalid dimension: ln of m'],
    ['round(L)', 'invalid dimension: round of m'],
    ['upto(L)', 'invalid dimension: upto of m'],
    ['2^L', 'invalid dimension: an exponent of m'],
    ['L^n', 'missing value: n'],
    ['x', 'missing dimension: x'],
    ['constructor', 'missing dimension: constructor'],
    ['L + toString', 'missing dimension: toString'],
  ])('%s', (formula, message) => {
    expect(() => shown(formula)).toThrow(message);
  });
});
