import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mostGrip } from '../../../calculators/friction/most-grip.ts';
import { degree, worked } from '../wheel-kinematics/worked.ts';
import { most } from './simplex.ts';
import { between } from '../evenly.ts';

interface Robot {
  readonly n: number;
  readonly alpha: number;
  readonly theta: number;
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly mu: number;
}

const [m, R, g] = [9, 0.2, 9.80665];

const robots = fc
  .record({
    n: fc.integer({ min: 3, max: 8 }),
    alpha: between(-3, 3),
    theta: between(-3, 3),
    off: between(0, 0.54),
    way: between(-3, 3),
    z: between(0, 0.4),
    mu: between(0.1, 2),
  })
  .map(({ off, way, ...robot }): Robot => ({ ...robot, x: off * R * Math.cos(way), y: off * R * Math.sin(way) }));

interface Wheel {
  /** Where it stands, and which way its push points. */
  readonly at: readonly [number, number];
  readonly way: readonly [number, number];
  /** Its load at rest, and what it loses for each m/s². */
  readonly load: number;
  readonly loses: number;
}

const wheelsOf = ({ n, alpha, theta, x, y, z }: Robot): Wheel[] =>
  Array.from({ length: n }, (_, k) => {
    const angle = alpha + (2 * Math.PI * k) / n;
    const at = [R * Math.cos(angle), R * Math.sin(angle)] as const;
    const tilt = (px: number, py: number): number => (2 * (px * at[0] + py * at[1])) / (n * R * R);
    return {
      at,
      way: [-Math.sin(angle), Math.cos(angle)],
      load: m * g * (1 / n + tilt(x, y)),
      loses: m * z * tilt(Math.cos(theta), Math.sin(theta)),
    };
  });

/**
 * The most acceleration: of each wheel the push is (u − w)/2, where u and w are what is left up to its grip either way.
 * Force along both axes and torque about the centre of mass must be those of a body that does not turn.
 */
function programme(robot: Robot): number {
  const wheels = wheelsOf(robot);
  const { n, theta, x, y, mu } = robot;
  const row = (of: (wheel: Wheel) => number, a: number): number[] => [
    ...wheels.map((wheel) => of(wheel) / 2),
    ...wheels.map((wheel) => -of(wheel) / 2),
    a,
  ];
  const grip = wheels.map(({ loses }, k) => [
    ...Array.from({ length: 2 * n }, (_, j) => (j % n === k ? 1 : 0)),
    2 * mu * loses,
  ]);
  const rows = [
    ...grip,
    row(({ way }) => way[0], -m * Math.cos(theta)),
    row(({ way }) => way[1], -m * Math.sin(theta)),
    row(({ at, way }) => (at[0] - x) * way[1] - (at[1] - y) * way[0], 0),
  ];
  const right = [...wheels.map(({ load }) => 2 * mu * load), 0, 0, 0];
  return most([...Array<number>(2 * n).fill(0), 1], rows, right).most;
}

const inputs = (robot: Robot) => ({ ...robot, m, R, g });

describe('the most any control could get', () => {
  test('against a linear programme, loads anywhere', () => {
    fc.assert(
      fc.property(robots, (robot) => {
        fc.pre(wheelsOf(robot).every(({ load }) => load > 0.001 * m * g));
        expect(worked(mostGrip, inputs(robot)).number('a_most') / programme(robot)).toBeCloseTo(1, 7);
      }),
      { numRuns: 600 },
    );
  });

  test('its pushes are within the grip and balance, unless a wheel lifts first', () => {
    fc.assert(
      fc.property(robots, (robot) => {
        const wheels = wheelsOf(robot);
        fc.pre(wheels.every(({ load }) => load > 0.001 * m * g));
        const result = worked(mostGrip, inputs(robot));
        const [a, pushes] = [result.number('a_most'), result.list('f_most')];
        const sum = (of: (wheel: Wheel) => number): number =>
          wheels.reduce((total, wheel, k) => total + (pushes[k] ?? NaN) * of(wheel), 0);
        expect(sum(({ way }) => way[0])).toBeCloseTo(m * a * Math.cos(robot.theta), 6);
        expect(sum(({ way }) => way[1])).toBeCloseTo(m * a * Math.sin(robot.theta), 6);
        expect(sum(({ at, way }) => (at[0] - robot.x) * way[1] - (at[1] - robot.y) * way[0])).toBeCloseTo(0, 6);
        if (result.number('use_lift_top') > result.number('use_most')) return;
        expect(result.number('share_full')).toBeCloseTo(1, 8);
        wheels.forEach(({ load, loses }, k) => {
          expect(Math.abs(pushes[k] ?? NaN)).toBeLessThanOrEqual(robot.mu * (load - loses * a) + 1e-6);
        });
      }),
      { numRuns: 300 },
    );
  });

  test('never less than at the first slip, and the same with three wheels', () => {
    fc.assert(
      fc.property(robots, (robot) => {
        fc.pre(wheelsOf(robot).every(({ load }) => load > 0.001 * m * g));
        const result = worked(mostGrip, inputs(robot));
        const gain = result.number('a_most') / result.number('a_slip');
        expect(gain).toBeGreaterThanOrEqual(1 - 1e-9);
        if (robot.n === 3) expect(gain).toBeCloseTo(1, 9);
      }),
    );
  });

  test.each([
    [3, 0.5, 0.577],
    [4, 0.5, 0.707],
    [5, 0.585, 0.616],
    [6, 0.577, 0.667],
    [7, 0.61, 0.626],
    [8, 0.604, 0.653],
  ])('%i wheels, equal loads: from %f of the weight to %f', (n, worst, best) => {
    const shares = Array.from({ length: 721 }, (_, k) =>
      worked(mostGrip, { n, x: 0, y: 0, z: 0, theta: (k / 2) * degree }).number('share_most'),
    );
    expect(Math.min(...shares)).toBeCloseTo(worst, 3);
    expect(Math.max(...shares)).toBeCloseTo(best, 3);
  });
});
