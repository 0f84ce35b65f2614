import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { deadReckoning } from '../../../calculators/wheel-kinematics/dead-reckoning.ts';
import { dot, motionOf, moved, rimOf, rotate, start, wheelsRound, type Motion, type Pose } from './plane-robot.ts';
import { degree, worked, type Results } from './worked.ts';

const steps = 1000;

interface Machine {
  readonly n: number;
  readonly alpha: number;
  readonly r: number;
  readonly R: number;
}

const turnOf = 2 * Math.PI;
const demo: Machine = { n: 3, alpha: 0, r: 0.06, R: 0.2 };

/**
 * Drives a robot by true motions and reckons beside it what a program makes of the wheel angles that believes in other
 * radii and another distance to the wheels.
 */
function reckon(
  { n, alpha, r, R }: Machine,
  believed: { readonly radii: readonly number[]; readonly R: number },
  motionAt: (heading: number) => Motion,
): { readonly truth: Pose; readonly reckoned: Pose } {
  const wheels = wheelsRound(n, alpha, R);
  const believedWheels = wheelsRound(n, alpha, believed.R);
  let [truth, reckoned] = [start, start];
  for (let k = 0; k < steps; k++) {
    const motion = motionAt(truth.heading);
    const angles = wheels.map((wheel) => rimOf(wheel, motion) / r);
    const rims = angles.map((angle, wheel) => angle * (believed.radii[wheel] ?? NaN));
    truth = moved(truth, motion);
    reckoned = moved(reckoned, motionOf(believedWheels, rims));
  }
  return { truth, reckoned };
}

/** How far to the side of a path along `heading` the reckoned end lies from the true one. */
const sideways = (truth: Pose, reckoned: Pose, heading: number): number =>
  dot([reckoned.at[0] - truth.at[0], reckoned.at[1] - truth.at[1]], rotate([0, 1], heading));

const errors = fc.record({
  e_r: fc.double({ min: -0.05, max: 0.05, noNaN: true }),
  e_R: fc.double({ min: -0.05, max: 0.05, noNaN: true }),
  turns: fc.double({ min: 0, max: 2, noNaN: true }),
  theta: fc.double({ min: -3, max: 3, noNaN: true }),
});

describe('figures of our own, from a script written apart from the calculator', () => {
  const turning = worked(deadReckoning, { ...demo, theta: 90 * degree, s: 10, turns: 2, e_r: 0.01, e_R: -0.02 });

  test('a radius 1 % too large and a distance 2 % too small, over two turns and 10 m', () => {
    expect(turning.number('dtheta_turn') / degree).toBeCloseTo(22, 1);
    expect(turning.number('y_turn_first')).toBeCloseTo(3.75, 2);
    expect(turning.number('y_turn_mixed')).toBeCloseTo(1.9, 1);
    expect(turning.number('ds')).toBeCloseTo(0.1, 12);
  });

  test('one wheel of three 1 % off, over 10 m in any direction', () => {
    for (let angle = 0; angle < 360; angle += 5) {
      const one = worked(deadReckoning, { ...demo, theta: angle * degree, s: 10, e_d: 0.01 });
      const heading = one.number('dtheta_one') / degree;
      expect(heading > 8 && heading < 9.6, String(heading)).toBe(true);
      const side = one.number('y_one');
      expect(side > 0.7 && side < 0.85, String(side)).toBe(true);
    }
  });
});

describe('a robot that reckons with wrong sizes, integrated in steps', () => {
  const believed = (machine: Machine, e_r: number, e_R: number) => ({
    radii: Array.from({ length: machine.n }, () => machine.r * (1 + e_r)),
    R: machine.R * (1 + e_R),
  });

  test('turning on the spot puts its heading off as said, and the drive after it', () => {
    fc.assert(
      fc.property(errors, ({ e_r, e_R, turns, theta }) => {
        const result = worked(deadReckoning, { ...demo, theta, s: 10, turns, e_r, e_R });
        const small: Motion = { travel: [0, 0], turn: (turns * turnOf) / steps };
        const turned = reckon(demo, believed(demo, e_r, e_R), () => small);
        const off = turned.reckoned.heading - turned.truth.heading;
        expect(off).toBeCloseTo(result.number('dtheta_turn'), 8);
        // Driven straight on, 10 m by the robot’s own count: all of it runs off at the wrong angle.
        const [, side] = rotate([10, 0], off);
        expect(result.number('y_turn_first')).toBeCloseTo(side, 7);
      }),
      { numRuns: 20 },
    );
  });

  test('turning evenly along a straight line leads it aside as said', () => {
    fc.assert(
      fc.property(errors, ({ e_r, e_R, turns, theta }) => {
        const result = worked(deadReckoning, { ...demo, theta, s: 10, turns, e_r, e_R });
        const turn = (turns * turnOf) / steps;
        const { truth, reckoned } = reckon(demo, believed(demo, e_r, e_R), (heading) => ({
          travel: rotate([10 / steps, 0], theta - heading - turn / 2),
          turn,
        }));
        // The robot also counts the metres 1 + e_r too many. The calculator leaves out the product of the two errors.
        const side = sideways(truth, reckoned, theta) / (1 + e_r);
        expect(result.number('y_turn_mixed')).toBeCloseTo(side, 5);
      }),
      { numRuns: 20 },
    );
  });

  const machines = fc.record({
    n: fc.integer({ min: 3, max: 8 }),
    alpha: fc.double({ min: -3, max: 3, noNaN: true }),
    r: fc.constant(0.06),
    R: fc.double({ min: 0.15, max: 0.5, noNaN: true }),
  });

  test('with one wheel wrong, the worst of them puts it off as said', () => {
    fc.assert(
      fc.property(machines, errors, (machine, { e_r: e_d, theta }) => {
        const s = 5;
        const result = worked(deadReckoning, { ...machine, theta, s, e_d });
        const ends = Array.from({ length: machine.n }, (_, wrong) => {
          const radii = Array.from({ length: machine.n }, (_, k) => machine.r * (k === wrong ? 1 + e_d : 1));
          const straight: Motion = { travel: rotate([s / steps, 0], theta), turn: 0 };
          return reckon(machine, { radii, R: machine.R }, () => straight);
        });
        const [worst] = ends.sort((a, b) => Math.abs(b.reckoned.heading) - Math.abs(a.reckoned.heading));
        if (!worst) throw new Error('no wheels');
        expect(Math.abs(worst.reckoned.heading)).toBeCloseTo(Math.abs(result.number('dtheta_one')), 8);
        // The calculator has the arc but not the drift. A wheel that does the share sin of the travel drives across it by
        // cos, and the product is at most a half: of its excess 2/n · e_d/2 of the path go sideways. The path also grows.
        const drift = (Math.abs(e_d) * s) / machine.n + 2 * e_d * result.number('y_one');
        const side = Math.abs(sideways(worst.truth, worst.reckoned, theta));
        expect(Math.abs(side - Math.abs(result.number('y_one')))).toBeLessThanOrEqual(drift + 1e-6);
      }),
      { numRuns: 10 },
    );
  });
});

describe('limits', () => {
  const result = (inputs: Parameters<typeof worked>[1]): Results => worked(deadReckoning, inputs);

  test('without errors nothing is off', () => {
    const none = result({ e_r: 0, e_R: 0, e_d: 0 });
    const all = ['ds', 'dtheta_turn', 'y_turn_first', 'y_turn_mixed', 'dtheta_one', 'y_one'];
    expect(all.map((name) => none.number(name))).toEqual(all.map(() => 0));
  });

  test('an error that all wheels share bends no straight run', () => {
    const straight = result({ e_r: 0.1, e_R: -0.1, turns: 0, e_d: 0 });
    expect(straight.number('dtheta_turn')).toBe(0);
    expect(straight.number('y_turn_first')).toBe(0);
    expect(straight.number('y_one')).toBe(0);
    expect(straight.number('ds')).toBeGreaterThan(0);
  });

  test('radius and distance wrong by the same share turn it rightly', () => {
    expect(result({ e_r: 0.03, e_R: 0.03, turns: 100 }).number('dtheta_turn')).toBe(0);
  });

  test('a gear of 30 makes a count thirty times finer', () => {
    const plain = result({ counts: 48, ratio: 1 });
    const geared = result({ counts: 48, ratio: 30 });
    expect(geared.number('d_count') * 30).toBeCloseTo(plain.number('d_count'), 12);
    expect(geared.number('turn_counts')).toBeCloseTo(30 * plain.number('turn_counts'), 9);
  });

  test('the counts of a turn on the spot are the way round it', () => {
    const around = result({ counts: 48, ratio: 30, r: 0.06, R: 0.2 });
    expect(around.number('turn_counts') * around.number('d_count')).toBeCloseTo(2 * Math.PI * 0.2, 12);
  });
});
