import { expect, test } from 'vitest';
import { standardBelts } from '../../../calculators/belt-drives/standard-pitches.ts';

const belt = (code: string) => standardBelts.find((one) => one.code === code);

/** ISO 5296, pitch codes, as printed in millimetres. */
test.each([
  ['MXL', 2.032],
  ['XL', 5.08],
  ['L', 9.525],
  ['H', 12.7],
  ['XH', 22.225],
  ['XXH', 31.75],
])('the inch pitch of %s is %d mm', (code, printed) => {
  expect(Number(belt(code)?.pitch) * 1000).toBeCloseTo(printed, 9);
});

/** From memory: the cord lies outside by a whole number of half thousandths of an inch in the profiles that began in inches. */
test.each([
  ['H3M', 0.015],
  ['H5M', 0.0225],
  ['H8M', 0.027],
  ['H14M', 0.055],
  ['H20M', 0.085],
])('the cord of %s lies outside by %d in', (code, inches) => {
  expect(Math.abs(Number(belt(code)?.outside) - inches * 0.0254)).toBeLessThan(0.6e-6);
});
