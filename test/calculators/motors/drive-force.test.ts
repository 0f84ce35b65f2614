import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { driveForce } from '../../../calculators/motors/drive-force.ts';
import { degree, worked } from '../wheel-kinematics/worked.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const machines = fc.record({
  n: fc.integer({ min: 3, max: 8 }),
  alpha: between(-3, 3),
  theta: between(-3, 3),
  m: between(1, 50),
  acc: between(0, 3),
  slope: between(0, 0.5),
  C_rr: between(0, 0.1),
  R: between(0.1, 1),
  r: between(0.02, 0.2),
  I_z: between(0.01, 5),
  acc_Omega: between(-10, 10),
});

describe('the pushes of the wheels, added as arrows', () => {
  test('make the push of the whole along the heading, nothing across it, and the torque that turns', () => {
    fc.assert(
      fc.property(machines, (machine) => {
        const result = worked(driveForce, machine);
        const total = { along: 0, across: 0, torque: 0 };
        result.list('f_i').forEach((push, k) => {
          const drive = machine.alpha + (k * 2 * Math.PI) / machine.n + Math.PI / 2;
          total.along += push * Math.cos(drive - machine.theta);
          total.across += push * Math.sin(drive - machine.theta);
          total.torque += push * machine.R;
        });
        const { m, acc, slope, C_rr } = machine;
        const wanted = m * acc + m * 9.80665 * (Math.sin(slope) + C_rr * Math.cos(slope));
        expect(total.along).toBeCloseTo(wanted, 8);
        expect(total.across).toBeCloseTo(0, 8);
        expect(total.torque).toBeCloseTo(machine.I_z * machine.acc_Omega, 8);
      }),
    );
  });

  test('no heading asks more of a wheel than the worst, which does', () => {
    fc.assert(
      fc.property(machines, (machine) => {
        const worst = worked(driveForce, machine);
        const hardest = (theta: number): number => worked(driveForce, { ...machine, theta }).number('f_top');
        expect(hardest(worst.number('theta_hard'))).toBeCloseTo(worst.number('F_worst'), 8);
        for (let k = 0; k < 24; k++)
          expect(hardest(k * 15 * degree)).toBeLessThanOrEqual(worst.number('F_worst') + 1e-9);
      }),
      { numRuns: 25 },
    );
  });
});

describe('limits', () => {
  test('nothing is asked of a wheel on level ground at an even speed without rolling resistance', () => {
    expect(worked(driveForce, { acc: 0, slope: 0, C_rr: 0, acc_Omega: 0 }).list('f_i').map(Math.abs)).toEqual([
      0, 0, 0,
    ]);
  });

  test('along an axle of three, two wheels push 1/√3 of the whole each and the third nothing', () => {
    const result = worked(driveForce, { theta: 0, alpha: 0, n: 3 });
    const shares = result.list('f_i').map((push) => push / result.number('F_all'));
    expect(shares[0]).toBeCloseTo(0, 12);
    expect(shares[1]).toBeCloseTo(-1 / Math.sqrt(3), 12);
    expect(shares[2]).toBeCloseTo(1 / Math.sqrt(3), 12);
  });
});
