import { beforeAll, describe, expect, test } from 'vitest';
import { namesBehind } from '../../../calculators/dependencies.ts';
import { solve, type Solvable } from '../../../calculators/solve.ts';
import { speedEnvelope } from '../../../calculators/wheel-kinematics/speed-envelope.ts';
import { wheelSpeeds } from '../../../calculators/wheel-kinematics/wheel-speeds.ts';
import { degree, worked, type Results } from './worked.ts';

interface Robot {
  readonly n: number;
  readonly alpha: number;
  readonly R: number;
  readonly r: number;
}

const omegaMax = 15;
const robotOf = (n: number): Robot => ({ n, alpha: 0.1 * n - 0.35, R: 0.2, r: 0.06 });

/** Wheel speeds alone, in two parts: what hangs on the speed of travel, and what comes before it. */
const partOf = (from: number, to: number): Solvable => ({ steps: wheelSpeeds.steps.slice(from, to), requires: [] });
const firstMoving = wheelSpeeds.steps.findIndex((step) => namesBehind(step).includes('v'));
const standing = partOf(0, firstMoving);
const moving = partOf(firstMoving, wheelSpeeds.steps.findIndex(({ name }) => name === 'omega') + 1);

/** Whether all wheels can follow a motion, by its speed. */
function followers(robot: Robot, theta: number, Omega: number): (v: number, hair?: number) => boolean {
  const { values } = solve(standing, { ...robot, theta, Omega });
  return (v, hair = 0) => {
    const { omega } = solve(moving, { ...values, v }).values;
    if (typeof omega !== 'object') throw new Error('no wheel speeds');
    return omega.length === robot.n && omega.every((x) => Math.abs(x) <= omegaMax * (1 + hair));
  };
}

/** The largest speed at a heading that no wheel is too slow for, by halving the gap between yes and no. */
function bruteTop(robot: Robot, theta: number, Omega: number): number {
  const follows = followers(robot, theta, Omega);
  let [can, cannot] = [0, 2.2 * robot.r * omegaMax];
  for (let k = 0; k < 25; k++) {
    const v = (can + cannot) / 2;
    if (follows(v)) can = v;
    else cannot = v;
  }
  return can;
}

const headings = Array.from({ length: 720 }, (_, k) => (k - 360) * 0.5 * degree);

/** A yaw rate as a share of the one that takes everything. */
const yawOf = (robot: Robot, share: number): number => (share * robot.r * omegaMax) / robot.R;

const envelope = (robot: Robot, share: number, theta = 0): Results =>
  worked(speedEnvelope, { ...robot, omega_max: omegaMax, Omega: yawOf(robot, share), theta });

const cases = [3, 4, 5, 6, 7, 8].flatMap((n) => [0, 0.2, -0.55].map((share): [number, number] => [n, share]));

describe.each(cases)('%i wheels, turning at %d of the limit', { timeout: 60_000 }, (n, share) => {
  const robot = robotOf(n);
  const Omega = yawOf(robot, share);
  let tops: readonly number[] = [];
  beforeAll(() => {
    tops = headings.map((theta) => bruteTop(robot, theta, Omega));
  }, 60_000);
  const results = envelope(robot, share);

  test('the top speed at every half degree is the largest that all wheels can follow', () => {
    headings.forEach((theta, k) => {
      expect(envelope(robot, share, theta).number('v_top') / (tops[k] ?? NaN)).toBeCloseTo(1, 6);
    });
  });

  test('no heading is quicker than the quickest, and that one is as quick as said', () => {
    const best = results.number('v_best');
    expect(Math.max(...tops)).toBeLessThanOrEqual(best * (1 + 1e-9));
    expect(Math.max(...tops)).toBeGreaterThan(best * 0.99);
    expect(bruteTop(robot, results.number('theta_best'), Omega) / best).toBeCloseTo(1, 6);
  });

  test('no heading is slower than the slowest, and that one is as slow as said', () => {
    const worst = results.number('v_worst');
    expect(Math.min(...tops)).toBeGreaterThanOrEqual(worst * (1 - 1e-6));
    expect(bruteTop(robot, results.number('theta_worst'), Omega) / worst).toBeCloseTo(1, 6);
    expect(results.number('v_ratio') * worst).toBeCloseTo(results.number('v_best'), 12);
  });

  test('the speed it can keep, it can keep at every heading; not a thousandth more', () => {
    const keep = results.number('v_keep');
    const at = (v: number) => (theta: number) => followers(robot, theta, Omega)(v, 1e-12);
    expect(headings.every(at(keep))).toBe(true);
    expect([...headings, results.number('theta_worst')].every(at(1.001 * keep))).toBe(false);
  });
});

describe('how unequal the headings are', () => {
  test.each([3, 4, 5, 6, 7, 8])('%i wheels without turning', (n) => {
    const { number } = envelope(robotOf(n), 0);
    expect(number('v_ratio')).toBeCloseTo(1 / Math.cos(Math.PI / (n % 2 === 1 ? 2 * n : n)), 12);
  });

  test.each([
    [0.2, 1.5275],
    [1 / 3, 2],
    [0.5, 2],
    [-0.9, 2],
  ])('three wheels turning at %d of the limit', (share, ratio) => {
    expect(envelope(robotOf(3), share).number('v_ratio')).toBeCloseTo(ratio, 4);
  });

  test('an even number of wheels: turning makes all headings slower alike', () => {
    for (const n of [4, 6, 8]) {
      const [still, turning] = [envelope(robotOf(n), 0), envelope(robotOf(n), 0.4)];
      expect(turning.number('v_ratio')).toBeCloseTo(still.number('v_ratio'), 12);
      expect(turning.number('v_best') / still.number('v_best')).toBeCloseTo(0.6, 12);
    }
  });

  test('the other way round, the quick and the slow headings change sides', () => {
    const [one, other] = [envelope(robotOf(5), 0.3, 1), envelope(robotOf(5), -0.3, 1 + Math.PI)];
    expect(other.number('v_top')).toBeCloseTo(one.number('v_top'), 12);
    expect(other.number('v_best')).toBeCloseTo(one.number('v_best'), 12);
  });
});

describe('turning too fast', () => {
  const at = (share: number): string => {
    const robot = robotOf(3);
    const inputs = { ...robot, omega_max: omegaMax, Omega: yawOf(robot, share), theta: 0 };
    return solve(speedEnvelope, inputs).refusal?.given ?? 'worked';
  };

  test('is refused beside the yaw rate', () => {
    expect([at(0.999), at(-0.999), at(1.001), at(-1.001)]).toEqual(['worked', 'worked', 'Omega', 'Omega']);
  });
});
