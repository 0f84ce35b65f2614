import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { traction } from '../../../calculators/friction/traction.ts';
import { stopping } from '../../../calculators/motors/stopping.ts';
import { contactsOf, hardest } from '../motors/three-legs.ts';
import { degree, worked } from '../wheel-kinematics/worked.ts';
import { between } from '../evenly.ts';

const robots = fc.record({
  alpha: between(-3, 3),
  theta: between(-3, 3),
  R: between(0.15, 0.4),
  x: between(-0.03, 0.03),
  y: between(-0.03, 0.03),
  z: between(0, 0.3),
  m: between(2, 30),
  g: between(9, 10),
});

describe('three wheels, against six equations and bisection', () => {
  test('speeding up until the first wheel slips or lifts', () => {
    fc.assert(
      fc.property(robots, between(0.3, 1.5), (robot, mu) => {
        const level = { ...robot, slope: 0, up: 0, theta: robot.theta + Math.PI };
        const found = hardest(level, (all) => all.every(({ push, load }) => Math.abs(push) <= mu * load));
        const result = worked(traction, { ...robot, n: 3, mu });
        expect(result.number('a_slip') / found).toBeCloseTo(1, 8);
        contactsOf(level, found).forEach(({ push, load }, k) => {
          expect(result.list('f_i')[k]).toBeCloseTo(push, 6);
          expect(result.list('N_i')[k]).toBeCloseTo(load, 6);
        });
      }),
    );
  });

  test('the steepest slope, standing still on it', () => {
    fc.assert(
      fc.property(robots, between(0.3, 1.2), (robot, mu) => {
        const { theta } = robot;
        let [low, high] = [0, 1.5];
        for (let k = 0; k < 60; k++) {
          const slope = (low + high) / 2;
          const holds = contactsOf({ ...robot, slope, up: theta }, 0).every(
            ({ push, load }) => Math.abs(push) <= mu * load,
          );
          if (holds) low = slope;
          else high = slope;
        }
        expect(worked(traction, { ...robot, n: 3, mu }).number('slope_slip')).toBeCloseTo(low, 8);
      }),
    );
  });
});

describe('figures of our own, from a script apart', () => {
  const at = (theta: number, z = 0.15): number =>
    worked(traction, { R: 0.2, mu: 0.6, z, theta: theta * degree }).number('a_slip');

  test('R = 200 mm, z = 150 mm, friction 0.6', () => {
    expect(at(0)).toBeCloseTo(4.59, 2);
    expect(at(180)).toBeCloseTo(2.7, 2);
    expect(at(90)).toBeCloseTo(2.94, 2);
    expect(at(0, 0)).toBeCloseTo(3.4, 2);
  });

  test.each([
    [3, 0.5 / Math.cos(Math.PI / 6)],
    [4, 0.5 / Math.cos(Math.PI / 4)],
    [5, 0.5 / Math.cos(Math.PI / 10)],
    [6, 0.5 / Math.cos(Math.PI / 6)],
    [7, 0.5 / Math.cos(Math.PI / 14)],
    [8, 0.5 / Math.cos(Math.PI / 8)],
  ])('%i wheels, equal loads: from half of the weight to %f of it', (n, best) => {
    const shares = Array.from({ length: 721 }, (_, k) =>
      worked(traction, { n, x: 0, y: 0, z: 0, theta: (k / 2) * degree }).number('share_car'),
    );
    expect(Math.min(...shares)).toBeCloseTo(0.5, 4);
    expect(Math.max(...shares)).toBeCloseTo(best, 3);
  });
});

test('what starts at some acceleration stops at the same on the heading turned round', () => {
  fc.assert(
    fc.property(robots, fc.integer({ min: 3, max: 8 }), (robot, n) => {
      const start = worked(traction, { ...robot, n, mu: 0.6 }).number('a_slip');
      const back = { ...robot, theta: robot.theta + Math.PI, n, mu: 0.6, slope: 0, T_w: 100 };
      expect(worked(stopping, back).number('a_grip') / start).toBeCloseTo(1, 9);
    }),
  );
});

test('mass changes nothing', () => {
  const [light, heavy] = [worked(traction, { m: 5 }), worked(traction, { m: 20 })];
  expect(heavy.number('a_slip')).toBeCloseTo(light.number('a_slip'), 10);
});

test('a wheel off the floor is refused', () => {
  expect(() => worked(traction, { x: -0.12 })).toThrow('off the floor');
});
