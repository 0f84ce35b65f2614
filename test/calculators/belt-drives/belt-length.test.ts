import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { beltLength } from '../../../calculators/belt-drives/belt-length.ts';
import { toValues, usualEntries } from '../../../calculators/inputs.ts';
import { solve } from '../../../calculators/solve.ts';
import { worked } from '../wheel-kinematics/worked.ts';
import { measuredBelt, supportLength } from './hull.ts';

const pitch = 0.005;

/** Pulleys of all sizes, either one the larger, from nearly touching to far apart. */
const drives = fc
  .record({
    p: fc.constantFrom(0.002, 0.00508, 0.008),
    z1: fc.integer({ min: 10, max: 90 }),
    z2: fc.integer({ min: 10, max: 90 }),
    apart: fc.double({ min: 1.01, max: 8, noNaN: true }),
  })
  .map(({ p, z1, z2, apart }) => ({ p, z1, z2, C: (apart * p * (z1 + z2)) / (2 * Math.PI) }));

describe('an open belt', () => {
  test('has the length of the hull of its pulleys, and its span', () => {
    fc.assert(
      fc.property(drives, (drive) => {
        const { number } = worked(beltLength, drive);
        const measured = measuredBelt(number('D1'), number('D2'), drive.C);
        expect(Math.abs(measured.length / number('L_open') - 1)).toBeLessThan(1e-6);
        expect(Math.abs(measured.span / number('span') - 1)).toBeLessThan(2e-3);
      }),
      { numRuns: 40 },
    );
  });

  test('has the length of the integral of its reach in all directions', () => {
    fc.assert(
      fc.property(drives, (drive) => {
        const { number } = worked(beltLength, drive);
        const length = supportLength(number('D1'), number('D2'), drive.C);
        expect(Math.abs(length / number('L_open') - 1)).toBeLessThan(1e-8);
      }),
      { numRuns: 20 },
    );
  });

  test('of whole teeth fits the centre distance it asks for', () => {
    fc.assert(
      fc.property(drives, (drive) => {
        const { number } = worked(beltLength, drive);
        const length = supportLength(number('D1'), number('D2'), number('C_b'), 50_000);
        expect(Math.abs(length / (number('z_b') * drive.p) - 1)).toBeLessThan(1e-7);
        expect(number('C_b')).toBeGreaterThan(number('C_touch'));
      }),
      { numRuns: 20 },
    );
  });

  test('is the same with the pulleys exchanged', () => {
    fc.assert(
      fc.property(drives, (drive) => {
        const one = worked(beltLength, drive);
        const other = worked(beltLength, { ...drive, z1: drive.z2, z2: drive.z1 });
        expect(other.number('L_open') / one.number('L_open')).toBeCloseTo(1, 12);
        expect(other.number('wrap_2')).toBeCloseTo(one.number('wrap_1'), 12);
        expect(other.number('z_mesh')).toBeCloseTo(one.number('z_mesh'), 9);
        expect(other.number('ratio_z') * one.number('ratio_z')).toBeCloseTo(1, 12);
      }),
    );
  });

  test('is wrapped once round by both pulleys together', () => {
    fc.assert(
      fc.property(drives, (drive) => {
        const { number } = worked(beltLength, drive);
        expect(number('wrap_1') + number('wrap_2')).toBeCloseTo(2 * Math.PI, 12);
      }),
    );
  });

  test('has the nearest whole number of teeth when the pulleys do not nearly touch', () => {
    const { number } = worked(beltLength, {});
    expect(Math.abs(number('z_b') - number('z_L'))).toBeLessThanOrEqual(0.5);
  });
});

test('round alike pulleys it is twice the centre distance and one circumference', () => {
  const { number } = worked(beltLength, { z1: 24, z2: 24, C: 0.2 });
  expect(number('L_open')).toBeCloseTo(0.4 + 24 * pitch, 12);
  expect(number('wrap_1')).toBeCloseTo(Math.PI, 12);
  expect(number('z_whole')).toBe(12);
});

test('pulleys that touch or overlap are refused, with the least distance', () => {
  const usual = toValues(beltLength.given, usualEntries(beltLength.given));
  const touch = (pitch * (18 + 36)) / (2 * Math.PI);
  for (const C of [touch * 0.1, touch * 0.999]) {
    const { refusal } = solve(beltLength, { ...usual, C });
    expect(refusal?.given).toBe('C');
    expect(refusal?.says).toContain('{C_touch in mm}');
  }
  expect(solve(beltLength, { ...usual, C: touch * 1.0001 }).refusal).toBeUndefined();
});
