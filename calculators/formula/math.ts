/**
 * Arithmetic in which the dust of rounding is not mistaken for a number: sin(180 deg) is 0, and
 * 1 - 1/2 - 1/2 computed from cosines is 0. What is dropped is 1e-14 of the terms, far below any printed digit.
 */
const dust = 1e-14;

export const tidy = (value: number, scale: number): number => (Math.abs(value) <= dust * scale ? 0 : value);

export const add = (a: number, b: number): number => tidy(a + b, Math.max(Math.abs(a), Math.abs(b)));

export const sumOf = (list: readonly number[]): number =>
  tidy(
    list.reduce((total, x) => total + x, 0),
    Math.max(0, ...list.map(Math.abs)),
  );

export const sin = (x: number): number => tidy(Math.sin(x), Math.max(1, Math.abs(x)));
export const cos = (x: number): number => tidy(Math.cos(x), Math.max(1, Math.abs(x)));
export const tan = (x: number): number => sin(x) / cos(x);

/** Clamped by a hair, so that a legal geometry never becomes NaN by rounding; asin(1.1) stays NaN. */
const clamp = (x: number): number => (Math.abs(x) > 1 && Math.abs(x) < 1 + 1e-12 ? Math.sign(x) : x);
export const asin = (x: number): number => Math.asin(clamp(x));
export const acos = (x: number): number => Math.acos(clamp(x));
