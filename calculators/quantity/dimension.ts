/** Exponents of kilogram, metre, second, ampere and kelvin. Angles, ratios and counts are dimensionless. */
export type Dimension = readonly [kg: number, m: number, s: number, A: number, K: number];

export const dimensionless: Dimension = [0, 0, 0, 0, 0];

const symbols = ['kg', 'm', 's', 'A', 'K'] as const;

export const multiply = (a: Dimension, b: Dimension): Dimension => [
  a[0] + b[0],
  a[1] + b[1],
  a[2] + b[2],
  a[3] + b[3],
  a[4] + b[4],
];

export const power = (a: Dimension, p: number): Dimension => [a[0] * p, a[1] * p, a[2] * p, a[3] * p, a[4] * p];

/** Compared with a hair of slack: the cube of a cube root is not exact. */
export const sameDimension = (a: Dimension, b: Dimension): boolean =>
  a.every((exponent, k) => Math.abs(exponent - (b[k] ?? NaN)) < 1e-9);

/** For messages to authors: `kg m s^-2`, or `1` for a plain number. */
export function showDimension(dimension: Dimension): string {
  const parts = dimension.flatMap((exponent, k) => {
    const symbol = symbols[k] ?? '';
    return exponent === 0 ? [] : [exponent === 1 ? symbol : `${symbol}^${exponent}`];
  });
  return parts.join(' ') || '1';
}
