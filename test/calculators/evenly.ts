import fc from 'fast-check';

/** Evenly spread: doubles of their own accord are mostly tiny. */
export const between = (min: number, max: number) =>
  fc.integer({ min: 0, max: 1_000_000 }).map((k) => min + ((max - min) * k) / 1_000_000);
