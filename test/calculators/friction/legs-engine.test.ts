import { expect, test } from 'vitest';
import { compareLoads, compareTipping } from './legs-laws.ts';

test.each([
  [0, 0],
  [200, 75],
])('loads on three wheels on a slope and speeding up: heading %f°, uphill at %f°', (theta, up) => {
  compareLoads({ x: 0.1, y: -0.05, z: 0.6, acc: 1, theta, slope: 5, up });
});

test.each([0, 60, 110])('three wheels tip where the calculator says, speeding up at %f°', (theta) => {
  compareTipping({ x: 0.05, y: 0, z: 0.6, theta });
});

test('the engine tells a load from a wrong one', () => {
  expect(() => compareLoads({ x: 0.1, y: 0, z: 0.6, acc: 1, theta: 0, slope: 5, up: 0 }, { z: 0.66 })).toThrow();
});
