import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stopping } from '../../../calculators/motors/stopping.ts';
import { degree, worked } from '../wheel-kinematics/worked.ts';
import { contactsOf, hardest } from './three-legs.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const robots = fc.record({
  alpha: between(-3, 3),
  theta: between(-3, 3),
  R: between(0.15, 0.4),
  x: between(-0.03, 0.03),
  y: between(-0.03, 0.03),
  z: between(0, 0.3),
  m: between(2, 30),
  g: between(9, 10),
  slope: between(0, 0.1),
  up: between(-3, 3),
});
const always = { n: 3, C_rr: 0.2, r: 0.06, T_w: 5 };

describe('against the six equations of three wheels', () => {
  test('loads and pushes before it brakes', () => {
    fc.assert(
      fc.property(robots, (robot) => {
        const result = worked(stopping, { ...always, ...robot, mu: 1.5, T_w: 100 });
        contactsOf(robot, 0).forEach(({ push, load }, k) => {
          expect(result.list('N_0')[k]).toBeCloseTo(load, 8);
          expect(result.list('f_0')[k]).toBeCloseTo(push, 8);
        });
      }),
    );
  });

  test('braking until the first wheel slips or lifts', () => {
    fc.assert(
      fc.property(robots, between(0.3, 1.5), (robot, mu) => {
        fc.pre(contactsOf(robot, 0).every(({ push, load }) => Math.abs(push) < 0.95 * mu * load));
        const found = hardest(robot, (all) => all.every(({ push, load }) => Math.abs(push) <= mu * load));
        expect(worked(stopping, { ...always, ...robot, mu, T_w: 100 }).number('a_grip') / found).toBeCloseTo(1, 8);
      }),
    );
  });

  test('braking until the first motor is at its stall torque', () => {
    fc.assert(
      fc.property(robots, between(2, 8), (robot, T_w) => {
        const most = T_w / always.r;
        const found = hardest(robot, (all) => all.every(({ push }) => Math.abs(push) <= most));
        expect(worked(stopping, { ...always, ...robot, mu: 1.5, T_w }).number('a_motor') / found).toBeCloseTo(1, 8);
      }),
    );
  });
});

describe('figures of our own, from a script apart: R = 200 mm, z = 150 mm, friction 0.6', () => {
  const braking = (theta: number, z = 0.15): number =>
    worked(stopping, { R: 0.2, mu: 0.6, z, theta: theta * degree }).number('a_grip');

  test('what starts at 4.59 m/s² stops at 2.70, and along a drive direction it is 2.94 both ways', () => {
    expect(braking(180)).toBeCloseTo(4.59, 2);
    expect(braking(0)).toBeCloseTo(2.7, 2);
    expect(braking(90)).toBeCloseTo(2.94, 2);
    expect(braking(-90)).toBeCloseTo(2.94, 2);
  });

  test('without load transfer both are 3.40', () => {
    expect(braking(0, 0)).toBeCloseTo(3.4, 2);
    expect(braking(180, 0)).toBeCloseTo(3.4, 2);
  });
});

describe('laws', () => {
  test('the distance to keep clear is the reaction distance and the longest of three', () => {
    fc.assert(
      fc.property(robots, between(0.1, 2), between(0, 1), (robot, v, t_react) => {
        const result = worked(stopping, { ...always, ...robot, mu: 1.5, v, t_react });
        const parts = ['s_grip', 's_motor', 's_coast'].map((name) => result.number(name));
        expect(result.number('s_stop')).toBeCloseTo(v * t_react + Math.max(...parts), 10);
        expect(result.number('s_power')).toBeLessThanOrEqual(result.number('s_stop') + 1e-12);
        const slowest = Math.min(...['a_grip', 'a_motor', 'a_coast'].map((name) => result.number(name)));
        expect(result.number('s_stop') - v * t_react).toBeCloseTo(
          (slowest * (result.number('t_stop') - t_react) ** 2) / 2,
          8,
        );
      }),
    );
  });

  test('twice the speed takes four times the braking distance', () => {
    const at = (v: number): number => worked(stopping, { v }).number('s_grip');
    expect(at(1.2)).toBeCloseTo(4 * at(0.6), 12);
  });

  test('downhill takes longer than uphill', () => {
    const at = (up: number): number => worked(stopping, { slope: degree, up: up * degree }).number('s_stop');
    expect(at(-90)).toBeGreaterThan(at(90));
  });

  test('mass changes nothing but what the motors do', () => {
    const [light, heavy] = [worked(stopping, { m: 5 }), worked(stopping, { m: 20 })];
    expect(heavy.number('a_grip')).toBeCloseTo(light.number('a_grip'), 10);
    expect(heavy.number('a_coast')).toBe(light.number('a_coast'));
    expect(heavy.number('a_motor')).toBeCloseTo(light.number('a_motor') / 4, 10);
  });
});

describe('refusals', () => {
  test.each([
    ['it never stops with the power lost', { slope: 4 * degree, up: -90 * degree }, 'never stops'],
    ['a wheel slips before it brakes', { slope: 20 * degree, mu: 0.3, C_rr: 1 }, 'slips or lifts'],
    ['a wheel is off the floor', { x: -0.15 }, 'slips or lifts'],
    ['the motors cannot hold the slope', { slope: 20 * degree, mu: 2, T_w: 0.1, C_rr: 1 }, 'motors cannot hold'],
  ])('%s', (_, inputs, words) => {
    expect(() => worked(stopping, inputs)).toThrow(words);
  });
});
