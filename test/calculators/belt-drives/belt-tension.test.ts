import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { beltTension } from '../../../calculators/belt-drives/belt-tension.ts';
import { degree, worked } from '../wheel-kinematics/worked.ts';

interface Vector {
  readonly x: number;
  readonly y: number;
}

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

const drives = fc
  .record({
    T_1: between(0.05, 20),
    p: between(0.002, 0.01),
    z1: fc.integer({ min: 10, max: 80 }),
    z2: fc.integer({ min: 10, max: 80 }),
    gap: between(1.05, 6),
    pre: between(0, 2),
  })
  .map(({ gap, ...drive }) => ({ ...drive, C: (gap * drive.p * (drive.z1 + drive.z2)) / (2 * Math.PI) }));

/** The root of a rising function. */
function rootOf(rising: (x: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let k = 0; k < 200; k++) {
    const middle = (low + high) / 2;
    if (rising(middle) < 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

const plus = (a: Vector, b: Vector): Vector => ({ x: a.x + b.x, y: a.y + b.y });
const times = (k: number, a: Vector): Vector => ({ x: k * a.x, y: k * a.y });
const cross = (a: Vector, b: Vector): number => a.x * b.y - a.y * b.x;

/** Where the upper span touches pulley 1, and its direction from there: a line square to the radii of both circles. */
function upperSpan(r1: number, r2: number, C: number): { readonly foot: Vector; readonly along: Vector } {
  const out = (a: number): Vector => ({ x: Math.cos(a), y: Math.sin(a) });
  const far = (a: number): Vector => plus({ x: C, y: 0 }, times(r2, out(a)));
  const leaning = (a: number): number => {
    const run = plus(far(a), times(-r1, out(a)));
    return -(run.x * out(a).x + run.y * out(a).y);
  };
  const a = rootOf(leaning, 0, Math.PI);
  const run = plus(far(a), times(-r1, out(a)));
  return { foot: times(r1, out(a)), along: times(1 / Math.hypot(run.x, run.y), run) };
}

/** Two equal springs that can pull only, stretched alike, until their difference is the pull wanted. */
function springs(pretension: number, pull: number): { readonly tight: number; readonly slack: number } {
  const tight = (turn: number): number => Math.max(0, pretension + turn);
  const slack = (turn: number): number => Math.max(0, pretension - turn);
  const turn = rootOf((x) => tight(x) - slack(x) - pull, 0, 4 * (pretension + pull));
  return { tight: tight(turn), slack: slack(turn) };
}

test('two springs that cannot push share the pull so', () => {
  fc.assert(
    fc.property(drives, (drive) => {
      const { number } = worked(beltTension, drive);
      const { tight, slack } = springs(number('F_0'), number('F_u'));
      const hair = 1e-9 * number('F_u');
      expect(Math.abs(number('F_t') - tight)).toBeLessThanOrEqual(hair);
      expect(Math.abs(number('F_s') - slack)).toBeLessThanOrEqual(hair);
    }),
  );
});

describe('vectors drawn at the points where the spans touch', () => {
  test('give the torque, and the load on the shaft with its direction', () => {
    fc.assert(
      fc.property(drives, (drive) => {
        const { number } = worked(beltTension, drive);
        const [r1, r2] = [(drive.p * drive.z1) / (2 * Math.PI), (drive.p * drive.z2) / (2 * Math.PI)];
        const { foot, along } = upperSpan(r1, r2, drive.C);
        const tight = times(number('F_t'), along);
        const slack = times(number('F_s'), { x: along.x, y: -along.y });
        const below = { x: foot.x, y: -foot.y };
        const hair = 1e-7 * number('F_t');
        const torque = -(cross(foot, tight) + cross(below, slack));
        expect(Math.abs(torque - drive.T_1)).toBeLessThanOrEqual(1e-7 * number('F_t') * r1);
        const load = plus(tight, slack);
        expect(Math.abs(Math.hypot(load.x, load.y) - number('F_shaft'))).toBeLessThanOrEqual(hair);
        expect(Math.abs(load.x - number('F_along'))).toBeLessThanOrEqual(hair);
        expect(Math.abs(load.y - number('F_across'))).toBeLessThanOrEqual(hair);
        expect(Math.abs(Math.atan2(load.y, load.x) - number('lean'))).toBeLessThanOrEqual(1e-6);
        const rest = plus(times(number('F_0'), along), times(number('F_0'), { x: along.x, y: -along.y }));
        expect(Math.abs(Math.hypot(rest.x, rest.y) - number('F_rest'))).toBeLessThanOrEqual(hair);
      }),
    );
  });

  test('touch the smaller pulley over as many teeth as are in mesh', () => {
    fc.assert(
      fc.property(drives, (drive) => {
        const radius = (z: number): number => (drive.p * z) / (2 * Math.PI);
        const small = Math.min(drive.z1, drive.z2);
        const { foot } = upperSpan(radius(small), radius(Math.max(drive.z1, drive.z2)), drive.C);
        const wrap = 2 * (Math.PI - Math.atan2(foot.y, foot.x));
        expect(worked(beltTension, drive).number('z_mesh')).toBeCloseTo((small * wrap) / (2 * Math.PI), 6);
      }),
    );
  });
});

describe('at its limits', () => {
  const pulled100 = { T_1: 1, p: (Math.PI * 0.02) / 20, z1: 20, C: 0.2 };

  test('a belt mounted loose loads the shaft with the pull, not with what the formula of a taut belt gives', () => {
    const { number } = worked(beltTension, { ...pulled100, z2: 40, pre: 0.3 });
    expect(number('F_u')).toBeCloseTo(100, 9);
    expect(number('F_s')).toBe(0);
    expect(number('F_shaft')).toBeCloseTo(100, 9);
  });

  test('alike pulleys add both pulls', () => {
    const { number } = worked(beltTension, { ...pulled100, z2: 20, pre: 0.7 });
    expect(number('F_shaft')).toBeCloseTo(140, 9);
    expect(number('lean')).toBe(0);
  });

  test('the pulleys changed over, the load leans to the other side by as much', () => {
    const there = worked(beltTension, { z1: 18, z2: 36 });
    const back = worked(beltTension, { z1: 36, z2: 18 });
    expect(back.number('lean')).toBeCloseTo(-there.number('lean'), 12);
    expect(back.number('z_mesh')).toBeCloseTo(there.number('z_mesh'), 12);
    expect(Math.abs(there.number('phi_b')) / degree).toBeLessThan(6);
  });

  test('more pretension never loads the shaft less', () => {
    fc.assert(
      fc.property(drives, between(0, 1), (drive, more) => {
        const load = (pre: number): number => worked(beltTension, { ...drive, pre }).number('F_shaft');
        expect(load(drive.pre + more)).toBeGreaterThanOrEqual(load(drive.pre) * (1 - 1e-9));
      }),
    );
  });

  test.each([
    [4, 0.6],
    [5, 0.8],
    [6, 1],
    [12, 1],
  ])('%i teeth in mesh keep %f of the allowed pull', (teeth, share) => {
    const { number } = worked(beltTension, { z1: 2 * teeth, z2: 2 * teeth, C: 0.3 });
    expect(number('z_mesh')).toBeCloseTo(teeth, 9);
    expect(number('k_mesh')).toBeCloseTo(share, 9);
  });

  test('pulleys that overlap are refused', () => {
    expect(() => worked(beltTension, { C: 0.042 })).toThrow(/overlap/);
  });
});
