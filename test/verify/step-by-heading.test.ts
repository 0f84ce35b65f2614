import { describe, expect, test } from 'vitest';
import { stepByHeading } from '../../calculators/step-climbing/step-by-heading.ts';
import { fine, getsOver } from '../calculators/step-climbing/wheel-engine.ts';
import { firstToGive } from '../calculators/step-climbing/vector-statics.ts';
import { degree, worked } from '../calculators/wheel-kinematics/worked.ts';

/** The engine is flat: see the shorter test for what that lets it check. */
const off = 0.03;
const r = 0.06;
const strong = { alpha: 0, r, q: r, x: 0, y: 0, m: 9, g: 10, T_w: 1000 };

describe.each([0.2, 0.3, 0.4, 0.5, 0.6])('short time steps, grip %f', (mu) => {
  test('a driven wheel that faces the step', () => {
    const said = worked(stepByHeading, { ...strong, mu, R: 0.2, theta: 30 * degree });
    const h = (said.list('h_i')[1] ?? NaN) / r;
    const trial = { push: 0, mu, driven: true };
    expect(getsOver({ ...trial, h: h * (1 + off) }, fine)).toBe(false);
    expect(getsOver({ ...trial, h: h * (1 - off) }, fine)).toBe(true);
  });

  test('a leading wheel pushed by two far behind', () => {
    const said = worked(stepByHeading, { ...strong, mu, R: 1e4 * r, theta: 0 });
    const h = (said.list('h_i')[0] ?? NaN) / r;
    const trial = { push: Math.sqrt(3) * mu, mu, driven: false };
    expect(getsOver({ ...trial, h: h * (1 + off) }, fine)).toBe(false);
    expect(getsOver({ ...trial, h: h * (1 - off) }, fine)).toBe(true);
  });
});

const headings = Array.from({ length: 25 }, (_, k) => 15 * k - 180);
const sizes = [1, 0.5, 0.25, 0.1];
const grips = [0.2, 0.5, 0.8];
const grid = sizes.flatMap((size) => grips.map((mu): [number, number] => [size, mu]));

describe.each(grid)('roller %f of the wheel, grip %f', (size, mu) => {
  test.each(headings)('statics in vectors give way first where it is said: heading %i°', (angle) => {
    for (const [x, y, T_w] of [
      [0, 0, 1000],
      [0.04, -0.02, 1000],
      [-0.05, 0.03, 1],
    ] as const) {
      const robot = { ...strong, q: size * r, mu, R: 0.2, theta: angle * degree, x, y, T_w };
      const said = worked(stepByHeading, robot).list('psi_i');
      [0, 1, 2].forEach((wheel) => {
        const found = firstToGive({ ...robot, W: 90 }, wheel, 65 * degree, 260);
        expect(Math.abs((said[wheel] ?? NaN) - found)).toBeLessThan(1e-9);
      });
    }
  });
});
