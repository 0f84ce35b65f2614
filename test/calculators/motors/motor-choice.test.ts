import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { motorChoice } from '../../../calculators/motors/motor-choice.ts';
import { motorPoint } from '../../../calculators/motors/motor-point.ts';
import { worked } from '../wheel-kinematics/worked.ts';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

const robots = fc.record({
  m: between(0.5, 60),
  v: between(0.05, 3),
  acc: between(0, 4),
  slope: between(0, 0.4),
  C_rr: between(0.005, 0.2),
  n: fc.integer({ min: 3, max: 8 }),
  r: between(0.02, 0.2),
  h: between(1e-5, 0.015),
  margin: between(1, 3),
  work_share: between(0.1, 0.8),
});

const shares = (n: number, theta: number): number[] =>
  Array.from({ length: n }, (_, k) => Math.sin(theta - (k * 2 * Math.PI) / n));

describe('the hardest wheel', () => {
  test('of an even split by least squares does two shares at its worst heading, and none does more at any', () => {
    fc.assert(
      fc.property(robots, (robot) => {
        const result = worked(motorChoice, robot);
        const most = result.number('F_worst') / result.number('F_all');
        const pushes = (theta: number): number[] => shares(robot.n, theta).map((s) => (2 / robot.n) * s);
        const headings = Array.from({ length: 721 }, (_, k) => (k * Math.PI) / 360);
        const highest = Math.max(...headings.flatMap(pushes).map(Math.abs));
        expect(highest).toBeLessThanOrEqual(most + 1e-12);
        expect(Math.max(...pushes(Math.PI / 2).map(Math.abs))).toBeCloseTo(most, 12);
        const along = pushes(1).reduce((sum, push, k) => sum + push * (shares(robot.n, 1)[k] ?? 0), 0);
        expect(along).toBeCloseTo(1, 12);
      }),
    );
  });
});

describe('a motor as told', () => {
  test('carries the load with its margin at the speed wanted', () => {
    fc.assert(
      fc.property(robots, (robot) => {
        const wanted = worked(motorChoice, robot);
        const motor = { V_rated: 12, V: 12, I_0: 0, I_s: 1e4, ratio_b: 1, eta: 1 };
        const point = worked(motorPoint, {
          ...motor,
          omega_0: wanted.number('omega_w'),
          T_s: wanted.number('T_w'),
          T: wanted.number('T_work'),
        });
        expect(point.number('omega_out')).toBeCloseTo(wanted.number('omega_v'), 6);
        expect(point.number('stall_share')).toBeLessThanOrEqual(robot.work_share + 1e-9);
      }),
    );
  });

  test('holds a wheel at the edge of the step, with the margin', () => {
    fc.assert(
      fc.property(robots, ({ h, ...robot }) => {
        const result = worked(motorChoice, { ...robot, h });
        // The edge is where the circle about the axle is h above the floor.
        const angle = Math.acos(1 - h / robot.r);
        const weight = (robot.m * 9.80665) / robot.n;
        expect(result.number('T_step')).toBeCloseTo(weight * robot.r * Math.sin(angle), 9);
        expect(result.number('T_w')).toBeGreaterThanOrEqual(robot.margin * result.number('T_step') * (1 - 1e-12));
      }),
    );
  });
});
