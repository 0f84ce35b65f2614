import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evaluate, evaluateNumber, type Value, type Values } from '../../../calculators/formula/evaluate.ts';
import { parse } from '../../../calculators/formula/parse.ts';

const value = (formula: string, values: Values = {}): Value => evaluate(parse(formula), values);

describe('arithmetic', () => {
  test.each<[string, number]>([
    ['-2^2', -4],
    ['(-2)^2', 4],
    ['2^3^2', 512],
    ['2^-1', 0.5],
    ['7 - 3 - 2', 2],
    ['8 / 4 / 2', 1],
    ['2 + 3 * 4', 14],
    ['-2 * 3', -6],
    ['pi', Math.PI],
    ['abs(-3)', 3],
    ['sign(-3)', -1],
    ['sign(0)', 0],
    ['round(2.5)', 3],
    ['floor(-2.5)', -3],
    ['ceil(2.1)', 3],
    ['mod(7, 3)', 1],
    ['mod(-1, 3)', 2],
    ['min(3, 1, 2)', 1],
    ['max(3, 1, 2, 4)', 4],
    ['sqrt(9)', 3],
    ['exp(0)', 1],
    ['ln(exp(2))', 2],
    ['sin(30deg)', 0.5],
    ['cos(60deg)', 0.5],
    ['tan(45deg)', 1],
    ['asin(1)', Math.PI / 2],
    ['acos(0)', Math.PI / 2],
    ['atan(1)', Math.PI / 4],
    ['atan2(1, -1)', (3 * Math.PI) / 4],
    ['180deg', Math.PI],
  ])('%s', (formula, wanted) => {
    expect(value(formula)).toBeCloseTo(wanted, 12);
  });

  test.each<[string, number]>([
    ['1 < 2', 1],
    ['2 < 2', 0],
    ['2 <= 2', 1],
    ['3 > 2', 1],
    ['2 >= 3', 0],
    ['2 == 2', 1],
    ['1 == 2', 0],
    ['1 and 0', 0],
    ['2 and 3', 1],
    ['0 or 3', 1],
    ['0 or 0', 0],
    ['if(1 > 0, 5, 6)', 5],
    ['if(1 < 0, 5, 6)', 6],
  ])('%s', (formula, wanted) => {
    expect(value(formula)).toBe(wanted);
  });

  test('dust of rounding is measured by the largest term of a sum, however it is bracketed', () => {
    const values = { a: 5e-7, x: 833 / 3, y: 833 / 7 };
    expect(value('a - (x + y - (x - (a - y)))', values)).toBe(0);
    expect(value('-(x - y) + x - y', values)).toBe(0);
    expect(value('x + a - x', values)).toBeCloseTo(5e-7, 12);
  });

  test('what has no value is not a number, or infinite', () => {
    expect(value('sqrt(-1)')).toBeNaN();
    expect(value('asin(1.1)')).toBeNaN();
    expect(value('1 / 0')).toBe(Infinity);
    expect(value('1 + 1 / 0')).toBe(Infinity);
    expect(value('0 / 0')).toBeNaN();
  });
});

describe('names', () => {
  test('a name without a value is the author’s mistake', () => {
    expect(() => value('x + 1')).toThrow('missing value: x');
  });

  test.each(['constructor', 'toString', 'valueOf'])('%s is no value by itself', (name) => {
    expect(() => value(name)).toThrow(`missing value: ${name}`);
    expect(value(name, { [name]: 3 })).toBe(3);
  });

  test('a value named pi comes before the number', () => {
    expect(value('2 * pi', { pi: 3 })).toBe(6);
  });
});

describe('lists', () => {
  const lists = { u: [1, -2, 4], w: [1, 2, 3], k: 2 };

  test.each<[string, Value]>([
    ['u + k', [3, 0, 6]],
    ['k - u', [1, 4, -2]],
    ['u * w', [1, -4, 12]],
    ['-u', [-1, 2, -4]],
    ['u^2', [1, 4, 16]],
    ['abs(u)', [1, 2, 4]],
    ['if(u > 0, u, 0)', [1, 0, 4]],
    ['max(u, 0)', [1, 0, 4]],
    ['max(u, w)', [1, 2, 4]],
    ['upto(3)', [1, 2, 3]],
    ['upto(k) * 10', [10, 20]],
    ['sum(u)', 3],
    ['count(u)', 3],
    ['min(u)', -2],
    ['max(u)', 4],
    ['sum(u) / count(u)', 1],
  ])('%s', (formula, wanted) => {
    expect(value(formula, lists)).toEqual(wanted);
  });

  test('lists of unequal length do not mix', () => {
    expect(() => value('u + w', { u: [1, 2, 3], w: [1, 2] })).toThrow('invalid lists: lengths 3 and 2 differ');
    expect(() => value('max(u, w)', { u: [1], w: [1, 2] })).toThrow('invalid lists: lengths 1 and 2 differ');
    expect(() => value('if(u > 0, w, 0)', { u: [1, 2], w: [] })).toThrow('invalid lists');
  });

  test('sum and count take a list, min and max either', () => {
    expect(() => value('sum(x)', { x: 3 })).toThrow('invalid argument: sum takes a list');
    expect(() => value('count(x)', { x: 3 })).toThrow('invalid argument: count takes a list');
    expect(value('max(x)', { x: 3 })).toBe(3);
    expect(value('min(x)', { x: 3 })).toBe(3);
  });

  test('one number is wanted', () => {
    expect(() => evaluateNumber(parse('u + 1'), lists)).toThrow('invalid value: a list where one number is wanted');
    expect(evaluateNumber(parse('sum(u) + 1'), lists)).toBe(4);
  });

  test('wheel by wheel it is the formula of one wheel', () => {
    const formula = parse('if(x > y, x * sin(y), x - y^2) + k / (1 + abs(x))');
    const number = fc.double({ min: -10, max: 10, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(number, number), { maxLength: 8 }), number, (pairs, k) => {
        const together = evaluate(formula, { x: pairs.map(([a]) => a), y: pairs.map(([, b]) => b), k });
        expect(together).toEqual(pairs.map(([a, b]) => evaluate(formula, { x: a, y: b, k })));
      }),
    );
  });
});

describe('degrees', () => {
  const inDegrees = (formula: string, values: Values = {}): Value => evaluate(parse(formula), values, 'deg');

  test.each<[string, number]>([
    ['sin(90)', 1],
    ['cos(60deg)', 0.5],
    ['tan(45)', 1],
    ['asin(1)', 90],
    ['acos(0.5)', 60],
    ['atan(1)', 45],
    ['atan2(-1, 0)', -90],
    ['90deg + 30', 120],
    ['sqrt(9)', 3],
  ])('%s', (formula, wanted) => {
    expect(inDegrees(formula)).toBeCloseTo(wanted, 12);
  });

  test.each([
    'sin(t)',
    'cos(t - 120deg)',
    'tan(t / 3)',
    'acos(cos(t)) + 90deg',
    'atan2(sin(t), cos(t)) - t',
    'if(t > 30deg, t, 2 * t)',
    'abs(t - 45deg)',
  ])('%s: degrees in and out are radians in and out', (formula) => {
    const ofAngle = !/^(sin|cos|tan)/.test(formula);
    const degree = Math.PI / 180;
    fc.assert(
      fc.property(fc.double({ min: -360, max: 360, noNaN: true }), (t) => {
        const rad = evaluateNumber(parse(formula), { t: t * degree });
        const deg = evaluateNumber(parse(formula), { t }, 'deg');
        fc.pre(Math.abs(rad) < 1e6);
        expect(deg * (ofAngle ? degree : 1)).toBeCloseTo(rad, 7);
      }),
    );
  });
});
