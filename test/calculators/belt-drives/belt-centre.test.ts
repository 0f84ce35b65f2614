import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { beltCentre } from '../../../calculators/belt-drives/belt-centre.ts';
import { beltLength } from '../../../calculators/belt-drives/belt-length.ts';
import { toValues, usualEntries } from '../../../calculators/inputs.ts';
import { solve } from '../../../calculators/solve.ts';
import { worked } from '../wheel-kinematics/worked.ts';
import { supportLength } from './hull.ts';

const p = 0.005;

/** Belts of any length above the shortest. */
const belts = fc
  .record({
    z1: fc.integer({ min: 10, max: 90 }),
    z2: fc.integer({ min: 10, max: 90 }),
    more: fc.integer({ min: 1, max: 300 }),
  })
  .map(({ z1, z2, more }) => {
    const touching = supportLength((p * z1) / Math.PI, (p * z2) / Math.PI, (p * (z1 + z2)) / (2 * Math.PI), 20_000);
    return { p, z1, z2, z_b: Math.ceil(touching / p) + more };
  });

describe('the centre distance', () => {
  test('stretches the hull of the pulleys to the length of the belt', () => {
    fc.assert(
      fc.property(belts, (belt) => {
        const { number } = worked(beltCentre, belt);
        const length = supportLength(number('D1'), number('D2'), number('C'), 50_000);
        expect(Math.abs(length / (belt.z_b * p) - 1)).toBeLessThan(1e-7);
      }),
      { numRuns: 30 },
    );
  });

  test('gives back the belt it was found for', () => {
    fc.assert(
      fc.property(belts, ({ z_b, ...drive }) => {
        const C = worked(beltCentre, { ...drive, z_b }).number('C');
        const back = worked(beltLength, { ...drive, C });
        expect(back.number('z_L')).toBeCloseTo(z_b, 9);
        expect(back.number('z_b')).toBe(z_b);
      }),
      { numRuns: 50 },
    );
  });

  test('of the closed formula is exact for alike pulleys', () => {
    const { number } = worked(beltCentre, { p, z1: 20, z2: 20, z_b: 100 });
    expect(number('C')).toBeCloseTo((80 * p) / 2, 12);
    expect(number('C_about')).toBeCloseTo(number('C'), 12);
  });

  test('of the closed formula is never too small, and hardly off when the shafts are far apart', () => {
    fc.assert(
      fc.property(belts, (belt) => {
        const { number } = worked(beltCentre, belt);
        expect(number('dC_about')).toBeGreaterThan(-1e-9);
        const lean = Math.abs(number('phi_b'));
        expect(number('dC_about') / number('C')).toBeLessThan(lean ** 4 / 2 + 1e-9);
      }),
      { numRuns: 60 },
    );
  });
});

test('a thin shim takes up what the hull grows by', () => {
  fc.assert(
    fc.property(belts, (belt) => {
      const shim = 1e-4;
      const { number } = worked(beltCentre, { ...belt, shim });
      const [D1, D2, C] = [number('D1'), number('D2'), number('C')];
      const grown = supportLength(D1, D2, C + shim) - supportLength(D1, D2, C);
      expect(Math.abs(grown / number('take') - 1)).toBeLessThan(0.01);
    }),
    { numRuns: 15 },
  );
});

test('a belt too short for its pulleys is refused', () => {
  const usual = toValues(beltCentre.given, usualEntries(beltCentre.given));
  expect(solve(beltCentre, { ...usual, z_b: 45 }).refusal?.given).toBe('z_b');
  expect(solve(beltCentre, { ...usual, z_b: 46 }).refusal).toBeUndefined();
});
