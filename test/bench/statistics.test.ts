import { describe, expect, test } from 'vitest';
import { median, percentile } from './statistics.ts';

const upTo = (n: number): number[] => Array.from({ length: n }, (_, k) => k + 1);

describe('a percentile', () => {
  test.each([
    [upTo(100), 0.95, 95],
    [upTo(100), 0.5, 50],
    [upTo(20), 0.95, 19],
    [upTo(5), 0.95, 5],
    [[7], 0.95, 7],
    [upTo(5), 0, 1],
    [upTo(5), 1, 5],
  ])('of %j at %d is %d', (values, share, expected) => {
    expect(percentile(values, share)).toBe(expected);
  });

  test('does not depend on the order, which it leaves as it is', () => {
    const values = [30, 4, 100, 5];
    expect(percentile(values, 0.75)).toBe(30);
    expect(values).toEqual([30, 4, 100, 5]);
  });

  test('of nothing is an error', () => {
    expect(() => percentile([], 0.5)).toThrow('nothing');
  });
});

test('the median of five is the third', () => {
  expect(median([9, 1, 8, 2, 5])).toBe(5);
});
