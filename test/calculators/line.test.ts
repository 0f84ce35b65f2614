import { describe, expect, test } from 'vitest';
import { defineCalculator, given, type Calculator, type CalculatorSource } from '../../calculators/calculator.ts';
import { readInputs } from '../../calculators/inputs.ts';
import { planLines, printValue } from '../../calculators/line.ts';
import type { QuantityName } from '../../calculators/quantity/units.ts';
import { substituted, work } from '../../calculators/work.ts';

const givens = [
  given('a', 'length a', 'length', '60 mm', ['0 mm', '10 m']),
  given('b', 'length b', 'length', '35 mm', ['-1 m', '10 m']),
  given('v', 'speed', 'velocity', '0.6 m/s', ['0 m/s', '10 m/s']),
  given('t', 'angle', 'angle', '30 deg', ['-360 deg', '360 deg']),
  given('p', 'share', 'ratio', '20 %', ['0 %', '100 %']),
  given('u', 'lengths', 'length', '10, -20, 30 mm', ['-1 m', '1 m'], { list: [3, 8] }),
];

type Source = Pick<CalculatorSource['steps'][number], 'quantity' | 'unit'> & { readonly formula: string };

const define = (...steps: readonly (Source & { readonly name?: string })[]): Calculator =>
  defineCalculator({
    id: 'small',
    edition: 1,
    module: 'motors',
    title: 'Small',
    question: 'What?',
    given: givens,
    steps: steps.map((step, k) => ({ name: `x${k}`, means: 'x', ...step })),
    results: [],
    limits: [],
  });

/** The printed rows of the last step, as a reader sees them. */
function lines(calculator: Calculator, texts: Readonly<Record<string, string>> = {}): string[] {
  const read = readInputs(calculator.given, texts);
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join('\n'));
  const worked = work(calculator, read.entries);
  if (!worked.ok) throw new Error(worked.refused.message);
  const last = worked.working.steps.at(-1);
  if (!last?.line) throw new Error('no line');
  const { line } = last;
  return last.rows.map((row) => {
    const converted = row.converted === undefined ? '' : ` = ${row.converted}`;
    return `${substituted(line, row)} = ${row.result}${converted}`;
  });
}

describe('in which units a line stands', () => {
  test.each<[string, QuantityName, string, string]>([
    ['a + b', 'length', 'mm', '60 + 35 = 95 mm'],
    ['2 * (a - b)', 'length', 'mm', '2 * (60 - 35) = 50 mm'],
    ['a + b', 'length', 'm', '0.06 + 0.035 = 0.095 m'],
    ['sqrt(a^2 - b^2)', 'length', 'mm', 'sqrt(60 ^ 2 - 35 ^ 2) = 48.73 mm'],
    ['v / a', 'angular velocity', 'rad/s', '0.6 / 0.06 = 10 rad/s'],
    ['v / a', 'angular velocity', 'rpm', '0.6 / 0.06 = 10 rad/s = 95.49 rpm'],
    ['a * sin(t)', 'length', 'mm', '60 * sin(30°) = 30 mm'],
    ['t + 90deg', 'angle', 'deg', '30° + 90° = 120°'],
    ['asin(b / a)', 'angle', 'deg', 'asin(35 / 60) = 35.69°'],
    ['a * t', 'length', 'mm', '60 * 0.5236 = 31.42 mm'],
    ['p * a', 'length', 'mm', '0.2 * 0.06 = 0.012 m = 12 mm'],
    ['p + 0.5', 'ratio', '', '0.2 + 0.5 = 0.7'],
    ['2 * p', 'ratio', '%', '2 * 20 = 40 %'],
    ['if(a > b, a, b)', 'length', 'mm', 'if(60 > 35, 60, 35) = 60 mm'],
    ['b / a', 'ratio', '%', '0.035 / 0.06 = 0.5833 = 58.33 %'],
  ])('%s in %s %s', (formula, quantity, unit, wanted) => {
    expect(lines(define({ formula, quantity, unit }))).toEqual([wanted]);
  });

  test.each<[string, QuantityName, string, string, string]>([
    ['if(p > 0.5, a, b)', 'length', 'mm', '20 %', 'if(0.2 > 0.5, 0.06, 0.035) = 0.035 m = 35 mm'],
    ['if(p > 0.5, a, b)', 'length', 'mm', '60 %', 'if(0.6 > 0.5, 0.06, 0.035) = 0.06 m = 60 mm'],
    ['if(a > 0, 2 * p, 1)', 'ratio', '%', '20 %', 'if(0.06 > 0, 2 * 0.2, 1) = 0.4 = 40 %'],
    ['max(0.01, p)', 'ratio', '%', '20 %', 'max(0.01, 0.2) = 0.2 = 20 %'],
    ['max(2, p)', 'ratio', '%', '20 %', 'max(2, 0.2) = 2 = 200 %'],
  ])('%s is true whichever way it goes', (formula, quantity, unit, p, wanted) => {
    expect(lines(define({ formula, quantity, unit }), { p })).toEqual([wanted]);
  });

  test('a line that holds in no units is the author’s mistake', () => {
    const unlike = define({ formula: 'a', quantity: 'velocity', unit: 'm/s' });
    expect(planLines(unlike).size).toBe(1);
    const two = define({ formula: 'u - sum(u)', quantity: 'length', unit: 'mm' });
    expect(() => planLines(two)).toThrow(
      'invalid line: u stands in it in two ways: make one of them a step of its own',
    );
    const both = define({ formula: 'sum(u) / count(u)', quantity: 'length', unit: 'mm' });
    expect(() => planLines(both)).toThrow('invalid line: u stands in it in two ways');
  });
});

describe('how numbers are put in', () => {
  test('with as many digits as it takes', () => {
    const third = define(
      { formula: 'a / 7', quantity: 'length', unit: 'mm' },
      { formula: '1000 * x0 - 142 * a', quantity: 'length', unit: 'mm' },
    );
    expect(lines(third)).toEqual(['1000 * 8.57143 - 142 * 60 = 51.43 mm']);
  });

  test('as typed', () => {
    const sum = define({ formula: 'a + b', quantity: 'length', unit: 'mm' });
    expect(lines(sum, { a: '12.345678 mm', b: '2 in' })).toEqual(['12.345678 + 50.8 = 63.15 mm']);
  });

  test('held together where a sign or a power of ten would read otherwise', () => {
    const difference = define({ formula: 'a - b', quantity: 'length', unit: 'mm' });
    expect(lines(difference, { b: '-20 mm' })).toEqual(['60 - (−20) = 80 mm']);
    const product = define({ formula: 'a * b^2 / a^2', quantity: 'length', unit: 'mm' });
    expect(lines(product, { b: '-0.00002 mm' })).toEqual(['60 * (−2 · 10⁻⁵) ^ 2 / 60 ^ 2 = 6.667 · 10⁻¹² mm']);
  });

  test('a line for each wheel', () => {
    expect(lines(define({ formula: 'u + a', quantity: 'length', unit: 'mm' }))).toEqual([
      '10 + 60 = 70 mm',
      '−20 + 60 = 40 mm',
      '30 + 60 = 90 mm',
    ]);
  });

  test('a list that is closed stands whole', () => {
    expect(lines(define({ formula: 'sum(u) + a', quantity: 'length', unit: 'mm' }))).toEqual([
      'sum(10 − 20 + 30) + 60 = 80 mm',
    ]);
    expect(lines(define({ formula: 'max(u)', quantity: 'length', unit: 'mm' }))).toEqual(['max(10, −20, 30) = 30 mm']);
    expect(lines(define({ formula: 'count(u)', quantity: 'count', unit: '' }))).toEqual(['count(10, −20, 30) = 3']);
  });
});

describe('a value', () => {
  test.each<[number | number[], QuantityName, string, string]>([
    [0.06, 'length', 'mm', '60 mm'],
    [Math.PI / 3, 'angle', 'deg', '60°'],
    [[1, -2.34567], 'velocity', 'm/s', '1, −2.346 m/s'],
    [0.5, 'ratio', '%', '50 %'],
  ])('%j as %s in %s', (value, quantity, unit, wanted) => {
    expect(printValue(value, quantity, unit)).toBe(wanted);
  });
});
