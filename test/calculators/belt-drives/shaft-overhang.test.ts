import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shaftOverhang } from '../../../calculators/belt-drives/shaft-overhang.ts';
import { degree, worked } from '../wheel-kinematics/worked.ts';

interface Vector {
  readonly x: number;
  readonly y: number;
}

/** A load across the shaft, at a distance from the inner bearing. */
interface Load {
  readonly at: number;
  readonly force: Vector;
}

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
/** Where arrows nearly cancel, what is left has the rounding of all of them. */
function expectSame(ours: number, theirs: number, whole: number, share = 1e-9): void {
  expect(Math.abs(ours - theirs) / whole).toBeLessThan(share);
}

const size = ({ x, y }: Vector): number => Math.hypot(x, y);

const shafts = fc
  .record({
    F1: between(1, 500),
    a1: between(0.002, 0.1),
    beyond: between(0, 0.1),
    F2: between(1, 500),
    psi: between(-175, 175),
    L_b: between(0.02, 0.3),
    d: between(0.003, 0.02),
    E: between(2e9, 2.1e11),
    T: between(0, 10),
  })
  .map(({ beyond, psi, ...shaft }) => ({ ...shaft, a2: shaft.a1 + beyond, psi: psi * degree }));

type Shaft = typeof shafts extends fc.Arbitrary<infer One> ? One : never;

const loadsOf = ({ F1, a1, F2, a2, psi, L_b }: Shaft): readonly Load[] => [
  { at: L_b + a1, force: { x: F1, y: 0 } },
  { at: L_b + a2, force: { x: F2 * Math.cos(psi), y: F2 * Math.sin(psi) } },
];

/** Both bearings’ forces on the shaft, from two balances of moments in each plane. */
function bearings(loads: readonly Load[], span: number): readonly Load[] {
  const about = (pivot: number, axis: 'x' | 'y'): number =>
    loads.reduce((sum, { at, force }) => sum + (at - pivot) * force[axis], 0);
  const outer = { x: -about(0, 'x') / span, y: -about(0, 'y') / span };
  const inner = { x: about(span, 'x') / span, y: about(span, 'y') / span };
  return [
    { at: 0, force: inner },
    { at: span, force: outer },
  ];
}

/** Bending moment at a place, from all that acts to the left of it. */
const momentAt = (z: number, acting: readonly Load[], axis: 'x' | 'y'): number =>
  acting.reduce((sum, { at, force }) => sum + Math.max(0, z - at) * force[axis], 0);

interface Bent {
  readonly deflection: number;
  readonly slope: number;
}

/** The curvature M/EI summed twice along the shaft, piece by piece, and tilted so that both bearings stay where they are. */
function bentLine(acting: readonly Load[], span: number, end: number, stiffness: number, axis: 'x' | 'y'): Bent {
  const pieces = 400;
  const places = [0, span, ...acting.map(({ at }) => at), end].filter((z) => z <= end).sort((a, b) => a - b);
  let [z, slope, deflection, atOuter] = [0, 0, 0, 0];
  for (const stop of places) {
    const h = (stop - z) / pieces;
    for (let k = 0; k < pieces; k++) {
      const curvature = (share: number): number => momentAt(z + share * h, acting, axis) / stiffness;
      deflection += slope * h + ((curvature(0) + 2 * curvature(0.5)) * h * h) / 6;
      slope += ((curvature(0) + 4 * curvature(0.5) + curvature(1)) * h) / 6;
      z += h;
    }
    z = stop;
    if (stop === span) atOuter = deflection;
  }
  const tilt = atOuter / span;
  return { deflection: deflection - tilt * end, slope: slope - tilt };
}

test('the bearings hold the shaft in balance', () => {
  fc.assert(
    fc.property(shafts, (shaft) => {
      const { number } = worked(shaftOverhang, shaft);
      const [inner, outer] = bearings(loadsOf(shaft), shaft.L_b);
      if (!inner || !outer) throw new Error('a bearing is missing');
      expectSame(number('R_in'), size(inner.force), (number('M1') + number('M2')) / shaft.L_b);
      expectSame(number('R_out'), size(outer.force), number('P1') + number('P2'));
    }),
  );
});

test('the moment at the outer bearing and at load 1 is as printed, and nowhere is it larger', () => {
  fc.assert(
    fc.property(shafts, between(0, 1), (shaft, share) => {
      const { number } = worked(shaftOverhang, shaft);
      const acting = [...bearings(loadsOf(shaft), shaft.L_b), ...loadsOf(shaft)];
      const moment = (z: number): number => size({ x: momentAt(z, acting, 'x'), y: momentAt(z, acting, 'y') });
      const whole = number('M1') + number('M2');
      expectSame(number('M_b'), moment(shaft.L_b), whole);
      expectSame(number('M_left'), moment(shaft.L_b + shaft.a1), whole);
      expect(moment(share * (shaft.L_b + shaft.a2))).toBeLessThanOrEqual(number('M_max') + 1e-9 * whole);
    }),
  );
});

test('deflection and slope are those of the curvature, summed up in both planes', () => {
  fc.assert(
    fc.property(shafts, (shaft) => {
      const { number } = worked(shaftOverhang, shaft);
      const acting = [...bearings(loadsOf(shaft), shaft.L_b), ...loadsOf(shaft)];
      const stiffness = (shaft.E * Math.PI * (shaft.d / 2) ** 4) / 4;
      const line = (axis: 'x' | 'y'): Bent => bentLine(acting, shaft.L_b, shaft.L_b + shaft.a2, stiffness, axis);
      const [x, y] = [line('x'), line('y')];
      const whole = (of: string): number => number(`${of}_1`) + number(`${of}_2`);
      expectSame(number('sag'), size({ x: x.deflection, y: y.deflection }), whole('sag'), 1e-8);
      expectSame(number('tilt'), size({ x: x.slope, y: y.slope }), whole('slope'), 1e-8);
    }),
    { numRuns: 30 },
  );
});

test('stresses are those of fibres summed over a round section', () => {
  const rings = 400;
  fc.assert(
    fc.property(shafts, (shaft) => {
      const { number } = worked(shaftOverhang, shaft);
      const radius = shaft.d / 2;
      let polar = 0;
      for (let k = 0; k < rings; k++) polar += 2 * Math.PI * ((k + 0.5) * (radius / rings)) ** 3 * (radius / rings);
      // A round section has half of it about any diameter.
      expect((number('M_max') * radius) / (polar / 2) / number('sigma_b')).toBeCloseTo(1, 4);
      if (shaft.T > 0.01) expect((shaft.T * radius) / polar / number('tau_s')).toBeCloseTo(1, 4);
    }),
  );
});

test('both stresses in one are those of the principal stresses, and the margins go with them', () => {
  fc.assert(
    fc.property(shafts, between(1e8, 1e9), between(5e7, 5e8), between(1, 3), (shaft, S_y, S_e, K_f) => {
      const { number } = worked(shaftOverhang, { ...shaft, S_y, S_e, K_f });
      const [half, radius] = [number('sigma_b') / 2, Math.hypot(number('sigma_b') / 2, number('tau_s'))];
      const [first, second] = [half + radius, half - radius];
      const distorting = Math.sqrt((first ** 2 + second ** 2 + (first - second) ** 2) / 2);
      expect(number('sigma_v') / distorting).toBeCloseTo(1, 7);
      expect(number('margin_y') * distorting).toBeCloseTo(S_y, -2);
      expect(number('margin_f') * number('sigma_b') * K_f).toBeCloseTo(S_e, -2);
    }),
  );
});

describe('at its limits', () => {
  test('with bearings far apart the shaft bends mostly between them', () => {
    const far = worked(shaftOverhang, { F1: 0, L_b: 5 });
    const near = worked(shaftOverhang, { F1: 0, L_b: 0.05 });
    expect(far.number('M_b')).toBe(near.number('M_b'));
    expect(far.number('sag')).toBeGreaterThan(50 * near.number('sag'));
    expect(far.number('R_in')).toBeCloseTo(near.number('R_in') / 100, 9);
  });

  test('loads at one place add as one load', () => {
    const one = worked(shaftOverhang, { F1: 0, F2: 100, a2: 0.03 });
    const two = worked(shaftOverhang, { F1: 60, a1: 0.03, F2: 80, a2: 0.03, psi: 90 * degree });
    for (const name of ['M_b', 'R_in', 'R_out', 'sag', 'tilt']) {
      expect(two.number(name) / one.number(name)).toBeCloseTo(1, 9);
    }
  });

  test('loads that cancel, or none, are refused in words', () => {
    expect(() => worked(shaftOverhang, { F1: 0, F2: 0 })).toThrow('Nothing bends the shaft');
    const against = { F1: 80, a1: 0.03, F2: 80, a2: 0.03, psi: 180 * degree };
    expect(() => worked(shaftOverhang, against)).toThrow('Nothing bends the shaft');
    expect(() => worked(shaftOverhang, { a1: 0.05, a2: 0.04 })).toThrow('the one further out');
  });

  test('loads that pull against each other bend it most at load 1', () => {
    const { number } = worked(shaftOverhang, { F1: 80, a1: 0.03, F2: 60, a2: 0.04, psi: 180 * degree });
    expect(number('M_b')).toBe(0);
    expect(number('M_max')).toBeCloseTo(0.6, 12);
    expect(number('R_in')).toBe(0);
  });

  test('twice as thick has eight times the margin on fatigue and a sixteenth of the deflection', () => {
    const thin = worked(shaftOverhang, { d: 0.008 });
    const thick = worked(shaftOverhang, { d: 0.016 });
    expect(thick.number('margin_f') / thin.number('margin_f')).toBeCloseTo(8, 9);
    expect(thin.number('sag') / thick.number('sag')).toBeCloseTo(16, 9);
  });
});
