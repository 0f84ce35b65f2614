import { describe, test } from 'vitest';
import { compareLoads, compareTipping } from '../calculators/friction/legs-laws.ts';

const round = Array.from({ length: 24 }, (_, k) => 15 * k);

describe('loads on three wheels, uphill and speeding up', () => {
  test.each(round)('heading %f°', (theta) => {
    for (const up of [0, 80, 200]) {
      compareLoads({ x: 0.1, y: -0.05, z: 0.6, acc: 1, theta, slope: 5, up });
    }
  });
});

describe('three wheels tip, speeding up', () => {
  test.each(round)('heading %f°', (theta) => {
    for (const z of [0.3, 0.6, 1.2]) compareTipping({ x: 0.05, y: 0.1, z, theta });
  });
});
