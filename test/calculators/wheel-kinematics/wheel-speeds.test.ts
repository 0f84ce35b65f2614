import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rollRatio } from '../../../calculators/wheel-kinematics/roll-ratio.ts';
import { wheelSpeeds } from '../../../calculators/wheel-kinematics/wheel-speeds.ts';
import { dot, rimOf, rotate, wheelsRound, type Motion } from './plane-robot.ts';
import { between, motions, robots } from './random-robots.ts';
import { degree, worked } from './worked.ts';

const sum = (list: readonly number[]): number => list.reduce((total, x) => total + x, 0);

function expectClose(got: readonly number[], wanted: readonly number[], scale: number): void {
  expect(got.length).toBe(wanted.length);
  got.forEach((x, k) => {
    expect(Math.abs(x - (wanted[k] ?? NaN))).toBeLessThanOrEqual(1e-11 * scale);
  });
}

describe('by hand', () => {
  const robot = { n: 3, alpha: 0, R: 0.2, r: 0.06 };

  test('wheel 1 stands ahead and drives to the left, counter-clockwise round the robot', () => {
    const left = worked(wheelSpeeds, { ...robot, v: 0.6, theta: 90 * degree, Omega: 0 });
    expectClose(left.list('omega'), [10, -5, -5], 10);
    expectClose(left.list('share'), [1, -0.5, -0.5], 1);
    const ahead = worked(wheelSpeeds, { ...robot, v: 0.6, theta: 0, Omega: 0 });
    expectClose(ahead.list('omega'), [0, -5 * Math.sqrt(3), 5 * Math.sqrt(3)], 10);
    expectClose(ahead.list('u_free'), [0.6, -0.3, -0.3], 1);
  });

  test('turning counter-clockwise, every wheel drives forwards', () => {
    const turning = worked(wheelSpeeds, { ...robot, v: 0, Omega: 3 });
    expectClose(turning.list('omega'), [10, 10, 10], 10);
    expectClose(turning.list('u_free'), [0, 0, 0], 1);
  });

  test('nothing asked for, nothing shared', () => {
    expect(worked(wheelSpeeds, { ...robot, v: 0, Omega: 0 }).list('share')).toEqual([0, 0, 0]);
  });
});

describe('for any robot and motion', () => {
  test('a second method: the speed of the floor under each wheel, by rotation matrices', () => {
    fc.assert(
      fc.property(robots, motions, (robot, motion) => {
        const results = worked(wheelSpeeds, { ...robot, ...motion });
        const body: Motion = { travel: rotate([motion.v, 0], motion.theta), turn: motion.Omega };
        const wheels = wheelsRound(robot.n, robot.alpha, robot.R);
        const speeds = wheels.map((wheel) => rimOf(wheel, body) / robot.r);
        const axles = wheels.map(({ drive }) => rotate(drive, -Math.PI / 2));
        const scale = motion.v + robot.R * Math.abs(motion.Omega);
        expectClose(results.list('omega'), speeds, scale / robot.r);
        const free = axles.map((axle) => dot(body.travel, axle));
        expectClose(results.list('u_free'), free, scale);
        expect(results.number('omega_top')).toBeCloseTo(Math.max(...speeds.map(Math.abs)), 6);
      }),
    );
  });

  test('motions add up, and so do wheel speeds', () => {
    fc.assert(
      fc.property(robots, motions, motions, (robot, one, other) => {
        const speeds = (motion: object): readonly number[] =>
          worked(wheelSpeeds, { ...robot, ...motion }).list('omega');
        const [ax, ay] = rotate([one.v, 0], one.theta);
        const [bx, by] = rotate([other.v, 0], other.theta);
        const both = {
          v: Math.hypot(ax + bx, ay + by),
          theta: Math.atan2(ay + by, ax + bx),
          Omega: one.Omega + other.Omega,
        };
        const [first, second] = [speeds(one), speeds(other)];
        expectClose(
          speeds(both),
          first.map((x, k) => x + (second[k] ?? NaN)),
          20 / robot.r,
        );
      }),
    );
  });

  test('twice as fast is twice the wheel speeds, and backwards their opposite', () => {
    fc.assert(
      fc.property(robots, motions, (robot, motion) => {
        const speeds = (change: object): readonly number[] =>
          worked(wheelSpeeds, { ...robot, ...motion, ...change }).list('omega');
        const once = speeds({});
        const twice = speeds({ v: 2 * motion.v, Omega: 2 * motion.Omega });
        const back = speeds({ theta: motion.theta + Math.PI, Omega: -motion.Omega });
        expectClose(
          twice,
          once.map((x) => 2 * x),
          30 / robot.r,
        );
        expectClose(
          back,
          once.map((x) => -x),
          20 / robot.r,
        );
      }),
    );
  });

  test('it does not matter what is called ahead', () => {
    fc.assert(
      fc.property(robots, motions, between(-3, 3), (robot, motion, by) => {
        const here = worked(wheelSpeeds, { ...robot, ...motion });
        const turned = { alpha: robot.alpha + by, theta: motion.theta + by };
        const there = worked(wheelSpeeds, { ...robot, ...motion, ...turned });
        expectClose(there.list('omega'), here.list('omega'), 15 / robot.r);
        expectClose(there.list('u_free'), here.list('u_free'), 15);
      }),
    );
  });

  test('one place on, the wheels change places', () => {
    fc.assert(
      fc.property(robots, motions, (robot, motion) => {
        const here = worked(wheelSpeeds, { ...robot, ...motion }).list('omega');
        const alpha = robot.alpha + (2 * Math.PI) / robot.n;
        const there = worked(wheelSpeeds, { ...robot, ...motion, alpha }).list('omega');
        expectClose(there, [...here.slice(1), ...here.slice(0, 1)], 15 / robot.r);
      }),
    );
  });

  test('the rim speeds of travel add up to nothing; what is left is turning', () => {
    fc.assert(
      fc.property(robots, motions, (robot, motion) => {
        const { n, R } = robot;
        const travel = worked(wheelSpeeds, { ...robot, ...motion, Omega: 0 }).list('u');
        expect(Math.abs(sum(travel))).toBeLessThanOrEqual(1e-12 * n * motion.v);
        const all = worked(wheelSpeeds, { ...robot, ...motion }).list('u');
        expect(sum(all) / (n * R)).toBeCloseTo(motion.Omega, 9);
      }),
    );
  });

  test('rolling and free part of each wheel are the two sides of a right triangle', () => {
    fc.assert(
      fc.property(robots, motions, (robot, motion) => {
        const results = worked(wheelSpeeds, { ...robot, ...motion, Omega: 0 });
        const free = results.list('u_free');
        const lengths = results.list('u').map((u, k) => Math.hypot(u, free[k] ?? NaN));
        expectClose(lengths, Array<number>(robot.n).fill(motion.v), 3);
      }),
    );
  });

  test('each wheel is the angled wheel of roll-ratio, at its angle to the travel', () => {
    fc.assert(
      fc.property(robots, motions, (robot, motion) => {
        const { r } = robot;
        const results = worked(wheelSpeeds, { ...robot, ...motion, Omega: 0 });
        const driveAt = results.list('alpha_i').map((angle) => angle + Math.PI / 2);
        const single = driveAt.map((drive) => worked(rollRatio, { v: motion.v, phi: motion.theta - drive, r, q: r }));
        expectClose(
          results.list('s_i'),
          single.map((one) => one.number('k_roll')),
          1,
        );
        expectClose(
          results.list('omega'),
          single.map((one) => one.number('omega_roll')),
          3 / r,
        );
        const free = results.list('u_free').map(Math.abs);
        expectClose(
          free,
          single.map((one) => Math.abs(one.number('v_free'))),
          3,
        );
      }),
    );
  });
});
