import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rollRatio } from '../../../calculators/wheel-kinematics/roll-ratio.ts';
import { rotate } from './plane-robot.ts';
import { between } from './random-robots.ts';
import { degree, worked } from './worked.ts';

describe('by hand', () => {
  test.each([
    [0, 1, 10, 0],
    [60, 0.5, 5, 0.6 * Math.sin(60 * degree)],
    [90, 0, 0, 0.6],
    [120, -0.5, -5, 0.6 * Math.sin(60 * degree)],
    [180, -1, -10, 0],
    [-90, 0, 0, -0.6],
  ])('at %d°', (phi, ratio, omega, free) => {
    const results = worked(rollRatio, { v: 0.6, phi: phi * degree, r: 0.06, q: 0.03 });
    expect(results.number('k_roll')).toBeCloseTo(ratio, 12);
    expect(results.number('omega_roll')).toBeCloseTo(omega, 12);
    expect(results.number('v_free')).toBeCloseTo(free, 12);
    expect(results.number('omega_q')).toBeCloseTo(free / 0.03, 12);
  });
});

const inputs = fc.record({ v: between(0, 5), phi: between(-6.2, 6.2), r: between(0.01, 1), q: between(0.001, 1) });

test('the parts are the travel turned into the frame of the wheel', () => {
  fc.assert(
    fc.property(inputs, ({ v, phi, r, q }) => {
      const results = worked(rollRatio, { v, phi, r, q });
      const [along, across] = rotate([v, 0], phi);
      expect(results.number('v_roll')).toBeCloseTo(along, 10);
      expect(results.number('v_free')).toBeCloseTo(across, 10);
      expect(results.number('omega_roll') * r).toBeCloseTo(along, 10);
      expect(results.number('omega_q') * q).toBeCloseTo(across, 10);
    }),
  );
});

test('a wheel turned to the other side rolls the same and its rollers the other way', () => {
  fc.assert(
    fc.property(inputs, (given) => {
      const [here, there] = [worked(rollRatio, given), worked(rollRatio, { ...given, phi: -given.phi })];
      expect(there.number('omega_roll')).toBe(here.number('omega_roll'));
      expect(there.number('omega_q') + here.number('omega_q')).toBeCloseTo(0, 9);
    }),
  );
});
