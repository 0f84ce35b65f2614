import { describe, expect, test } from 'vitest';
import { given } from '../../calculators/calculator.ts';
import { parse } from '../../calculators/formula/parse.ts';
import { fromQuery, toQuery } from '../../calculators/permalink.ts';
import { parseEntry } from '../../calculators/quantity/parse.ts';

const calculator = {
  edition: 2,
  given: [
    given('v', 'speed', 'velocity', '0.6 m/s', ['0 m/s', '10 m/s']),
    given('T', 'torque', 'torque', '12 kgf cm', ['0 N m', '100 N m']),
    given('u', 'wheel speeds', 'velocity', '1, -2, 3 m/s', ['-10 m/s', '10 m/s'], { list: [3, 8] }),
    given('floor', 'kind of floor', 'ratio', '1', ['1', '2'], { options: { 'thick carpet': 1, 'α & β': 2 } }),
  ],
  steps: [
    {
      kind: 'formula',
      name: 'M',
      means: 'torque',
      quantity: 'torque',
      unit: 'N m',
      formula: 'T',
      tree: parse('T'),
      list: false,
    },
    {
      kind: 'formula',
      name: 'w',
      means: 'speed',
      quantity: 'velocity',
      unit: 'm/s',
      formula: 'v',
      tree: parse('v'),
      list: false,
    },
  ],
  results: ['M'],
} satisfies Parameters<typeof toQuery>[0];

const read = (query: string) => fromQuery(calculator, new URLSearchParams(query));

test('a link holds every given, in its unit', () => {
  const query = toQuery(calculator, { v: { value: 2.5, unit: 'km/h' }, floor: { value: 2, unit: '' } });
  expect(query).toBe('edition=2&v=2.5km/h&T=12kgf.cm&u=1,-2,3m/s&floor=%CE%B1%20%26%20%CE%B2');
  expect(read(query)).toEqual({
    texts: { v: '2.5km/h', T: '12kgf.cm', u: '1,-2,3m/s', floor: 'α & β' },
    units: {},
    problems: [],
  });
});

test('the unit chosen for a result comes along', () => {
  const query = toQuery(calculator, {}, { M: 'kgf cm' });
  expect(query).toMatch(/&M=kgf\.cm$/);
  expect(read(query)).toMatchObject({ units: { M: 'kgf cm' }, problems: [] });
});

test('a unit that begins with a figure stands apart from its number', () => {
  const expansion = given('k', 'expansion', 'temperature coefficient', '12 ppm/K', ['0 1/K', '1 1/K']);
  const one = { edition: 1, given: [expansion], steps: [], results: [] };
  const query = toQuery(one, { k: { value: 5, unit: '1/K' } });
  const { texts } = fromQuery(one, new URLSearchParams(query));
  expect(parseEntry(texts['k'] ?? '', 'temperature coefficient', 'ppm/K')).toEqual({
    ok: true,
    entry: { value: 5, unit: '1/K' },
  });
});

test('a ± comes along', () => {
  const query = toQuery(calculator, {
    v: { value: 2.5, unit: 'm/s', spread: 0.1 },
    u: { value: [1, 2, 3], unit: 'm/s', spread: [0.1, 0, 0.2] },
  });
  expect(read(query).texts).toMatchObject({ v: '2.5±0.1m/s', u: '1±0.1,2±0,3±0.2m/s' });
});

describe('what is wrong with a link', () => {
  test.each([
    ['edition=2', []],
    ['', []],
    ['edition=1', [expect.stringContaining('was made for edition “1” of this calculator and this is edition 2')]],
    ['edition=', [expect.stringContaining('was made for edition “”')]],
    ['speed=3', ['The link gives “speed”, which this calculator does not take.']],
    ['__proto__=3', ['The link gives “__proto__”, which this calculator does not take.']],
    ['constructor=3', ['The link gives “constructor”, which this calculator does not take.']],
    ['M=furlongs', ['The link asks for M in “furlongs”, which is no unit of it.']],
    ['M=N.m&M=N.cm', ['The link gives M more than once; the first is used.']],
    ['w=mm/s', ['The link gives “w”, which this calculator does not take.']],
    ['v=1m/s&v=2m/s', ['The link gives v more than once; the first is used.']],
  ])('“%s”', (query, problems) => {
    expect(read(query).problems).toEqual(problems);
  });

  test('what can be read of it is read', () => {
    expect(read('v=1m/s&v=2m/s&w=3&constructor=4').texts).toEqual({ v: '1m/s' });
  });
});
