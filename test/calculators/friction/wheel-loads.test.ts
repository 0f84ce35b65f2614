import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { wheelLoads } from '../../../calculators/friction/wheel-loads.ts';
import { degree, worked } from '../wheel-kinematics/worked.ts';
import { ring, springLoads } from './spring-legs.ts';
import { between } from '../evenly.ts';

const still = { acc: 0, slope: 0, x: 0, y: 0, z: 0 };

describe('against springs that push and never pull', () => {
  test.each([3, 4, 5, 6, 7, 8])('%i wheels, with one that lifts where it does', (n) => {
    let lifted = 0;
    fc.assert(
      fc.property(between(-3, 3), between(0, 0.85), between(-3, 3), (alpha, far, way) => {
        const R = 0.2;
        const [x, y] = [far * R * Math.cos(way), far * R * Math.sin(way)];
        const true_ = springLoads(ring(n, alpha, R), 1000, 9 * 9.80665, x, y);
        const out = true_.filter((load) => load === 0).length;
        fc.pre(true_.every(Number.isFinite) && out <= 1);
        lifted += out;
        worked(wheelLoads, { ...still, n, alpha, R, x, y })
          .list('N_i')
          .forEach((load, k) => expect(load).toBeCloseTo(true_[k] ?? NaN, 7));
      }),
      { numRuns: 150 },
    );
    expect(lifted > 0).toBe(n > 3);
  });

  test('slope and speeding up move the weight as tilting the robot does', () => {
    fc.assert(
      fc.property(between(0, 0.1), between(-3, 3), between(0, 1), between(-3, 3), (slope, up, acc, theta) => {
        const [g, m, R, z] = [9.80665, 9, 0.2, 0.12];
        const down = g * Math.cos(slope);
        const x = (-z * (g * Math.sin(slope) * Math.cos(up) + acc * Math.cos(theta))) / down;
        const y = (-z * (g * Math.sin(slope) * Math.sin(up) + acc * Math.sin(theta))) / down;
        const loads = springLoads(ring(3, 0, R), 1000, m * down, x, y);
        const result = worked(wheelLoads, { x: 0, y: 0, z, R, slope, up, acc, theta });
        result.list('N_i').forEach((load, k) => expect(load).toBeCloseTo(loads[k] ?? NaN, 7));
        expect(result.number('x_w')).toBeCloseTo(x, 9);
        expect(result.number('y_w')).toBeCloseTo(y, 9);
      }),
    );
  });
});

test('four wheels, the weight 0.6 R towards wheel 1: 0.60 0.20 0 0.20', () => {
  const shares = worked(wheelLoads, { ...still, n: 4, R: 0.2, x: 0.12 }).list('share_N');
  [0.6, 0.2, 0, 0.2].forEach((share, k) => expect(shares[k]).toBeCloseTo(share, 10));
});

describe('laws', () => {
  test.each([
    [3, 0.5],
    [4, 0.7071],
    [5, 0.809],
    [6, 0.866],
  ])('%i wheels tip at %f R at worst', (n, share) => {
    expect(worked(wheelLoads, { ...still, n, R: 1 }).number('s_tip')).toBeCloseTo(share, 3);
  });

  test('a wheel is about to lift with the weight half of R away from it, whatever the number', () => {
    for (const n of [4, 6, 8]) {
      expect(worked(wheelLoads, { ...still, n, R: 0.2, x: 0.1 }).number('use_lift')).toBeCloseTo(1, 10);
    }
  });

  test('loads make up the weight', () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 8 }), between(-0.06, 0.06), between(-0.06, 0.06), (n, x, y) => {
        const result = worked(wheelLoads, { n, x, y });
        expect(result.list('N_i').reduce((sum, load) => sum + load, 0)).toBeCloseTo(result.number('W_n'), 9);
      }),
    );
  });

  test('on its worst heading the wheel lifts just at that acceleration, on no other heading earlier', () => {
    const standing = { n: 3, x: 0.03, y: 0.01, slope: 3 * degree };
    const result = worked(wheelLoads, { ...standing, acc: 0 });
    const [a, worst] = [result.number('a_lift'), result.number('theta_worst')];
    const least = (theta: number, acc: number): number =>
      Math.min(...worked(wheelLoads, { ...standing, theta, acc }).list('N_i'));
    expect(least(worst, a * 0.999999)).toBeCloseTo(0, 3);
    for (let k = 0; k < 24; k++) expect(least(k * 15 * degree, a * 0.99)).toBeGreaterThan(0);
  });
});

test.each([
  ['three wheels past R/2', { n: 3, x: -0.12 }],
  ['four wheels past the line between two', { n: 4, x: 0.11, y: 0.11 }],
])('%s: tips', (_, inputs) => {
  expect(() => worked(wheelLoads, { ...still, R: 0.2, ...inputs })).toThrow('tips over');
});
