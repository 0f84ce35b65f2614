import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stepByHeading } from '../../../calculators/step-climbing/step-by-heading.ts';
import { stepClimb } from '../../../calculators/step-climbing/step-climb.ts';
import { degree, worked } from '../wheel-kinematics/worked.ts';
import { balance, firstToGive, type Robot } from './vector-statics.ts';
import { coarse, getsOver } from './wheel-engine.ts';

const g = 9.80665;
const m = 9;
const steepest = 65 * degree;
const strong = 1000;

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

const robots = fc
  .record({
    theta: between(-Math.PI, Math.PI),
    alpha: between(-Math.PI, Math.PI),
    r: between(0.02, 0.12),
    slim: fc.oneof(fc.constant(1), between(0.1, 1)),
    wide: between(1.2, 5),
    mu: between(0.05, 0.9),
    off: between(0, 0.45),
    way: between(-Math.PI, Math.PI),
    T_w: fc.oneof(fc.constant(strong), between(0.05, 2)),
  })
  .map(({ theta, alpha, r, slim, wide, mu, off, way, T_w }): Robot => {
    const R = wide * r;
    const [x, y] = [off * R * Math.cos(way), off * R * Math.sin(way)];
    return { theta, alpha, r, q: slim * r, R, mu, x, y, T_w, W: m * g };
  });

const work = ({ theta, alpha, r, q, R, mu, x, y, T_w }: Robot) =>
  worked(stepByHeading, { theta, alpha, r, q, R, mu, x, y, T_w, m, g });

/** The demo robot at a grip of one half, its motors strong. */
const demo: Robot = {
  theta: 0,
  alpha: 0,
  r: 0.06,
  q: 0.06,
  R: 0.2,
  mu: 0.5,
  x: 0,
  y: 0,
  T_w: strong,
  W: m * g,
};

describe('six equations for six unknowns, as vectors', () => {
  test('give the same normals, drive forces and torques', () => {
    fc.assert(
      fc.property(robots, (robot) => {
        const said = work(robot);
        const wheelB = said.list('b_i');
        [0, 1, 2].forEach((wheel) => {
          const found = balance(robot, wheel, said.list('psi_i')[wheel] ?? NaN);
          const b = (wheelB[wheel] ?? NaN) - 1;
          const order = { i: wheel, b, k: 3 - wheel - b };
          for (const [who, at] of Object.entries(order)) {
            const close = (name: string, want: number | undefined): void =>
              expect(Math.abs((said.list(`${name}_${who}`)[wheel] ?? NaN) - (want ?? NaN))).toBeLessThan(
                1e-9 * robot.W,
              );
            close('N', found.normals[at]);
            close('F', found.drives[at]);
            close('T', found.torques[at]);
          }
          expect(said.list('h_i')[wheel]).toBeCloseTo(found.rise, 12);
        });
      }),
      { numRuns: 200 },
    );
  });

  test('walked up in small steps, they give way first at the contact that is found', () => {
    fc.assert(
      fc.property(robots, (robot) => {
        const said = work(robot).list('psi_i');
        [0, 1, 2].forEach((wheel) => {
          expect(Math.abs((said[wheel] ?? NaN) - firstToGive(robot, wheel, steepest, 130))).toBeLessThan(1e-9);
        });
      }),
      { numRuns: 60 },
    );
  });
});

describe('whichever way round', () => {
  const highest = (robot: Robot): number => work(robot).number('h_most');

  test('wheels turned by a third of a turn are the same robot', () => {
    fc.assert(
      fc.property(robots, (robot) => {
        const turned = highest({ ...robot, alpha: robot.alpha + (2 * Math.PI) / 3 });
        expect(turned / highest(robot)).toBeCloseTo(1, 9);
      }),
      { numRuns: 60 },
    );
  });

  test('a robot and its mirror image get up the same', () => {
    fc.assert(
      fc.property(robots, (robot) => {
        const mirrored = highest({ ...robot, theta: -robot.theta, alpha: -robot.alpha, y: -robot.y });
        expect(mirrored / highest(robot)).toBeCloseTo(1, 9);
      }),
      { numRuns: 60 },
    );
  });

  test('a scale does not matter, with torque to spare', () => {
    fc.assert(
      fc.property(robots, between(0.2, 3), (one, k) => {
        const robot = { ...one, T_w: strong };
        const larger = { ...robot, r: k * robot.r, q: k * robot.q, R: k * robot.R, x: k * robot.x, y: k * robot.y };
        expect(highest(larger) / (k * highest(robot))).toBeCloseTo(1, 9);
      }),
      { numRuns: 60 },
    );
  });

  test('less grip or less torque is never better, and next to none gets up next to nothing', () => {
    fc.assert(
      fc.property(robots, between(0.3, 1), (robot, share) => {
        const best = highest(robot);
        expect(highest({ ...robot, mu: Math.max(0.01, robot.mu * share) })).toBeLessThanOrEqual(best * (1 + 1e-9));
        expect(highest({ ...robot, T_w: robot.T_w * share })).toBeLessThanOrEqual(best * (1 + 1e-9));
        expect(highest({ ...robot, mu: 0.01 }) / robot.r).toBeLessThan(0.01);
        expect(highest({ ...robot, T_w: 0.001 }) / robot.r).toBeLessThan(0.01);
      }),
      { numRuns: 60 },
    );
  });
});

/**
 * Derived apart from the calculator, in another language, by walking the contact angle up in 4000 steps with the
 * equations of each wheel alone, printed to a thousandth: the highest step over the wheel radius, wheel by wheel.
 */
describe('another derivation, each wheel alone', () => {
  test.each([
    [0.06, 5, [0.346, 0.124, undefined]],
    [0.06, 20, [0.423, 0.107, 0.239]],
    [0.06, 30, [0.463, 0.105, 0.248]],
    [0.06, 55, [0.167, 0.134, 0.184]],
    [0.015, 0, [0.067, undefined, undefined]],
    [0.015, 20, [0.113, 0.105, 0.151]],
    [0.015, 30, [0.216, 0.105, 0.165]],
    [0.015, 55, [0.133, 0.119, 0.058]],
  ])('rollers of %f m, heading %f°', (q, theta, wanted) => {
    const said = work({ ...demo, q, theta: theta * degree }).list('h_i');
    wanted.forEach((want, wheel) => {
      if (want !== undefined) expect(Math.abs((said[wheel] ?? NaN) / demo.r - want)).toBeLessThanOrEqual(0.0011);
    });
  });
});

describe('where the robot is a single wheel', () => {
  const alone = (mu: number): number => worked(stepClimb, { r: 0.06, h: 0.001, W: 1, H: 0, mu }).number('h_most');

  test.each([0.2, 0.5, 0.8])('a ball that faces the step climbs by its own grip, whatever R: %f', (mu) => {
    for (const R of [0.1, 0.2, 2]) {
      expect(work({ ...demo, mu, R, theta: 30 * degree }).list('h_i')[1]).toBeCloseTo(alone(mu), 9);
    }
  });

  test.each([0.2, 0.5, 0.8])('two balls side by side climb by what grip is left at a slant, whatever R: %f', (mu) => {
    const slant = Math.cos(30 * degree);
    for (const R of [0.1, 0.2, 2]) {
      for (const said of [work({ ...demo, mu, R, theta: 60 * degree }), work({ ...demo, mu, R })]) {
        const psi = said.list('psi_i')[1] ?? NaN;
        const left = (mu * slant) / Math.hypot(slant * Math.sin(psi), Math.cos(psi));
        expect(Math.tan(psi)).toBeCloseTo(left, 9);
      }
    }
  });

  test.each([10, 40])('a car on %i wheel radii that pushes free front wheels, with its load shifting', (base) => {
    const [r, grip, front] = [0.28, 0.85, 0.6];
    const R = (base * r) / 1.5;
    const car = { ...demo, r, q: r, R, mu: grip / Math.cos(30 * degree), x: ((3 * front - 1) / 2) * R };
    // By moments about the rear axle: tan psi = (1 - f) mu / (f - mu r / L), f the share of the front.
    const tangent = ((1 - front) * grip) / (front - grip / base);
    expect(Math.tan(work(car).list('psi_i')[0] ?? NaN)).toBeCloseTo(tangent, 9);
  });

  test('one that leads is pushed with the root of three times the grip, on a wide robot', () => {
    const far = work({ ...demo, R: 1e4 * demo.r });
    expect(far.list('h_i')[0]).toBeCloseTo(demo.r * (1 - Math.cos(Math.atan(Math.sqrt(3) * demo.mu))), 5);
  });
});

/**
 * The engine is flat: it can check what happens in one upright plane. That is a leading wheel that does not drive, pushed
 * by two that stand far behind, and a driven wheel that faces the step. A driven wheel that meets the edge at a slant is
 * no flat body, so for that the vectors above are the only judge.
 */
describe('in the rigid-body engine, where the robot is flat', () => {
  const off = 0.05;

  test.each([0.3, 0.5])('a driven wheel that faces the step, grip %f', (mu) => {
    const h = (work({ ...demo, mu, theta: 30 * degree }).list('h_i')[1] ?? NaN) / demo.r;
    const trial = { push: 0, mu, driven: true };
    expect(getsOver({ ...trial, h: h * (1 + off) }, coarse)).toBe(false);
    expect(getsOver({ ...trial, h: h * (1 - off) }, coarse)).toBe(true);
  });

  test.each([0.3, 0.5])('a leading wheel pushed by two far behind, grip %f', (mu) => {
    const h = (work({ ...demo, mu, R: 1e4 * demo.r }).list('h_i')[0] ?? NaN) / demo.r;
    const trial = { push: Math.sqrt(3) * mu, mu, driven: false };
    expect(getsOver({ ...trial, h: h * (1 + off) }, coarse)).toBe(false);
    expect(getsOver({ ...trial, h: h * (1 - off) }, coarse)).toBe(true);
  });
});

test('the best headings of balls and of ordinary wheels are not the same', () => {
  const best = (q: number): number => {
    const headings = Array.from({ length: 61 }, (_, k) => k);
    const heights = headings.map((theta) => work({ ...demo, q, theta: theta * degree }).number('h_most'));
    return heights.indexOf(Math.max(...heights));
  };
  expect([4, 5, 54, 55]).toContain(best(demo.r));
  expect(best(demo.r / 4)).toBeGreaterThan(15);
  expect(best(demo.r / 4)).toBeLessThan(40);
});
