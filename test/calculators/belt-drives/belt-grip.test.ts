import fc from 'fast-check';
import { expect, test } from 'vitest';
import { beltGrip } from '../../../calculators/belt-drives/belt-grip.ts';
import { worked } from '../wheel-kinematics/worked.ts';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

const ropes = fc.record({ wrap: between(0.1, 20), mu: between(0.02, 1), F_s: between(0.1, 200) });

/** dT = μ T dθ by the rule of Runge and Kutta. */
function integrated(wrap: number, mu: number, slack: number): number {
  const steps = 2000;
  const h = wrap / steps;
  let T = slack;
  for (let k = 0; k < steps; k++) {
    const a = mu * T;
    const b = mu * (T + (h / 2) * a);
    const c = mu * (T + (h / 2) * b);
    const d = mu * (T + h * c);
    T += (h / 6) * (a + 2 * b + 2 * c + d);
  }
  return T;
}

/** A rope over the corners of a post: at each, forces along and square to the middle of the bend are in balance. */
function overCorners(wrap: number, mu: number, slack: number): number {
  const corners = 20_000;
  const half = wrap / corners / 2;
  const grown = (Math.cos(half) + mu * Math.sin(half)) / (Math.cos(half) - mu * Math.sin(half));
  let T = slack;
  for (let k = 0; k < corners; k++) T *= grown;
  return T;
}

test('the pull grown bit by bit round the post', () => {
  fc.assert(
    fc.property(ropes, ({ wrap, mu, F_s }) => {
      const held = worked(beltGrip, { wrap, mu, F_s }).number('F_held');
      expect(Math.abs(integrated(wrap, mu, F_s) / held - 1)).toBeLessThan(1e-8);
      expect(Math.abs(overCorners(wrap, mu, F_s) / held - 1)).toBeLessThan(1e-4);
    }),
    { numRuns: 40 },
  );
});

test('the wrap it asks for holds the pull wanted, and so does the slack side it asks for', () => {
  fc.assert(
    fc.property(ropes, between(1.01, 50), ({ wrap, mu, F_s }, ratio) => {
      const F_t = ratio * F_s;
      const { number } = worked(beltGrip, { wrap, mu, F_s, F_t });
      expect(integrated(number('wrap_need'), mu, F_s) / F_t).toBeCloseTo(1, 7);
      expect(integrated(wrap, mu, number('F_s_need')) / F_t).toBeCloseTo(1, 7);
    }),
    { numRuns: 40 },
  );
});

test('its pretension lies halfway between the sides, as a share of their difference', () => {
  fc.assert(
    fc.property(ropes, ({ wrap, mu, F_s }) => {
      const { number } = worked(beltGrip, { wrap, mu, F_s });
      const share = (number('F_held') + F_s) / 2 / number('F_grip');
      expect(number('pre_smooth') / share).toBeCloseTo(1, 9);
      expect(number('pre_smooth')).toBeGreaterThan(0.5);
    }),
  );
});

test('two wraps one after the other multiply', () => {
  const grip = (wrap: number): number => worked(beltGrip, { wrap, mu: 0.25 }).number('k_grip');
  expect(grip(2.5)).toBeCloseTo(grip(1) * grip(1.5), 12);
});

test('a pull below that of the slack side needs no wrap at all', () => {
  expect(worked(beltGrip, { F_s: 50, F_t: 20 }).number('wrap_need')).toBe(0);
});
