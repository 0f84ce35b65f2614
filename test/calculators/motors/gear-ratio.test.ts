import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gearRatio } from '../../../calculators/motors/gear-ratio.ts';
import { worked } from '../wheel-kinematics/worked.ts';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

const wanted = fc
  .record({
    v: between(0.05, 3),
    r: between(0.02, 0.2),
    ratio: between(-2, 2).map((power) => 4 ** power),
    z_min: fc.integer({ min: 8, max: 30 }),
    more: fc.integer({ min: 0, max: 60 }),
  })
  .map(({ ratio, more, ...one }) => ({ ...one, omega_m: (ratio * one.v) / one.r, z_max: one.z_min + more }));

interface Pair {
  readonly small: number;
  readonly large: number;
  readonly off: number;
}

/** Every pair there is, the small one among the twelve smallest sizes, however far off. */
function everyPair(z_min: number, z_max: number, k: number): Pair[] {
  const pairs: Pair[] = [];
  for (let small = z_min; small <= Math.min(z_max, z_min + 11); small++) {
    for (let large = z_min; large <= z_max; large++) {
      pairs.push({ small, large, off: Math.abs(large / small / k - 1) });
    }
  }
  return pairs;
}

describe('of every pair of teeth there is', () => {
  test('none comes nearer, and none as near has a smaller small one', () => {
    fc.assert(
      fc.property(wanted, ({ z_min, z_max, ...given }) => {
        const result = worked(gearRatio, { ...given, z_min, z_max });
        const pairs = everyPair(z_min, z_max, result.number('k_teeth'));
        const least = Math.min(...pairs.map(({ off }) => off));
        expect(result.number('e_least')).toBeCloseTo(least, 10);
        const first = pairs.find(({ off }) => off <= least + 1e-5);
        expect([result.number('z_s'), result.number('z_l')]).toEqual([first?.small, first?.large]);
      }),
    );
  });

  test('each listed one is the nearest for its small one', () => {
    fc.assert(
      fc.property(wanted, ({ z_min, z_max, ...given }) => {
        const result = worked(gearRatio, { ...given, z_min, z_max });
        const pairs = everyPair(z_min, z_max, result.number('k_teeth'));
        result.list('z_small').forEach((small, k) => {
          const off = Math.min(...pairs.filter((pair) => pair.small === small).map((pair) => pair.off));
          expect(result.list('e_i')[k]).toBeCloseTo(off, 10);
        });
      }),
    );
  });
});

test('rims run at the speed that the teeth give', () => {
  fc.assert(
    fc.property(wanted, (given) => {
      const result = worked(gearRatio, given);
      const wheel = (given.omega_m * result.number('z1')) / result.number('z2');
      expect(result.number('v_got')).toBeCloseTo(wheel * given.r, 9);
      expect(result.number('v_got') / given.v - 1).toBeCloseTo(result.number('e_v'), 9);
    }),
  );
});

test('a ratio that teeth can make is made', () => {
  const result = worked(gearRatio, { v: 1, r: 0.1, omega_m: 20, z_min: 17, z_max: 60 });
  expect([result.number('z1'), result.number('z2'), result.number('e_v')]).toEqual([17, 34, 0]);
});

test('to speed up, the large one sits on the motor', () => {
  const result = worked(gearRatio, { v: 1, r: 0.1, omega_m: 5, z_min: 17, z_max: 60 });
  expect([result.number('z1'), result.number('z2')]).toEqual([34, 17]);
});
