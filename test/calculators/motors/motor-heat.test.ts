import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { motorHeat } from '../../../calculators/motors/motor-heat.ts';
import { toValues, usualEntries } from '../../../calculators/inputs.ts';
import { solve } from '../../../calculators/solve.ts';
import { worked } from '../wheel-kinematics/worked.ts';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

interface Motor {
  readonly I_m: number;
  readonly R_w: number;
  readonly Theta_w: number;
  readonly R_th: number;
  readonly tau_th: number;
  readonly Theta_a: number;
  readonly Theta_max: number;
}

/** Motors by how near to running away they are. */
const motors = (from: number, to: number): fc.Arbitrary<Motor> =>
  fc
    .record({
      q: between(from, to),
      R_w: between(0.05, 50),
      Theta_w: between(0, 50),
      R_th: between(0.5, 60),
      tau_th: between(5, 4000),
      Theta_a: between(-10, 45),
      above: between(20, 150),
    })
    .map(({ q, above, ...motor }) => ({
      ...motor,
      I_m: Math.sqrt((q * (motor.Theta_w + 234.5)) / (motor.R_th * motor.R_w)),
      Theta_max: motor.Theta_a + above,
    }));

const copper = ({ R_w, Theta_w }: Motor, at: number): number => (R_w * (234.5 + at)) / (234.5 + Theta_w);

/** How fast the winding warms: heat made less heat shed, over what it holds. */
const warming = (motor: Motor, at: number): number =>
  (motor.R_th * motor.I_m ** 2 * copper(motor, at) - (at - motor.Theta_a)) / motor.tau_th;

/** The temperature after a while, by steps of the classical Runge-Kutta method. */
function warmed(motor: Motor, time: number): number {
  const steps = 4000;
  const dt = time / steps;
  let now = motor.Theta_a;
  for (let k = 0; k < steps; k++) {
    const a = warming(motor, now);
    const b = warming(motor, now + (a * dt) / 2);
    const c = warming(motor, now + (b * dt) / 2);
    const d = warming(motor, now + c * dt);
    now += ((a + 2 * b + 2 * c + d) * dt) / 6;
  }
  return now;
}

describe('a winding warmed step by step, its resistance rising with it', () => {
  test('is at its limit, or at 99.9 % of its rise, after the time told', () => {
    fc.assert(
      fc.property(motors(0.02, 0.9), (motor) => {
        const result = worked(motorHeat, { ...motor });
        const reached = warmed(motor, result.number('t_hold'));
        const almost = motor.Theta_a + 0.999 * result.number('dTheta_end');
        expect(Math.abs(reached - Math.min(motor.Theta_max, almost))).toBeLessThanOrEqual(1e-6 * (reached + 300));
      }),
      { numRuns: 40 },
    );
  });

  test('comes to rest at its end temperature', () => {
    fc.assert(
      fc.property(motors(0.02, 0.9), (motor) => {
        const result = worked(motorHeat, { ...motor });
        const end = result.number('Theta_end');
        expect(Math.abs(warming(motor, end) * motor.tau_th)).toBeLessThanOrEqual(1e-8 * (end + 300));
        expect(warmed(motor, 12 * result.number('tau_hot'))).toBeCloseTo(end, 1);
      }),
      { numRuns: 30 },
    );
  });

  test('keeps at its limit at the current it may hold', () => {
    fc.assert(
      fc.property(motors(0.02, 0.9), (motor) => {
        const held = { ...motor, I_m: worked(motorHeat, { ...motor }).number('I_hold') };
        expect(worked(motorHeat, held).number('Theta_end')).toBeCloseTo(motor.Theta_max, 6);
      }),
    );
  });
});

describe('running away', () => {
  const given = toValues(motorHeat.given, usualEntries(motorHeat.given));

  test('from one kelvin for each kelvin on there is no end; it is at its limit after the time of the sentence', () => {
    fc.assert(
      fc.property(motors(1.05, 6), (motor) => {
        const { values, refusal } = solve(motorHeat, { ...given, ...motor });
        expect(refusal?.says).toMatch(/no end temperature.*after \{t_hold in s\}/);
        expect(warming(motor, motor.Theta_max)).toBeGreaterThan(warming(motor, motor.Theta_a));
        expect(warmed(motor, Number(values['t_hold']))).toBeCloseTo(motor.Theta_max, 4);
      }),
      { numRuns: 30 },
    );
  });

  test('begins at the current told', () => {
    const away = worked(motorHeat, {}).number('I_away');
    expect(worked(motorHeat, { I_m: 0.999 * away }).number('q_hot')).toBeCloseTo(0.998, 3);
    expect(() => worked(motorHeat, { I_m: 1.001 * away })).toThrow(/no end temperature/);
  });
});

test('no current leaves it as warm as the air', () => {
  expect(worked(motorHeat, { I_m: 0 }).number('Theta_end')).toBe(25);
});
