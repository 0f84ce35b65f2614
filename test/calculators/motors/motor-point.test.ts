import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { motorPoint } from '../../../calculators/motors/motor-point.ts';
import { worked } from '../wheel-kinematics/worked.ts';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

/** Data of a motor that could be: its gears lose a share of what the winding converts, and it turns at this voltage. */
const motors = fc
  .record({
    V_rated: between(3, 48),
    I_s: between(1, 50),
    free: between(0.01, 0.3),
    omega_0: between(5, 1000),
    kept: between(0.3, 1),
    volts: between(0.4, 1.3),
    ratio_b: between(0.3, 8),
    eta: between(0.5, 1),
    load: between(0, 0.98),
  })
  .map(({ free, kept, volts, load, ...motor }) => {
    const { V_rated, I_s, omega_0 } = motor;
    const I_0 = free * I_s;
    const R = V_rated / I_s;
    const T_s = (kept * (V_rated - I_0 * R) * (I_s - I_0)) / omega_0;
    const V = volts * V_rated;
    const stall = (T_s * (V / R - I_0)) / (I_s - I_0);
    return { ...motor, I_0, T_s, V, T: load * stall * motor.ratio_b * motor.eta };
  });

const everywhere = (law: (result: ReturnType<typeof worked>, given: Record<string, number>) => void): void => {
  fc.assert(
    fc.property(motors, (given) => {
      law(worked(motorPoint, given), given);
    }),
  );
};

describe('a motor that drives', () => {
  test('what goes in comes out as work, heat of the winding, friction and loss of gears', () => {
    everywhere((result, given) => {
      const number = (name: string): number => result.number(name);
      const converted = Number(given['V']) * number('I_m') - number('P_wire');
      const friction = number('k_e') * Number(given['I_0']) * number('omega_m');
      const inGears = (number('k_e') - number('k_t')) * (number('I_m') - Number(given['I_0'])) * number('omega_m');
      const further = number('T_m') * number('omega_m') - number('P_out');
      const balance = converted - friction - inGears - further - number('P_out');
      expect(Math.abs(balance)).toBeLessThanOrEqual(1e-9 * number('P_in'));
      for (const loss of [friction, inGears, further]) expect(loss).toBeGreaterThanOrEqual(-1e-9 * number('P_in'));
      expect(number('eff')).toBeLessThanOrEqual(1);
    });
  });

  test('lies on the straight line from no load to stall', () => {
    everywhere((result) => {
      const speed = result.number('omega_free') * (1 - result.number('stall_share'));
      expect(result.number('omega_m')).toBeCloseTo(speed, 6);
    });
  });

  test('gives no more than at half the stall torque', () => {
    everywhere((result) => {
      const shaft = result.number('T_m') * result.number('omega_m');
      expect(shaft).toBeLessThanOrEqual(result.number('P_top') * (1 + 1e-9));
    });
    const half = worked(motorPoint, { ratio_b: 1, eta: 1, T: worked(motorPoint, {}).number('T_top') });
    expect(half.number('P_out')).toBeCloseTo(half.number('P_top'), 9);
  });
});

describe('the ends of the line', () => {
  test('at rated voltage they are what was given', () => {
    const ends = { V: 12, ratio_b: 1, eta: 1 };
    const free = worked(motorPoint, { ...ends, T: 0 });
    expect(free.number('omega_m')).toBeCloseTo((360 * 2 * Math.PI) / 60, 9);
    expect(free.number('I_m')).toBeCloseTo(0.25, 12);
    expect(free.number('T_stall')).toBeCloseTo(1.4, 12);
    const still = worked(motorPoint, { ...ends, T: 1.4 });
    expect(still.number('I_m')).toBeCloseTo(5.5, 9);
    expect(still.number('omega_m')).toBeCloseTo(0, 9);
  });

  test('beyond stall it stands still and takes the stall current, however large the load', () => {
    fc.assert(
      fc.property(between(3, 1000), (T) => {
        const stalled = worked(motorPoint, { T });
        expect(stalled.number('omega_out')).toBe(0);
        expect(stalled.number('I_m')).toBe(stalled.number('I_stall'));
        expect(stalled.number('P_wire')).toBeCloseTo(stalled.number('P_in'), 9);
        expect(stalled.number('stall_share')).toBeGreaterThan(1);
      }),
    );
  });

  test('half the voltage leaves 0.444 of speed and torque where a tenth of the stall current is friction', () => {
    const given = { V_rated: 12, I_s: 5, I_0: 0.5, T_s: 1, omega_0: 30, T: 0 };
    const whole = worked(motorPoint, { ...given, V: 12 });
    const half = worked(motorPoint, { ...given, V: 6 });
    for (const name of ['omega_free', 'T_stall']) {
      expect(half.number(name) / whole.number(name)).toBeCloseTo(4 / 9, 12);
    }
  });
});

describe('what is refused', () => {
  test.each([
    ['more than all of the power', { T_s: 1.8 }, /cannot be of one motor/],
    ['a no-load current as large as the stall current', { I_0: 5.5 }, /less than the stall current/],
    ['a voltage that friction eats', { V: 0.5 }, /does not turn/],
  ])('%s', (_, given, says) => {
    expect(() => worked(motorPoint, given)).toThrow(says);
  });

  test('all of the power is allowed', () => {
    const k_e = (12 - (0.25 * 12) / 5.5) / ((360 * 2 * Math.PI) / 60);
    expect(worked(motorPoint, { T_s: k_e * 5.25 }).number('k_share')).toBeCloseTo(1, 9);
  });
});
