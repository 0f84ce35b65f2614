/**
 * Arithmetic in which the dust of rounding is not mistaken for a number: sin(180 deg) is 0, and
 * 1 - 1/2 - 1/2 computed from cosines is 0. What is dropped is 1e-12 of the terms: a difference smaller than that would
 * not have the four true digits that are printed.
 */
const dust = 1e-12;

/** What is infinite stays so: it must be refused later, not vanish here. */
export const tidy = (value: number, scale: number): number =>
  Number.isFinite(value) && Math.abs(value) <= dust * scale ? 0 : value;

export const add = (a: number, b: number): number => tidy(a + b, Math.max(Math.abs(a), Math.abs(b)));

export function sumOf(list: readonly number[]): number {
  let total = 0;
  let largest = 0;
  for (const x of list) {
    total += x;
    largest = Math.max(largest, Math.abs(x));
  }
  return tidy(total, largest);
}

/** Within one radian of 0 a small sine is no dust. */
export const sin = (x: number): number => (Math.abs(x) < 1 ? Math.sin(x) : tidy(Math.sin(x), Math.max(1, Math.abs(x))));
export const cos = (x: number): number => tidy(Math.cos(x), Math.max(1, Math.abs(x)));
export const tan = (x: number): number => sin(x) / cos(x);

/** Clamped by a hair, so that a legal geometry never becomes NaN by rounding; asin(1.1) stays NaN. */
const clamp = (x: number): number => (Math.abs(x) > 1 && Math.abs(x) < 1 + 1e-12 ? Math.sign(x) : x);
export const asin = (x: number): number => Math.asin(clamp(x));
export const acos = (x: number): number => Math.acos(clamp(x));

/** Halves and whole numbers missed by a hair are meant: 255 * 0.9 computed as 229.49999999999997 rounds up. */
const snap = (x: number): number => {
  const near = Math.round(2 * x) / 2;
  return Math.abs(x - near) <= dust * Math.abs(x) ? near : x;
};
export const round = (x: number): number => Math.round(snap(x));
export const floor = (x: number): number => Math.floor(snap(x));
export const ceil = (x: number): number => Math.ceil(snap(x));
export const mod = (a: number, b: number): number => add(a, -b * floor(a / b));
