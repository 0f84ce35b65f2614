import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  dimensionless,
  multiply,
  power,
  sameDimension,
  showDimension,
  type Dimension,
} from '../../../calculators/quantity/dimension.ts';

const exponent = fc.integer({ min: -4, max: 4 });
const dimension: fc.Arbitrary<Dimension> = fc.tuple(exponent, exponent, exponent, exponent, exponent);

test('multiplying and raising keep the rules of exponents', () => {
  fc.assert(
    fc.property(dimension, dimension, exponent, (a, b, p) => {
      expect(sameDimension(multiply(a, b), multiply(b, a))).toBe(true);
      expect(sameDimension(power(multiply(a, b), p), multiply(power(a, p), power(b, p)))).toBe(true);
      expect(sameDimension(multiply(a, power(a, -1)), dimensionless)).toBe(true);
      expect(sameDimension(power(power(a, 1 / 3), 3), a)).toBe(true);
    }),
  );
});

test('differ in any one exponent, differ', () => {
  const k = fc.nat(4);
  fc.assert(
    fc.property(dimension, k, fc.constantFrom(-1, 0.5, 1), (a, index, change) => {
      const b = a.map((x, i) => (i === index ? x + change : x)) as unknown as Dimension;
      expect(sameDimension(a, b)).toBe(false);
    }),
  );
});

describe('shown', () => {
  test.each<[Dimension, string]>([
    [dimensionless, '1'],
    [[0, 1, 0, 0, 0], 'm'],
    [[1, 1, -2, 0, 0], 'kg m s^-2'],
    [[0, 0, 0, 1, -0.5], 'A K^-0.5'],
  ])('%j as %s', (one, wanted) => {
    expect(showDimension(one)).toBe(wanted);
  });
});
