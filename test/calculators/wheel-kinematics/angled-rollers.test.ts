import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readInputs } from '../../../calculators/inputs.ts';
import { angledRollers } from '../../../calculators/wheel-kinematics/angled-rollers.ts';
import { dot, type Vector } from './plane-robot.ts';
import { degree, worked } from './worked.ts';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

const inputs = fc.record({
  half_base: between(0.05, 1),
  half_track: between(0.05, 1),
  gamma: between(5 * degree, 85 * degree),
  pattern: fc.constantFrom(1, -1),
  r: between(0.01, 0.2),
  v_x: between(-2, 2),
  v_y: between(-2, 2),
  Omega: between(-5, 5),
  omega_max: between(1, 50),
});
type Inputs = typeof inputs extends fc.Arbitrary<infer T> ? T : never;

const holds = (law: (chosen: Inputs) => void): void => fc.assert(fc.property(inputs, law));

/** Front left, front right, rear left, rear right. */
const corners = ({ half_base, half_track }: Inputs): readonly Vector[] => [
  [half_base, half_track],
  [half_base, -half_track],
  [-half_base, half_track],
  [-half_base, -half_track],
];

/**
 * The axis of the roller on the floor, γ from the wheel’s axle. From above one sees the rollers on top, which slant the
 * other way: where those point at the centre, the roller on the floor lies across the line to it.
 */
const rollerAxes = ({ gamma, pattern }: Inputs): readonly Vector[] =>
  [-1, 1, 1, -1].map((sign) => [pattern * sign * Math.sin(gamma), Math.cos(gamma)]);

describe('a roller does not slip along its axis', () => {
  test('the rim and the floor move alike along it', () => {
    holds((chosen) => {
      const u = worked(angledRollers, chosen).list('u');
      const axes = rollerAxes(chosen);
      corners(chosen).forEach(([x, y], k) => {
        const floor: Vector = [chosen.v_x - chosen.Omega * y, chosen.v_y + chosen.Omega * x];
        const slip = dot([(u[k] ?? NaN) - floor[0], -floor[1]], axes[k] ?? [NaN, NaN]);
        expect(slip).toBeCloseTo(0, 10);
      });
    });
  });
});

describe('laws', () => {
  test('the wheels give the travel back', () => {
    holds((chosen) => {
      const result = worked(angledRollers, chosen);
      const fastest = Math.max(...result.list('u').map(Math.abs));
      const tolerance = 1e-15 + 1e-12 * fastest * Math.max(1, Math.tan(chosen.gamma));
      expect(Math.abs(result.number('back_x') - chosen.v_x)).toBeLessThanOrEqual(tolerance);
      expect(Math.abs(result.number('back_y') - chosen.v_y)).toBeLessThanOrEqual(tolerance);
    });
  });

  test('the front wheels together do what the rear wheels do', () => {
    holds((chosen) => {
      const [frontLeft = NaN, frontRight = NaN, rearLeft = NaN, rearRight = NaN] = worked(angledRollers, chosen).list(
        'u',
      );
      expect(frontLeft + frontRight).toBeCloseTo(rearLeft + rearRight, 10);
    });
  });

  test('turning alone asks the lever of every wheel', () => {
    holds((chosen) => {
      const result = worked(angledRollers, { ...chosen, v_x: 0, v_y: 0 });
      const asked = chosen.Omega * result.number('lever');
      [-asked, asked, -asked, asked].forEach((wanted, k) => {
        expect(result.list('u')[k]).toBeCloseTo(wanted, 10);
      });
    });
  });

  test.each<[string, string, Vector]>([
    ['ahead', 'v_ahead', [1, 0]],
    ['sideways', 'v_side', [0, 1]],
    ['along the diagonal', 'v_diagonal', [Math.SQRT1_2, Math.SQRT1_2]],
    ['along the other diagonal', 'v_diagonal', [Math.SQRT1_2, -Math.SQRT1_2]],
  ])('the top speed %s is where the fastest wheel reaches its limit', (_, name, [v_x, v_y]) => {
    holds((chosen) => {
      const result = worked(angledRollers, { ...chosen, v_x, v_y, Omega: 0 });
      const fastest = Math.max(...result.list('omega').map(Math.abs));
      expect(result.number(name) / (chosen.omega_max / fastest)).toBeCloseTo(1, 10);
    });
  });
});

describe('limits', () => {
  const square = { half_base: 0.1, half_track: 0.1, gamma: 45 * degree, pattern: 1, r: 0.04, omega_max: 10 };

  test('at 45° sideways is as fast as ahead, and the lever is both halves', () => {
    const result = worked(angledRollers, { ...square, half_base: 0.12 });
    expect(result.number('v_side')).toBeCloseTo(0.4, 12);
    expect(result.number('v_ahead')).toBeCloseTo(0.4, 12);
    expect(result.number('lever')).toBeCloseTo(0.22, 12);
  });

  test.each([
    [5, 0.4 * 0.08748866352592401],
    [85, 0.4 * 11.430052302761343],
  ])('at %d° the top speed sideways is tan γ of that ahead', (angle, wanted) => {
    expect(worked(angledRollers, { ...square, gamma: angle * degree }).number('v_side')).toBeCloseTo(wanted, 10);
  });

  test.each(['0 deg', '90 deg'])('rollers at %s are refused', (gamma) => {
    expect(readInputs(angledRollers.given, { gamma })).toMatchObject({ ok: false, problems: [{ given: 'gamma' }] });
  });

  test('mounted the other way round on a square base no wheel turns with the robot', () => {
    const result = worked(angledRollers, { ...square, pattern: -1, v_x: 0, v_y: 0, Omega: 3 });
    expect(result.number('lever')).toBe(0);
    expect(result.list('u').map(Math.abs)).toEqual([0, 0, 0, 0]);
  });
});
