import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cautionsOf } from '../../../calculators/work.ts';
import { solve } from '../../../calculators/solve.ts';
import { bodyMotion } from '../../../calculators/wheel-kinematics/body-motion.ts';
import { wheelSpeeds } from '../../../calculators/wheel-kinematics/wheel-speeds.ts';
import { motionOf, rimOf, rotate, wheelsRound } from './plane-robot.ts';
import { between, motions, robots } from './random-robots.ts';
import { worked, type Results } from './worked.ts';

interface Robot {
  readonly n: number;
  readonly alpha: number;
  readonly R: number;
  readonly r: number;
}

const back = ({ alpha, R, r }: Robot, omega: readonly number[]): Results => worked(bodyMotion, { omega, alpha, R, r });

test('by hand: two wheels against one', () => {
  const results = worked(bodyMotion, { omega: [10, -5, -5], alpha: 0, R: 0.2, r: 0.06 });
  expect(results.number('v_x')).toBeCloseTo(0, 12);
  expect(results.number('v_y')).toBeCloseTo(0.6, 12);
  expect(results.number('v')).toBeCloseTo(0.6, 12);
  expect(results.number('theta')).toBeCloseTo(Math.PI / 2, 12);
  expect(results.number('Omega')).toBeCloseTo(0, 12);
});

test('undoes wheel-speeds, for any robot and motion', () => {
  fc.assert(
    fc.property(robots, motions, (robot, motion) => {
      const results = back(robot, worked(wheelSpeeds, { ...robot, ...motion }).list('omega'));
      const [x, y] = rotate([motion.v, 0], motion.theta);
      expect(results.number('v_x')).toBeCloseTo(x, 9);
      expect(results.number('v_y')).toBeCloseTo(y, 9);
      expect(results.number('v')).toBeCloseTo(motion.v, 9);
      expect(results.number('Omega')).toBeCloseTo(motion.Omega, 9);
      if (motion.v > 0.001) {
        const astray = results.number('theta') - motion.theta;
        expect(Math.abs(Math.sin(astray / 2))).toBeLessThan(1e-9);
      }
      expect(results.number('res_top')).toBeLessThan(1e-9);
      expect(results.number('suspect')).toBe(0);
    }),
  );
});

const readings = robots.chain((robot) =>
  fc.tuple(fc.constant(robot), fc.array(between(-50, 50), { minLength: robot.n, maxLength: robot.n })),
);

test('a second method: the least squares fit by elimination, for readings that agree or not', () => {
  fc.assert(
    fc.property(readings, ([robot, omega]) => {
      const results = back(robot, omega);
      const wheels = wheelsRound(robot.n, robot.alpha, robot.R);
      const rims = omega.map((x) => x * robot.r);
      const fit = motionOf(wheels, rims);
      const digits = 8;
      expect(results.number('v_x')).toBeCloseTo(fit.travel[0], digits);
      expect(results.number('v_y')).toBeCloseTo(fit.travel[1], digits);
      expect(results.number('Omega') * robot.R).toBeCloseTo(fit.turn * robot.R, digits);
      const left = wheels.map((wheel, k) => (rims[k] ?? NaN) - rimOf(wheel, fit));
      results.list('res').forEach((e, k) => expect(e).toBeCloseTo(left[k] ?? NaN, digits));
      expect(results.number('res_top')).toBeCloseTo(Math.max(...left.map(Math.abs)), digits);
    }),
  );
});

test('with three wheels the yaw is the sum of the rim speeds over 3R, and all readings agree', () => {
  const three = fc.record({ n: fc.constant(3), alpha: between(-6, 6), R: between(0.02, 2), r: between(0.005, 0.3) });
  const omegas = fc.tuple(between(-50, 50), between(-50, 50), between(-50, 50));
  fc.assert(
    fc.property(three, omegas, (robot, omega) => {
      const results = back(robot, omega);
      const sum = omega[0] + omega[1] + omega[2];
      expect(results.number('Omega')).toBeCloseTo((sum * robot.r) / (3 * robot.R), 8);
      expect(results.number('res_top')).toBe(0);
    }),
  );
});

const cautions = (robot: Robot, omega: readonly number[]): string => {
  const { values } = solve(bodyMotion, { omega, alpha: robot.alpha, R: robot.R, r: robot.r });
  return cautionsOf(bodyMotion, values).join('\n');
};

describe('one wheel wrong', () => {
  /** A robot of so many wheels in motion, one of which reads too much or too little by as much as the fastest turns. */
  const slips = (least: number, most: number) =>
    fc
      .tuple(robots, motions, fc.integer({ min: least, max: most }), fc.nat(), between(0.1, 3), fc.boolean())
      .map(([robot, motion, n, pick, size, more]) => {
        const right = worked(wheelSpeeds, { ...robot, n, ...motion }).list('omega');
        const wheel = (pick % n) + 1;
        const by = (more ? 1 : -1) * size * Math.max(1e-3, ...right.map(Math.abs));
        return {
          robot: { ...robot, n },
          motion,
          wheel,
          by,
          omega: right.map((x, k) => (k + 1 === wheel ? x + by : x)),
        };
      });

  test('of five to eight is the one suspected', () => {
    fc.assert(
      fc.property(slips(5, 8), ({ robot, wheel, by, omega }) => {
        const results = back(robot, omega);
        expect(results.number('suspect')).toBe(wheel);
        const share = 1 - 3 / robot.n;
        expect(results.number('res_top') / (robot.r * Math.abs(by) * share)).toBeCloseTo(1, 6);
        expect(cautions(robot, omega)).toContain(`it is wheel ${wheel}.`);
      }),
    );
  });

  test('of four makes all four disagree alike, and none is suspected', () => {
    fc.assert(
      fc.property(slips(4, 4), ({ robot, by, omega }) => {
        const results = back(robot, omega);
        const quarter = (robot.r * Math.abs(by)) / 4;
        results.list('res_abs').forEach((e) => expect(e / quarter).toBeCloseTo(1, 6));
        expect(results.number('suspect')).toBe(0);
        expect(cautions(robot, omega)).toContain('it does not tell which');
      }),
    );
  });

  test('of three leaves no trace', () => {
    fc.assert(
      fc.property(slips(3, 3), ({ robot, omega }) => {
        expect(back(robot, omega).number('suspect')).toBe(0);
        expect(cautions(robot, omega)).toContain('Slip leaves no trace here.');
      }),
    );
  });
});

test('turning on the spot, the heading has no meaning, and the page says so', () => {
  const robot = { n: 4, alpha: 0.3, R: 0.2, r: 0.06 };
  expect(cautions(robot, [5, 5, 5, 5])).toContain('the heading of travel has no meaning');
  expect(cautions(robot, [5, 5, 5, 6])).not.toContain('the heading of travel has no meaning');
});
