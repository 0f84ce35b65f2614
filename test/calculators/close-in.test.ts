import fc from 'fast-check';
import { expect, test } from 'vitest';
import { closeIn } from '../../calculators/close-in.ts';

/** A curve that rises, with a corner or a jump in it. */
const rising = fc.record({
  root: fc.double({ min: -5, max: 5, noNaN: true }),
  bend: fc.double({ min: 0, max: 20, noNaN: true }),
  corner: fc.double({ min: 0, max: 5, noNaN: true }),
  jump: fc.constantFrom(0, 1000),
});

test('finds where each of several curves is zero', () => {
  fc.assert(
    fc.property(fc.array(rising, { minLength: 1, maxLength: 4 }), (curves) => {
      let trials = 0;
      const found = closeIn(
        (xs) => {
          trials++;
          return curves.map(({ root, bend, corner, jump }, k) => {
            const off = (xs[k] ?? NaN) - root;
            return off + bend * off ** 3 + (off > 0 ? corner * off : 0) + (off > 2 ? jump : 0);
          });
        },
        curves.map(() => -6),
        curves.map(() => 6),
      );
      found.forEach((x, k) => {
        expect(Math.abs(x - (curves[k]?.root ?? NaN))).toBeLessThan(1e-12);
      });
      // A root at 0 is closed in on for as long as there are numbers between.
      if (curves.every(({ root }) => Math.abs(root) > 1e-3)) expect(trials).toBeLessThan(80);
    }),
  );
});

test('a low end that is a root is found, and ends on one side have none', () => {
  expect(closeIn(([x = NaN]) => [x], [0], [3])).toEqual([0]);
  expect(closeIn(([x = NaN]) => [x + 1], [0], [3])).toEqual([NaN]);
  expect(closeIn(([x = NaN]) => [x - 3], [0], [3])[0]).toBeCloseTo(3, 12);
});
