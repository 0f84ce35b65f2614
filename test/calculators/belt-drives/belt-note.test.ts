import fc from 'fast-check';
import { expect, test } from 'vitest';
import { beltNote } from '../../../calculators/belt-drives/belt-note.ts';
import { worked } from '../wheel-kinematics/worked.ts';

const beads = 400;

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

/** Solves −x[k−1] + 2 x[k] − x[k+1] = b[k] between fixed ends. */
function pulledAside(b: readonly number[]): readonly number[] {
  const slope: number[] = [];
  const reach: number[] = [];
  b.forEach((load, k) => {
    const pivot = 2 - (slope[k - 1] ?? 0);
    slope.push(1 / pivot);
    reach.push((load + (reach[k - 1] ?? 0)) / pivot);
  });
  const x: number[] = Array.from({ length: b.length }, () => 0);
  for (let k = b.length - 1; k >= 0; k--) x[k] = (reach[k] ?? 0) + (slope[k] ?? 0) * (x[k + 1] ?? 0);
  return x;
}

const sizeOf = (x: readonly number[]): number => Math.sqrt(x.reduce((sum, one) => sum + one ** 2, 0));

/** The least eigenvalue of that matrix: under its inverse the shape of the lowest note grows most. */
function leastEigenvalue(): number {
  let shape: readonly number[] = Array.from({ length: beads }, (_, k) => 1 + (k % 7));
  let grown = 1;
  for (let round = 0; round < 60; round++) {
    const next = pulledAside(shape);
    grown = sizeOf(next);
    shape = next.map((one) => one / grown);
  }
  return 1 / grown;
}

/** The lowest note of beads on a thread without mass. */
function lowestNote(pull: number, massPerLength: number, length: number): number {
  const spacing = length / (beads + 1);
  return Math.sqrt((leastEigenvalue() * pull) / (massPerLength * spacing)) / Math.sqrt(spacing) / (2 * Math.PI);
}

test('beads on a thread swing at the note', () => {
  fc.assert(
    fc.property(between(0.03, 2), between(0.002, 0.5), between(1, 500), (span, m_l, F_want) => {
      const note = worked(beltNote, { span, m_l, F_want }).number('f_want');
      // The error of the beads is (π/beads)²/24, some 3e-6.
      expect(Math.abs(lowestNote(F_want, m_l, span) / note - 1)).toBeLessThan(1e-5);
    }),
    { numRuns: 25 },
  );
});

test('the note of the wanted pull, heard, gives that pull back', () => {
  fc.assert(
    fc.property(between(0.03, 2), between(0.002, 0.5), between(1, 500), (span, m_l, F_want) => {
      const f = worked(beltNote, { span, m_l, F_want }).number('f_want');
      const { number } = worked(beltNote, { span, m_l, F_want, f });
      expect(number('F_0') / F_want).toBeCloseTo(1, 9);
      expect(number('F_share')).toBeCloseTo(1, 9);
    }),
  );
});

test('an octave too high reads four times the pull', () => {
  const low = worked(beltNote, { f: 120 });
  const high = worked(beltNote, { f: 240 });
  expect(high.number('F_0')).toBeCloseTo(4 * low.number('F_0'), 9);
  expect(high.number('F_octave')).toBeCloseTo(low.number('F_0'), 9);
});
