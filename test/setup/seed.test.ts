import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seedFrom } from './seed.ts';

describe('the seed of property tests', () => {
  test('is fixed without SEED', () => {
    expect(seedFrom({})).toBe(seedFrom({ SEED: '' }));
  });

  test('is that of SEED', () => {
    expect(seedFrom({ SEED: '-7' })).toBe(-7);
  });

  test.each(['seven', '1.5', 'NaN', '1e99'])('SEED=%s is refused', (seed) => {
    expect(() => seedFrom({ SEED: seed })).toThrow(RangeError);
  });

  test('is the one that fast-check uses, and a failure prints it', () => {
    const seed = seedFrom(process.env);
    expect(fc.readConfigureGlobal().seed).toBe(seed);
    const failing = () => {
      fc.assert(fc.property(fc.integer(), () => false));
    };
    expect(failing).toThrow(`seed: ${seed}`);
  });
});
