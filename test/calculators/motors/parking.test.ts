import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { driveForce } from '../../../calculators/motors/drive-force.ts';
import { parking } from '../../../calculators/motors/parking.ts';
import { degree, worked } from '../wheel-kinematics/worked.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const machines = fc.record({
  n: fc.integer({ min: 3, max: 8 }),
  alpha: between(-3, 3),
  up: between(-3, 3),
  m: between(1, 50),
  slope: between(0.01, 0.5),
  r: between(0.02, 0.2),
  T_hold: between(0.01, 5),
});

describe('a parked robot', () => {
  test('needs what an even drive uphill needs without rolling resistance', () => {
    fc.assert(
      fc.property(machines, ({ up, T_hold, ...machine }) => {
        const parked = worked(parking, { ...machine, up, T_hold });
        const driven = worked(driveForce, { ...machine, theta: up, acc: 0, C_rr: 0, acc_Omega: 0 });
        expect(parked.number('T_top')).toBeCloseTo(driven.number('T_top'), 10);
        expect(parked.number('T_worst')).toBeCloseTo(driven.number('T_worst'), 10);
      }),
    );
  });

  test('on the steepest slope it holds at any heading the margin is one', () => {
    fc.assert(
      fc.property(machines, (machine) => {
        const slope = worked(parking, machine).number('slope_hold');
        fc.pre(slope < 60 * degree);
        expect(worked(parking, { ...machine, slope }).number('margin_worst')).toBeCloseTo(1, 8);
      }),
    );
  });

  test('no way of parking is worse than the worst', () => {
    fc.assert(
      fc.property(machines, (machine) => {
        const result = worked(parking, machine);
        expect(result.number('margin_T')).toBeGreaterThanOrEqual(result.number('margin_worst') * (1 - 1e-12));
      }),
    );
  });
});

test('on level ground it refuses', () => {
  expect(() => worked(parking, { slope: 0 })).toThrow('level ground');
});
