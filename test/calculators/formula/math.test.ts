import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { acos, add, asin, ceil, cos, floor, mod, round, sin, sumOf, tan } from '../../../calculators/formula/math.ts';

const degrees = (x: number): number => (x * Math.PI) / 180;

describe('dust is not a number', () => {
  test.each([
    ['sin 180°', sin(Math.PI)],
    ['sin 360°', sin(2 * Math.PI)],
    ['sin −3600°', sin(degrees(-3600))],
    ['cos 90°', cos(Math.PI / 2)],
    ['cos −270°', cos(degrees(-270))],
    ['tan 180°', tan(Math.PI)],
    ['0.1 + 0.2 − 0.3', add(add(0.1, 0.2), -0.3)],
    ['three wheels', sumOf([0.6, 0.6 * Math.cos(degrees(120)), 0.6 * Math.cos(degrees(240))])],
    ['an empty sum', sumOf([])],
  ])('%s is 0', (_, value) => {
    expect(value + 0).toBe(0);
  });

  test('what is infinite does not vanish', () => {
    expect(Math.abs(tan(Math.PI / 2))).toBe(Infinity);
    expect(add(1, Infinity)).toBe(Infinity);
    expect(add(-Infinity, 1)).toBe(-Infinity);
    expect(sumOf([1, Infinity])).toBe(Infinity);
    expect(add(Infinity, -Infinity)).toBeNaN();
  });
});

describe('what is small but real stays', () => {
  test.each([
    ['a small sine', sin(1e-13), 1e-13],
    ['a small sum', add(1e-13, 1e-13), 2e-13],
    ['a small difference', add(1 + 1e-11, -1), 1e-11],
  ])('%s', (_, value, wanted) => {
    expect(value / wanted).toBeCloseTo(1, 3);
  });

  test('elsewhere it is ordinary arithmetic', () => {
    const number = fc.double({ min: -1e3, max: 1e3, noNaN: true });
    fc.assert(
      fc.property(number, number, (a, b) => {
        expect(Math.abs(add(a, b) - (a + b))).toBeLessThanOrEqual(1e-12 * Math.max(Math.abs(a), Math.abs(b)));
        expect(Math.abs(sin(a) - Math.sin(a))).toBeLessThanOrEqual(1e-12 * Math.max(1, Math.abs(a)));
        expect(Math.abs(cos(a) - Math.cos(a))).toBeLessThanOrEqual(1e-12 * Math.max(1, Math.abs(a)));
      }),
    );
  });
});

describe('whole numbers missed by a hair', () => {
  test.each([
    ['round a half', round(229.49999999999997), 230],
    ['round a half below 0', round(-229.50000000000003), -229],
    ['round down', round(229.4999), 229],
    ['floor', floor(0.3 / 0.1), 3],
    ['floor further off', floor(2.9999), 2],
    ['ceil', ceil((0.1 + 0.2) * 10), 3],
    ['ceil further off', ceil(3.0001), 4],
    ['mod', mod(0.3, 0.1), 0],
    ['mod of a turn', mod(-90, 360), 270],
    ['mod of a negative turn', mod(90, -360), -270],
  ])('%s', (_, value, wanted) => {
    expect(value).toBe(wanted);
  });
});

describe('arcs', () => {
  test('a hair above 1 is 1', () => {
    expect(asin(1 + 1e-15)).toBe(Math.PI / 2);
    expect(asin(-1 - 1e-15)).toBe(-Math.PI / 2);
    expect(acos(1 + 4e-16)).toBe(0);
    expect(acos(-1 - 4e-16)).toBe(Math.PI);
  });

  test('more than a hair is not', () => {
    expect(asin(1.1)).toBeNaN();
    expect(acos(-1 - 1e-9)).toBeNaN();
  });
});
