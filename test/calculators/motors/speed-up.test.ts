import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { speedUp } from '../../../calculators/motors/speed-up.ts';
import { worked } from '../wheel-kinematics/worked.ts';
import { finalSpeed, hardestStart, runTo } from './driven-robot.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const robots = fc.record({
  n: fc.integer({ min: 3, max: 8 }),
  alpha: between(-3, 3),
  theta: between(-3, 3),
  m: between(2, 30),
  r: between(0.03, 0.15),
  C_rr: between(0, 0.04),
  mu: between(0.2, 1.5),
  g: between(9, 10),
  T_w: between(1.5, 6),
  omega_w: between(5, 40),
  J: between(0, 5e-6),
  ratio: between(1, 60),
  J_wheel: between(0, 2e-3),
});
const runs = fc.tuple(robots, between(0.2, 0.98));

describe('against the motion, integrated in small steps', () => {
  test('final speed', () => {
    fc.assert(
      fc.property(robots, (robot) => {
        expect(worked(speedUp, { ...robot, reach: 0.9 }).number('v_end') / finalSpeed(robot)).toBeCloseTo(1, 9);
      }),
    );
  });

  test('acceleration from rest, whether motors or floor are the limit', () => {
    fc.assert(
      fc.property(robots, (robot) => {
        expect(worked(speedUp, robot).number('a_go') / hardestStart(robot, 0)).toBeCloseTo(1, 8);
      }),
    );
  });

  test('time and distance', () => {
    let limited = 0;
    fc.assert(
      fc.property(runs, ([robot, reach]) => {
        const result = worked(speedUp, { ...robot, reach });
        if (result.number('v_hold') > 0) limited++;
        const step = result.number('t_reach') / 250;
        const { time, distance } = runTo(robot, reach * finalSpeed(robot), step);
        expect(result.number('t_reach') / time).toBeCloseTo(1, 3);
        expect(result.number('s_reach') / distance).toBeCloseTo(1, 3);
      }),
      { numRuns: 10 },
    );
    expect(limited).toBeGreaterThan(2);
    expect(limited).toBeLessThan(10);
  });
});

describe('laws', () => {
  test('the time constant is the same at every heading', () => {
    const at = (theta: number): number => worked(speedUp, { theta }).number('tau');
    fc.assert(
      fc.property(between(-6, 6), (theta) => {
        expect(at(theta)).toBeCloseTo(at(0), 12);
      }),
    );
  });

  test('with grip to spare: three time constants to 95 per cent, and the distance of the textbook', () => {
    const result = worked(speedUp, { mu: 3, reach: 0.95, T_w: 1 });
    const [tau, v] = [result.number('tau'), result.number('v_end')];
    expect(result.number('v_hold')).toBe(0);
    expect(result.number('t_reach')).toBeCloseTo(-tau * Math.log(0.05), 12);
    expect(result.number('s_reach')).toBeCloseTo(v * tau * (-Math.log(0.05) - 0.95), 12);
  });

  test('a heavier rotor, a lower share and more grip do what they should', () => {
    const time = (inputs: Record<string, number>): number => worked(speedUp, inputs).number('t_reach');
    expect(time({ J: 4e-6 })).toBeGreaterThan(time({ J: 2e-6 }));
    expect(time({ reach: 0.5 })).toBeLessThan(time({ reach: 0.95 }));
    expect(time({ mu: 0.7 })).toBeLessThan(time({ mu: 0.6 }));
  });

  test('where rolling resistance takes all, it refuses', () => {
    expect(() => worked(speedUp, { C_rr: 0.9, mu: 3 })).toThrow('does not move');
    expect(() => worked(speedUp, { C_rr: 0.06, mu: 0.1 })).toThrow('grip limit');
  });
});
