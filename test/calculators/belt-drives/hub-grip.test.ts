import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hubGrip } from '../../../calculators/belt-drives/hub-grip.ts';
import { worked } from '../wheel-kinematics/worked.ts';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

const fits = fc
  .record({
    d: between(0.003, 0.03),
    wall: between(1.3, 4),
    delta: between(5e-6, 1e-4),
    E_h: between(1e9, 2.1e11),
    nu_h: between(0, 0.45),
    E: between(5e10, 2.1e11),
    nu_s: between(0, 0.45),
  })
  .map(({ wall, ...fit }) => ({ ...fit, d_o: wall * fit.d }));

interface Ring {
  /** Displacement and hoop stress at the bore under a pressure of 1 in it. */
  readonly moves: number;
  readonly hoop: number;
}

/**
 * A thick ring pressed from inside, with u'' + u'/r − u/r² = 0 for the displacement, by finite differences in the radius
 * and the stress in the radius given at both edges.
 */
function ringByDifferences(inside: number, outside: number, E: number, nu: number): Ring {
  const pieces = 4000;
  const h = (outside - inside) / pieces;
  const radius = (k: number): number => inside + k * h;
  const stiff = E / (1 - nu * nu);
  // Rows of [left, middle, right, load]; edges use a point beyond, put out of the row by the stress given there.
  const inner = (k: number): readonly [number, number, number] => {
    const r = radius(k);
    return [1 / h ** 2 - 1 / (2 * h * r), -2 / h ** 2 - 1 / r ** 2, 1 / h ** 2 + 1 / (2 * h * r)];
  };
  const edge = (k: number, pressure: number): readonly [number, number, number, number] => {
    const r = radius(k);
    const [left, middle, right] = inner(k);
    // u' = −pressure/stiff − ν u/r, so the point beyond is the one within, changed by twice that step.
    const [within, beyond, way] = k === 0 ? [right, left, -1] : [left, right, 1];
    const own = middle + beyond * way * 2 * h * (-nu / r);
    const load = -beyond * way * 2 * h * (-pressure / stiff);
    return k === 0 ? [0, own, within + beyond, load] : [within + beyond, own, 0, load];
  };
  const rows = Array.from({ length: pieces + 1 }, (_, k): readonly [number, number, number, number] => {
    if (k === 0) return edge(0, 1);
    if (k === pieces) return edge(pieces, 0);
    return [...inner(k), 0];
  });
  const moves = solvedFirst(rows);
  const slope = -1 / stiff - (nu * moves) / inside;
  return { moves, hoop: stiff * (moves / inside + nu * slope) };
}

/** The first unknown of a tridiagonal system: swept up from the last row. */
function solvedFirst(rows: readonly (readonly [number, number, number, number])[]): number {
  let [reach, load] = [0, 0];
  for (let k = rows.length - 1; k >= 0; k--) {
    const [left, middle, right, own] = rows[k] ?? [0, 1, 0, 0];
    const pivot = middle + right * reach;
    load = (own - right * load) / pivot;
    reach = -left / pivot;
  }
  return load;
}

test('hub and shaft of a press fit meet at the pressure printed', () => {
  fc.assert(
    fc.property(fits, ({ d, d_o, delta, E_h, nu_h, E, nu_s }) => {
      const { number } = worked(hubGrip, { d, d_o, delta, E_h, nu_h, E, nu_s, h_f: 0, dTheta: 0 });
      const hub = ringByDifferences(d / 2, d_o / 2, E_h, nu_h);
      // A solid shaft pressed all round has the same pressure everywhere inside.
      const shaft = ((1 - nu_s) * (d / 2)) / E;
      const pressure = delta / 2 / (hub.moves + shaft);
      expect(pressure / number('p_f')).toBeCloseTo(1, 4);
      expect((pressure * hub.hoop) / number('sigma_h')).toBeCloseTo(1, 4);
    }),
    { numRuns: 30 },
  );
});

test('friction summed round the bore holds the torque of a press fit', () => {
  fc.assert(
    fc.property(fits, between(0.05, 0.4), between(0.005, 0.05), (fit, mu, l_h) => {
      const { number } = worked(hubGrip, { ...fit, mu, l_h, h_f: 0, hold: 3 });
      const strips = 720;
      let torque = 0;
      for (let k = 0; k < strips; k++) {
        const area = ((Math.PI * fit.d) / strips) * l_h;
        torque += mu * number('p_f') * area * (fit.d / 2);
      }
      expect(torque / number('T_press')).toBeCloseTo(1, 9);
    }),
  );
});

test('warmth acts as a smaller interference does', () => {
  fc.assert(
    fc.property(fits, between(0, 60), (fit, dTheta) => {
      const expansion = { alpha_h: 68e-6, alpha_s: 12e-6 };
      const warm = worked(hubGrip, { ...fit, ...expansion, dTheta, h_f: 0 });
      const left = fit.delta - fit.d * (1 + 68e-6 * dTheta) + fit.d * (1 + 12e-6 * dTheta);
      if (left < 1e-7) {
        expect(warm.number('T_warm')).toBeLessThan(warm.number('T_press') * 0.03);
        return;
      }
      const loose = worked(hubGrip, { ...fit, delta: left, dTheta: 0, h_f: 0 });
      expect(warm.number('T_warm') / loose.number('T_press')).toBeCloseTo(1, 6);
    }),
  );
});

test('pressure summed over the half of the flat that bears', () => {
  fc.assert(
    fc.property(between(0.003, 0.03), between(0.01, 0.5), between(1e6, 1e8), (d, share, p_a) => {
      const h_f = share * d;
      const { number } = worked(hubGrip, { d, h_f, p_a, l_h: 0.012, d_o: 2 * d });
      // Where the circle of the shaft crosses the plane of the flat.
      const half = Math.sqrt((d / 2) ** 2 - (d / 2 - h_f) ** 2);
      const strips = 2000;
      let torque = 0;
      for (let k = 0; k < strips; k++) {
        const x = ((k + 0.5) * half) / strips;
        torque += p_a * (x / half) * x * (half / strips) * 0.012;
      }
      expect(torque / number('T_flat')).toBeCloseTo(1, 5);
    }),
  );
});

describe('set screws', () => {
  test('hold with the radius of the shaft and the force of the table', () => {
    const one = worked(hubGrip, { screws: 1, d_s: 0.164 * 0.0254, d: 0.01 });
    expect(one.number('F_screw') / (0.45359237 * 9.80665)).toBeCloseTo(385, 6);
    expect(worked(hubGrip, { screws: 1, d_s: 0.164 * 0.0254, d: 0.02 }).number('T_screws')).toBeCloseTo(
      2 * one.number('T_screws'),
      9,
    );
  });

  test('each further one adds its share of the first', () => {
    const held = (screws: number): number => worked(hubGrip, { screws, add_s: 0.3, d: 0.01 }).number('T_screws');
    const alone = worked(hubGrip, {}).number('F_screw') * 0.005;
    expect([1, 2, 4].map((screws) => held(screws) / alone)).toEqual([
      expect.closeTo(1, 9),
      expect.closeTo(1.3, 9),
      expect.closeTo(1.9, 9),
    ]);
  });

  test('a thicker one never holds less', () => {
    fc.assert(
      fc.property(between(0.0016, 0.0126), between(0.0016, 0.0126), (a, b) => {
        const force = (d_s: number): number => worked(hubGrip, { d_s }).number('F_screw');
        expect(force(Math.max(a, b))).toBeGreaterThanOrEqual(force(Math.min(a, b)));
      }),
    );
  });
});

test('the way chosen is the one that counts', () => {
  const held = (hold: number) => worked(hubGrip, { hold });
  expect(held(1).number('T_held')).toBe(held(1).number('T_screws'));
  expect(held(2).number('T_held')).toBe(held(1).number('T_flat'));
  expect(held(3).number('T_held')).toBe(held(1).number('T_warm'));
});

test('a hub of steel on a shaft of aluminium grips harder when warm, and is stressed more', () => {
  const { number } = worked(hubGrip, { hold: 3, alpha_h: 12e-6, alpha_s: 23e-6, dTheta: 50 });
  expect(number('T_warm')).toBeGreaterThan(number('T_press'));
  expect(number('T_held')).toBe(number('T_press'));
  expect(number('sigma_h')).toBeGreaterThan(number('k_o') * number('p_f'));
});

// Figures derived by hand for a printed hub; Young’s modulus, friction and length are chosen to go with them.
test('a printed hub of 6 and 16 mm with 20 µm', () => {
  const { number } = worked(hubGrip, { hold: 3, d: 0.006, d_o: 0.016, delta: 20e-6, l_h: 0.01, mu: 0.15, T: 0.4 });
  expect(number('p_f') / 1e6).toBeCloseTo(4.9, 1);
  expect(number('T_press')).toBeCloseTo(0.42, 2);
  expect(number('lost')).toBeCloseTo(1 / 3, 2);
});

test('what cannot be is refused in words', () => {
  expect(() => worked(hubGrip, { T: 0 })).toThrow('above 0 N m');
  expect(() => worked(hubGrip, { d_o: 0.008 })).toThrow('no wall');
  expect(() => worked(hubGrip, { h_f: 0.0041 })).toThrow('deeper than the middle');
});
