import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { straightness } from '../../../calculators/wheel-kinematics/straightness.ts';
import { dot, motionOf, moved, rimOf, rotate, start, wheelsRound, type Pose, type Vector } from './plane-robot.ts';
import { degree, worked } from './worked.ts';

const steps = 2000;

interface Run {
  readonly e_w: readonly number[];
  readonly alpha: number;
  readonly R: number;
  readonly theta: number;
  readonly s: number;
}

/** What one step of the program does to the robot when its wheels roll more or less than they are told. */
function step({ e_w, alpha, R }: Run, travel: Vector) {
  const wheels = wheelsRound(e_w.length, alpha, R);
  const rims = wheels.map((wheel, k) => rimOf(wheel, { travel, turn: 0 }) * (1 + (e_w[k] ?? NaN)));
  return motionOf(wheels, rims);
}

/** Told to drive straight, step by step in its own frame. */
function drive(run: Run): Pose {
  const motion = step(run, rotate([run.s / steps, 0], run.theta));
  let pose = start;
  for (let k = 0; k < steps; k++) pose = moved(pose, motion);
  return pose;
}

/** Told the same, with a sensor that keeps its heading: the turning is taken out after each step. */
function driveWithSensor(run: Run): Pose {
  const { travel } = step(run, rotate([run.s / steps, 0], run.theta));
  let pose = start;
  for (let k = 0; k < steps; k++) pose = moved(pose, { travel, turn: 0 });
  return pose;
}

const left = ({ at }: Pose, theta: number): number => dot(at, rotate([0, 1], theta));

const error = fc.double({ min: -0.05, max: 0.05, noNaN: true });
const angle = fc.double({ min: -3, max: 3, noNaN: true });
const runs = fc.record({
  e_w: fc.array(error, { minLength: 3, maxLength: 8 }),
  alpha: angle,
  R: fc.double({ min: 0.2, max: 1, noNaN: true }),
  theta: angle,
  s: fc.double({ min: 0.1, max: 3, noNaN: true }),
});

describe('a robot whose wheels roll wrong, integrated in steps', () => {
  test('its heading goes off as said', () => {
    fc.assert(
      fc.property(runs, (run) => {
        expect(worked(straightness, { ...run }).number('dtheta')).toBeCloseTo(drive(run).heading, 8);
      }),
      { numRuns: 40 },
    );
  });

  test('it ends to the left of the line as said, as far as a parabola is an arc', () => {
    fc.assert(
      fc.property(runs, (run) => {
        const result = worked(straightness, { ...run });
        const off = Math.abs(result.number('dtheta'));
        const worst = Math.max(...run.e_w.map(Math.abs));
        // An arc of angle δ lies s (δ/2 − δ³/24 + …) aside, the parabola sδ/2. The path is longer or shorter than s by at
        // most the worst error, which changes the arc as much. And the drift, at most the worst error too, turns with the
        // robot: (sin δ)/δ of it is left.
        const tolerance = run.s * (off ** 3 / 24 + (worst * off) / 2 + (worst * off ** 2) / 6) + 1e-9;
        expect(Math.abs(result.number('y_left') - left(drive(run), run.theta))).toBeLessThanOrEqual(tolerance);
      }),
      { numRuns: 40 },
    );
  });

  test('a yaw sensor leaves the drift', () => {
    fc.assert(
      fc.property(runs, (run) => {
        const result = worked(straightness, { ...run });
        expect(result.number('y_sensor')).toBeCloseTo(left(driveWithSensor(run), run.theta), 9);
      }),
      { numRuns: 40 },
    );
  });
});

describe('laws', () => {
  test('equal errors bend no straight run and bring no drift', () => {
    fc.assert(
      fc.property(runs, error, (run, shared) => {
        const result = worked(straightness, { ...run, e_w: run.e_w.map(() => shared) });
        expect(result.number('dtheta')).toBeCloseTo(0, 12);
        expect(result.number('y_left')).toBeCloseTo(0, 12);
      }),
    );
  });

  test('the errors add up', () => {
    fc.assert(
      fc.property(runs, (run) => {
        const alone = run.e_w.map((e, k) =>
          worked(straightness, { ...run, e_w: run.e_w.map((_, j) => (j === k ? e : 0)) }).number('kappa'),
        );
        const together = worked(straightness, { ...run }).number('kappa');
        expect(alone.reduce((sum, x) => sum + x, 0)).toBeCloseTo(together, 10);
      }),
    );
  });

  test('the wheel that matters most bends the path most', () => {
    fc.assert(
      fc.property(runs, (run) => {
        const bends = run.e_w.map((_, k) =>
          Math.abs(worked(straightness, { ...run, e_w: run.e_w.map((_, j) => (j === k ? 0.01 : 0)) }).number('kappa')),
        );
        const result = worked(straightness, { ...run });
        result.list('kappa_i').forEach((bend, k) => {
          expect(bend).toBeCloseTo(bends[k] ?? NaN, 12);
        });
        expect(bends[result.number('i_most') - 1]).toBeCloseTo(Math.max(...bends), 7);
      }),
    );
  });
});

describe('limits', () => {
  test('figures of our own, from a script apart: one wheel of three 1 % off over 10 m', () => {
    const seen = [1, 2, 3].map((wrong) => {
      const e_w = [1, 2, 3].map((wheel) => (wheel === wrong ? 0.01 : 0));
      return worked(straightness, { e_w, alpha: 0, R: 0.2, theta: 75 * degree, s: 10 });
    });
    const most = worked(straightness, { e_w: [0, 0, 0], alpha: 0, R: 0.2, theta: 75 * degree, s: 10 }).number('i_most');
    const worst = seen[most - 1];
    const heading = Math.abs(worst?.number('dtheta') ?? NaN) / degree;
    expect(heading > 8 && heading < 9.6, String(heading)).toBe(true);
    const side = Math.abs(worst?.number('y_left') ?? NaN);
    expect(side > 0.7 && side < 0.85, String(side)).toBe(true);
  });

  test('a wheel whose axle lies along the travel does nothing, right or wrong', () => {
    const result = worked(straightness, { e_w: [0.2, 0, 0], alpha: 0, theta: 0, R: 0.2, s: 10 });
    expect(result.list('kappa_i')[0]).toBe(0);
    expect(result.number('y_left')).toBe(0);
    expect(result.number('crab')).toBe(0);
  });

  test('a wheel that does all of the travel turns the robot and brings no drift', () => {
    const result = worked(straightness, { e_w: [0.01, 0, 0], alpha: 0, theta: 90 * degree, R: 0.2, s: 10 });
    expect(result.number('crab')).toBe(0);
    expect(result.number('i_most')).toBe(1);
    expect(result.number('dtheta')).toBeCloseTo((0.01 * 10) / (3 * 0.2), 12);
  });
});
