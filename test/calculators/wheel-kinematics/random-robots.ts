import fc from 'fast-check';

/** Numbers in a range that is not narrow; those too small to mean anything are 0. */
export const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true }).map((x) => (Math.abs(x) < 1e-9 ? 0 : x));

/** Robots from toy to forklift, with three to eight wheels standing anyhow; SI. */
export const robots = fc.record({
  n: fc.integer({ min: 3, max: 8 }),
  alpha: between(-2 * Math.PI, 2 * Math.PI),
  R: between(0.02, 2),
  r: between(0.005, 0.3),
});

/** Motions they could make; SI. */
export const motions = fc.record({
  v: between(0, 3),
  theta: between(-2 * Math.PI, 2 * Math.PI),
  Omega: between(-5, 5),
});
