import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { angledRollers } from '../../../calculators/wheel-kinematics/angled-rollers.ts';
import { bodyMotion } from '../../../calculators/wheel-kinematics/body-motion.ts';
import { straightness } from '../../../calculators/wheel-kinematics/straightness.ts';
import { wheelSpeeds } from '../../../calculators/wheel-kinematics/wheel-speeds.ts';
import { DraggedBody, type Contact } from './dragged-body.ts';
import { rotate, wheelsRound, type Motion, type Pose, type Vector } from './plane-robot.ts';
import { worked } from './worked.ts';

/**
 * A body of the rigid-body engine planck, driven by what the calculators say of its wheels. The engine knows masses,
 * impulses and time steps, and nothing of wheels that stand evenly round a circle.
 */
const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

const robots = fc.record({
  n: fc.integer({ min: 3, max: 8 }),
  alpha: between(-3, 3),
  R: between(0.1, 1),
  r: between(0.02, 0.2),
});

const round = (n: number, alpha: number, R: number): Contact[] =>
  wheelsRound(n, alpha, R).map(({ at, drive }) => ({ at, push: drive }));

/** The motion that wheels round a circle settle on. */
function settled(alpha: number, R: number, rims: readonly number[]): Motion {
  const body = new DraggedBody(round(rims.length, alpha, R));
  body.roll(rims);
  return body.motion;
}

function expectVector([x, y]: Vector, wanted: Vector, digits: number): void {
  expect(x).toBeCloseTo(wanted[0], digits);
  expect(y).toBeCloseTo(wanted[1], digits);
}

describe('the engine’s body, dragged by its wheels', () => {
  test('moves as asked when the wheels turn as wheel-speeds says', () => {
    fc.assert(
      fc.property(robots, between(0, 2), between(-3, 3), between(-4, 4), (robot, v, theta, Omega) => {
        const rims = worked(wheelSpeeds, { ...robot, v, theta, Omega })
          .list('omega')
          .map((omega) => omega * robot.r);
        const { travel, turn } = settled(robot.alpha, robot.R, rims);
        expectVector(travel, rotate([v, 0], theta), 9);
        expect(turn).toBeCloseTo(Omega, 9);
      }),
      { numRuns: 50 },
    );
  });

  test('moves as body-motion says for any wheel speeds, those that cannot all hold as well', () => {
    const speeds = fc.array(between(-20, 20), { minLength: 3, maxLength: 8 });
    fc.assert(
      fc.property(robots, speeds, ({ alpha, R, r }, omega) => {
        const said = worked(bodyMotion, { omega, alpha, R, r });
        const { travel, turn } = settled(
          alpha,
          R,
          omega.map((one) => one * r),
        );
        expectVector(travel, [said.number('v_x'), said.number('v_y')], 9);
        expect(turn).toBeCloseTo(said.number('Omega'), 9);
      }),
      { numRuns: 50 },
    );
  });

  test('moves as asked on angled rollers, which push along their axes only', () => {
    const chosen = fc.record({
      half_base: between(0.1, 0.5),
      half_track: between(0.1, 0.5),
      gamma: between(0.5, 1.1),
      v_x: between(-1, 1),
      v_y: between(-1, 1),
      Omega: between(-3, 3),
    });
    fc.assert(
      fc.property(chosen, ({ gamma, ...machine }) => {
        const u = worked(angledRollers, { ...machine, gamma, pattern: 1 }).list('u');
        const body = new DraggedBody(angled(machine, gamma));
        body.roll(alongAxes(u, gamma));
        const { travel, turn } = body.motion;
        expectVector(travel, [machine.v_x, machine.v_y], 6);
        expect(turn).toBeCloseTo(machine.Omega, 6);
      }),
      { numRuns: 50 },
    );
  });

  test('cannot be turned, nor held, by angled rollers mounted the other way round on a square base', () => {
    const square = { half_base: 0.2, half_track: 0.2 };
    const u = worked(angledRollers, { ...square, pattern: -1, gamma: Math.PI / 4, v_x: 0, v_y: 0, Omega: 2 }).list('u');
    const body = new DraggedBody(angled(square, -Math.PI / 4));
    body.roll(alongAxes(u, -Math.PI / 4));
    expect(body.motion.turn).toBeCloseTo(0, 12);
    body.spin(2);
    body.roll(alongAxes(u, -Math.PI / 4));
    expect(body.motion.turn).toBeCloseTo(2, 12);
  });

  test('turns and drifts by wheels that roll wrong as straightness says', () => {
    const errors = fc.array(between(-0.05, 0.05), { minLength: 3, maxLength: 8 });
    fc.assert(
      fc.property(robots, errors, between(-3, 3), ({ alpha, R, r }, e_w, theta) => {
        const told = worked(wheelSpeeds, { n: e_w.length, alpha, R, r, v: 1, theta, Omega: 0 }).list('omega');
        const rims = told.map((omega, k) => omega * r * (1 + (e_w[k] ?? NaN)));
        const { travel, turn } = settled(alpha, R, rims);
        const said = worked(straightness, { e_w, alpha, R, theta, s: 1 });
        expect(turn).toBeCloseTo(said.number('kappa'), 9);
        expect(rotate(travel, -theta)[1]).toBeCloseTo(said.number('crab'), 9);
      }),
      { numRuns: 50 },
    );
  });
});

/** How the rollers slant: front left, front right, rear left, rear right. */
const slants = [-1, 1, 1, -1];

/** Wheels that push along the axes of their rollers. */
function angled({ half_base: x, half_track: y }: { half_base: number; half_track: number }, gamma: number): Contact[] {
  const corners: readonly Vector[] = [
    [x, y],
    [x, -y],
    [-x, y],
    [-x, -y],
  ];
  return corners.map((at, k) => ({ at, push: [(slants[k] ?? NaN) * Math.sin(gamma), Math.cos(gamma)] }));
}

/** The part of each rim speed that lies along the axis of the roller. */
const alongAxes = (u: readonly number[], gamma: number): number[] =>
  u.map((one, k) => one * (slants[k] ?? NaN) * Math.sin(gamma));

describe('a path with turning, in the engine’s own time steps', () => {
  const legs = [
    { seconds: 1.5, v: 0.6, theta: 0.4, Omega: 1.2 },
    { seconds: 1, v: 0.9, theta: -2, Omega: -2.5 },
    { seconds: 2, v: 0.3, theta: 1.7, Omega: 0.8 },
  ];
  const robot = { n: 3, alpha: 0.3, R: 0.2, r: 0.06 };

  const rimsOf = (leg: (typeof legs)[number]): readonly number[] =>
    worked(wheelSpeeds, { ...robot, v: leg.v, theta: leg.theta, Omega: leg.Omega }).list('omega');

  /** The legs one after the other, all of it the engine’s own work but the wheel speeds. */
  function driven(steps: number): Pose {
    const body = new DraggedBody(round(robot.n, robot.alpha, robot.R));
    for (const leg of legs) {
      body.roll(rimsOf(leg).map((omega) => omega * robot.r));
      body.drive(leg.seconds, steps);
    }
    return body.pose;
  }

  /** The same legs by body-motion: a steady motion in the robot’s frame runs along an arc. */
  function said(): Pose {
    return legs.reduce<Pose>(
      (from, leg) => {
        const motion = worked(bodyMotion, { omega: rimsOf(leg), alpha: robot.alpha, R: robot.R, r: robot.r });
        const turn = motion.number('Omega') * leg.seconds;
        const chord = Math.sin(turn / 2) / (turn / 2);
        const straight: Vector = [motion.number('v_x') * leg.seconds, motion.number('v_y') * leg.seconds];
        const [x, y] = rotate(straight, turn / 2);
        return onward(from, { at: [x * chord, y * chord], heading: turn });
      },
      { at: [0, 0], heading: 0 },
    );
  }

  const onward = (from: Pose, leg: Pose): Pose => {
    const [x, y] = rotate(leg.at, from.heading);
    return { at: [from.at[0] + x, from.at[1] + y], heading: from.heading + leg.heading };
  };

  const apart = (a: Pose, b: Pose): number => Math.hypot(a.at[0] - b.at[0], a.at[1] - b.at[1]);

  test('the body ends where body-motion says, as near as its steps are short', () => {
    const steps = 1000;
    const [end, wanted] = [driven(steps), said()];
    expect(end.heading).toBeCloseTo(wanted.heading, 9);
    // In a step the engine goes straight along the heading it began with, which is half a step’s turn behind. So every
    // leg is turned back by that much: the end is off by at most the sum of v Ω t² / (2 steps).
    const behind = legs.reduce(
      (sum, { seconds, v, Omega }) => sum + (v * Math.abs(Omega) * seconds ** 2) / (2 * steps),
      0,
    );
    expect(apart(end, wanted)).toBeLessThan(1.01 * behind);
    expect(apart(end, wanted)).toBeLessThan(2e-3);
  });

  test('with steps half as long it comes twice as near, and carried on to no length at all it is there', () => {
    const wanted = said();
    const [coarse, fine] = [driven(500), driven(1000)];
    expect(apart(coarse, wanted) / apart(fine, wanted)).toBeCloseTo(2, 2);
    const limit: Pose = {
      at: [2 * fine.at[0] - coarse.at[0], 2 * fine.at[1] - coarse.at[1]],
      heading: 2 * fine.heading - coarse.heading,
    };
    expect(apart(limit, wanted)).toBeLessThan(1e-5);
  });
});
