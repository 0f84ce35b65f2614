import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { contactPatch } from '../../../calculators/friction/contact-patch.ts';
import { rollingLoss } from '../../../calculators/friction/rolling-loss.ts';
import { tiltTest } from '../../../calculators/friction/tilt-test.ts';
import { traction } from '../../../calculators/friction/traction.ts';
import { degree, worked } from '../wheel-kinematics/worked.ts';
import { between } from '../evenly.ts';

describe('tilt-test', () => {
  test('both ways to measure one board agree', () => {
    fc.assert(
      fc.property(between(0.02, 1.2), between(0.2, 3), (angle, board) => {
        const rise = board * Math.sin(angle);
        const along = worked(tiltTest, { rise, board, measured: 1 });
        const floor = worked(tiltTest, { rise, board: board * Math.cos(angle), measured: 2 });
        expect(along.number('mu_tilt')).toBeCloseTo(Math.tan(angle), 9);
        expect(floor.number('mu_tilt')).toBeCloseTo(Math.tan(angle), 9);
        expect(along.number('angle_slip')).toBeCloseTo(angle, 9);
      }),
    );
  });

  test('a whole robot with locked wheels reads what the grip of three wheels allows', () => {
    const grip = (theta: number): number =>
      Math.tan(worked(traction, { mu: 0.6, z: 0, theta: theta * degree }).number('slope_slip'));
    const mu = worked(tiltTest, { rise: 0.6, board: 1, measured: 2, F_pull: 6, F_sled: 10 });
    expect(mu.number('mu_worst')).toBeCloseTo(grip(90), 10);
    expect(mu.number('mu_best')).toBeCloseTo(grip(0), 10);
  });
});

describe('rolling-loss', () => {
  test('by direct addition', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 8 }),
        between(-3, 3),
        between(0, 0.1),
        between(0, 0.1),
        (n, theta, C_w, C_r) => {
          let force = 0;
          for (let k = 0; k < n; k++) {
            const angle = theta - (2 * Math.PI * k) / n;
            force += (9 * 9.80665 * (C_w * Math.abs(Math.sin(angle)) + C_r * Math.abs(Math.cos(angle)))) / n;
          }
          const result = worked(rollingLoss, { n, alpha: 0, theta, C_w, C_r, slope: 0, m: 9 });
          expect(result.number('F_roll')).toBeCloseTo(force, 9);
        },
      ),
    );
  });

  test('the power is the energy of a second', () => {
    const result = worked(rollingLoss, { slope: 0, v: 0.6, s: 0.6 });
    expect(result.number('E_roll')).toBeCloseTo(result.number('P_all'), 12);
  });
});

/** Elliptic integrals of the first and second kind with the square of the modulus, by the arithmetic-geometric mean. */
function elliptic(square: number): { K: number; E: number } {
  let [a, b] = [1, Math.sqrt(1 - square)];
  let [sum, power] = [square, 1];
  while (Math.abs(a - b) > 1e-15) {
    const c = (a - b) / 2;
    [a, b] = [(a + b) / 2, Math.sqrt(a * b)];
    power *= 2;
    sum += power * c * c;
  }
  const K = Math.PI / (2 * a);
  return { K, E: K * (1 - sum / 2) };
}

/** The exact ratio of the ellipse for radii in a ratio, by bisection of the equation of Hertz. */
function exactEllipse(ratio: number): { k: number; K: number; E: number } {
  let [low, high] = [1, 1e4];
  for (let round = 0; round < 200; round++) {
    const k = Math.sqrt(low * high);
    const { K, E } = elliptic(1 - 1 / k ** 2);
    const reached = k === 1 ? 1 : (k ** 2 * E - K) / (K - E);
    if (reached < ratio) low = k;
    else high = k;
  }
  const k = Math.sqrt(low * high);
  return { k, ...elliptic(1 - 1 / k ** 2) };
}

describe('contact-patch', () => {
  test('a ball: the closed theory of a round patch', () => {
    fc.assert(
      fc.property(between(0.005, 0.2), between(1, 500), between(1e8, 1e11), (r, F_n, E) => {
        const result = worked(contactPatch, { r1: r, r2: r, F_n, E1: E, nu1: 0.3, E2: 1e12, nu2: 0.3 });
        const star = 1 / (0.91 / E + 0.91 / 1e12);
        const a = Math.cbrt((3 * F_n * r) / (4 * star));
        expect(result.number('d_long') / (2 * a)).toBeCloseTo(1, 9);
        expect(result.number('d_short') / (2 * a)).toBeCloseTo(1, 9);
        expect(result.number('sink') / (a ** 2 / r)).toBeCloseTo(1, 9);
        expect(result.number('p_peak') / ((3 * F_n) / (2 * Math.PI * a ** 2))).toBeCloseTo(1, 9);
      }),
    );
  });

  test.each([1.5, 3, 7.5, 20])('radii %f to one: within 4 % of the exact integrals', (ratio) => {
    const [r1, r2, F_n] = [0.008, 0.008 * ratio, 30];
    const result = worked(contactPatch, { r1, r2, F_n });
    const { k, K, E } = exactEllipse(ratio);
    const r_c = (r1 * r2) / (r1 + r2);
    const E_c = result.number('E_c');
    const long = 2 * Math.cbrt((6 * k ** 2 * E * F_n * r_c) / (Math.PI * E_c));
    const sink = K * Math.cbrt((9 / (2 * E * r_c)) * (F_n / (Math.PI * k * E_c)) ** 2);
    expect(Math.abs(result.number('d_long') / long - 1)).toBeLessThan(0.04);
    expect(Math.abs(result.number('d_short') / (long / k) - 1)).toBeLessThan(0.04);
    expect(Math.abs(result.number('sink') / sink - 1)).toBeLessThan(0.04);
  });
});
