import { describe, expect, test } from 'vitest';
import { defineCalculator, given, type Calculator } from '../../../calculators/calculator.ts';
import { asC } from '../../../calculators/emit/c.ts';
import { asPython } from '../../../calculators/emit/python.ts';
import { listLengths } from '../../../calculators/emit/list-lengths.ts';
import { usualEntries } from '../../../calculators/inputs.ts';

const n = given('n', 'how many', 'count', '3', ['1', '7'], { whole: true });
const a = given('a', 'list', 'ratio', '1, 2', ['0', '9'], { list: [1, 5] });
const b = given('b', 'list', 'ratio', '1, 2', ['0', '9'], { list: [2, 6] });

function calculatorWith(formulas: Readonly<Record<string, string>>): Calculator {
  return defineCalculator({
    id: 'lists',
    edition: 1,
    module: 'wheel-kinematics',
    title: '',
    question: '',
    given: [n, a, b],
    steps: Object.entries(formulas).map(([name, formula]) => ({
      name,
      formula,
      means: name,
      quantity: 'ratio' as const,
      unit: '',
    })),
    results: Object.keys(formulas),
    limits: [],
  });
}

const lengths = (formulas: Readonly<Record<string, string>>) => listLengths(calculatorWith(formulas));

describe('which lists are of one length', () => {
  test('a list and what is made of it', () => {
    const found = lengths({ x: 'a * 2', y: 'sin(x) + n' });
    expect(found.get('y')).toBe(found.get('a'));
    expect(found.get('a')).not.toBe(found.get('b'));
    expect(found.get('y')).toMatchObject({ most: 5, sources: [{ kind: 'given', name: 'a' }] });
  });

  test('counting up to how long a list is, by whatever name', () => {
    const found = lengths({ k: 'count(a)', m: 'k', i: 'upto(m)', j: 'i + a' });
    expect(found.get('j')).toBe(found.get('a'));
    expect(found.get('i')?.sources).toHaveLength(1);
  });

  test('counting twice up to one given', () => {
    const found = lengths({ i: 'upto(n)', j: 'upto(n) * 2', k: 'i + j' });
    expect(found.get('i')).toBe(found.get('k'));
    expect(found.get('k')).toMatchObject({ most: 7, sources: [{ kind: 'upto', step: 'i' }] });
  });

  test('lists that are combined, from two sources', () => {
    const found = lengths({ i: 'upto(n)', j: 'i + b', k: 'j * a' });
    expect(found.get('i')).toBe(found.get('a'));
    expect(found.get('k')?.sources.map((one) => (one.kind === 'given' ? one.name : one.step))).toEqual(['b', 'a', 'i']);
    expect(found.get('k')?.most).toBe(7);
  });

  test('a sum closes its list', () => {
    const found = lengths({ t: 'sum(a)', i: 'upto(4) * t' });
    expect(found.get('i')).toMatchObject({ most: 4, lists: ['i'] });
  });

  test('a length without bound is the author’s mistake', () => {
    expect(() => lengths({ i: 'upto(n * 2)' })).toThrow('unbounded list');
  });
});

describe('lengths that must agree are compared', () => {
  const calculator = calculatorWith({ i: 'upto(n)', j: 'i + b', k: 'j * a' });
  const entries = usualEntries(calculator.given);

  test('in C', () => {
    const text = asC(calculator, entries, '');
    expect(text).toContain('const int wheels = given->b_count;');
    expect(text).toContain('if (!(given->a_count == wheels)) {');
    expect(text).toContain('if (!((int)n == wheels)) {');
    expect(text).toContain('float k[7];');
  });

  test('in Python', () => {
    const text = asPython(calculator, entries, '');
    expect(text).toContain('wheels = len(b)');
    expect(text).toContain('if not (len(a) == wheels):');
    expect(text).toContain('if not (int(n) == wheels):');
  });

  test('lists of two lengths have a variable each', () => {
    const text = asC(calculatorWith({ x: 'a * 2', y: 'b + n' }), entries, '');
    expect(text).toContain('int a_count; /* how many numbers each list holds */');
    expect(text).toContain('for (int wheel = 0; wheel < b_count; wheel++) {');
  });
});
