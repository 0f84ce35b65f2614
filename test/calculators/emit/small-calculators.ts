import { defineCalculator, given, type Calculator } from '../../../calculators/calculator.ts';
import type { Values } from '../../../calculators/formula/evaluate.ts';

/** Calculators of our own invention, for what the catalogue may not have yet. */
const base = { edition: 1, module: 'wheel-kinematics', question: '', limits: [] } as const;

const length = given('y', 'length', 'length', '2 m', ['0.1 m', '10 m']);

/** A root whose formula adds up a list and steps named as the languages' own words. */
const root = defineCalculator({
  ...base,
  id: 'a-root',
  title: 'A root',
  given: [
    length,
    given('lambda', 'share', 'ratio', '0.5', ['0.1', '0.9']),
    given('parts', 'parts', 'length', '1, 2 m', ['0.1 m', '5 m'], { list: [1, 5] }),
  ],
  steps: [
    { name: 'gamma', means: 'the goal', quantity: 'area', unit: 'm^2', formula: 'y^2 * (2 + lambda)' },
    {
      name: 'x',
      means: 'the root',
      quantity: 'length',
      unit: 'm',
      solve: 'x^2 * (1 + lambda) + x * sum(parts) * lambda',
      equals: 'gamma',
      between: ['0 * y', '4 * y'],
    },
    { name: 'y1', means: 'what comes of it', quantity: 'length', unit: 'm', formula: 'x + lambda * y' },
  ],
  results: ['x', 'y1'],
});

/** Roots found through further steps: one number, and one a part. */
const rootBy = defineCalculator({
  ...base,
  id: 'a-root-by-steps',
  title: 'A root by steps',
  given: [
    length,
    given('goal', 'what is wanted', 'ratio', '0.7', ['0.1', '0.9']),
    given('parts', 'parts', 'ratio', '1, 2, 0.4', ['0.1', '5'], { list: [1, 5] }),
  ],
  steps: [
    { name: 'y_all', means: 'the other goal', quantity: 'area', unit: 'm^2', formula: 'goal * y^2' },
    {
      name: 'x',
      means: 'the root of each part',
      quantity: 'ratio',
      unit: '',
      solve: 'used',
      equals: 'goal',
      between: ['0', '9'],
      by: [
        { name: 'trial', means: 'a part of it', quantity: 'ratio', unit: '', formula: 'x + parts' },
        { name: 'wheel', means: 'another', quantity: 'ratio', unit: '', formula: 'x^2 * parts / trial' },
        { name: 'used', means: 'both', quantity: 'ratio', unit: '', formula: 'max(wheel, x / 2)' },
      ],
    },
    {
      name: 'side',
      means: 'the one root',
      quantity: 'length',
      unit: 'm',
      solve: 'area + y * side',
      equals: 'y_all',
      between: ['0 * y', '9 * y'],
      by: [{ name: 'area', means: 'its area', quantity: 'area', unit: 'm^2', formula: 'side^2 * (1 + sum(parts))' }],
    },
  ],
  results: ['x', 'used', 'side'],
});

/** A root that is outside its ends for some inputs. */
const noRoot = defineCalculator({
  ...base,
  id: 'no-root',
  title: 'A root that may be missing',
  given: [length, given('low', 'lower end', 'length', '1 m', ['0 m', '5 m'])],
  steps: [
    {
      name: 'x',
      means: 'the root',
      quantity: 'length',
      unit: 'm',
      solve: '2 * x',
      equals: 'y',
      between: ['low', 'low + 3 * y / y * y'],
    },
  ],
  results: ['x'],
});

/** Tables, by straight lines and by rows only, for a list and for one number. */
const table = defineCalculator({
  ...base,
  id: 'a-table',
  title: 'A table',
  given: [
    given('sizes', 'sizes', 'length', '1, 2.5 m', ['0.45 m', '5.1 m'], { list: [1, 4] }),
    given('int', 'size of the one', 'count', '3', ['1', '6'], { whole: true }),
  ],
  steps: [
    {
      name: 'force',
      means: 'force of each',
      quantity: 'force',
      unit: 'N',
      table: {
        title: 'Invented “forces”',
        source: 'none',
        place: 'nowhere',
        of: 'size',
        rows: [
          [0.5, 10],
          [1, 4],
          [2, 7],
          [5, -3],
        ],
        between: 'straight lines',
      },
      at: 'sizes * 1',
    },
    {
      name: 'number',
      means: 'number of the one',
      quantity: 'ratio',
      unit: '',
      table: {
        title: 'Invented numbers',
        source: 'none',
        place: 'nowhere',
        of: 'size',
        rows: [
          [1, 0.1],
          [3, 0.5],
          [4, 0.7],
          [5, 0.6],
          [6, 0.2],
        ],
        between: 'rows only',
      },
      at: 'int',
    },
  ],
  results: ['force', 'number'],
});

/** Two lists that must be of one length, one that counts to a third, and every function there is. */
const everything = defineCalculator({
  ...base,
  id: 'every-function',
  title: 'Every function',
  given: [
    given('a', 'first list', 'ratio', '0.3, -0.8, 0.5', ['-2', '2'], { list: [3, 3] }),
    given('b', 'second list', 'ratio', '1.5, 0.7, 0.2', ['0.1', '3'], { list: [3, 3] }),
    given('m', 'how many', 'count', '4', ['1', '6'], { whole: true }),
    given('static', 'a share', 'ratio', '0.4', ['-1', '1']),
  ],
  steps: [
    { name: 'sum', means: 'arithmetic', quantity: 'ratio', unit: '', formula: '-a^2 * b - (a - b) / (b + 2) + 2^-b' },
    { name: 'wheel', means: 'angles', quantity: 'angle', unit: 'rad', formula: 'atan2(a, b) + atan(a * b) + 30deg' },
    { name: 'arcs', means: 'arcs', quantity: 'angle', unit: 'rad', formula: 'asin(static) - acos(static) * pi' },
    { name: 'waves', means: 'waves', quantity: 'ratio', unit: '', formula: 'sin(wheel) * cos(a) - tan(b / 4)' },
    {
      name: 'roots',
      means: 'roots',
      quantity: 'ratio',
      unit: '',
      formula: 'sqrt(b) * exp(a) - ln(b) + b^1.5 - b^static',
    },
    {
      name: 'steps',
      means: 'jumps',
      quantity: 'ratio',
      unit: '',
      formula: 'floor(a * 3) + ceil(a * 3) * 10 + round(a * 3) * 100 + sign(a)',
    },
    { name: 'rest', means: 'remainder', quantity: 'ratio', unit: '', formula: 'mod(a * 5, b) - abs(a)' },
    {
      name: 'ends',
      means: 'ends',
      quantity: 'ratio',
      unit: '',
      formula: 'min(a, b) + max(a, b, static, 0.5) * min(a, static, b)',
    },
    {
      name: 'all',
      means: 'of all',
      quantity: 'ratio',
      unit: '',
      formula: 'sum(a) + 2 * max(b) - min(a) * count(b) + sum(steps)',
    },
    {
      name: 'logic',
      means: 'conditions',
      quantity: 'count',
      unit: '',
      formula: 'if(a > 0 and b < 1 or static >= 0.2, 1, 2) + (a <= b) - (a == b) * 3',
    },
    {
      name: 'odd',
      means: 'a number for a condition',
      quantity: 'count',
      unit: '',
      formula: 'if(mod(m, 2), (m > 2) + 5, (m > 2 or static > 0) == 1)',
    },
    { name: 'k', means: 'counting', quantity: 'count', unit: '', formula: 'upto(m) * 2 - 1' },
    { name: 'last', means: 'of the counting', quantity: 'count', unit: '', formula: 'max(k) + sum(k) + count(k)' },
    { name: 'unused', means: 'asked for by nothing', quantity: 'ratio', unit: '', formula: 'static * 2' },
  ],
  results: ['sum', 'wheel', 'arcs', 'waves', 'roots', 'steps', 'rest', 'ends', 'all', 'logic', 'odd', 'k', 'last'],
});

/** Comparisons and jumps that the dust of rounding must not tip. */
export const dust = defineCalculator({
  ...base,
  id: 'dust',
  title: 'Dust',
  given: [
    given('turned', 'angle', 'angle', '0 deg', ['-360 deg', '360 deg']),
    given('n', 'wheels', 'count', '4', ['3', '8'], { whole: true }),
    given('duty', 'share', 'ratio', '0.9', ['0', '1']),
  ],
  steps: [
    { name: 'i', means: 'number', quantity: 'count', unit: '', formula: 'upto(n)' },
    { name: 'at', means: 'place', quantity: 'angle', unit: 'deg', formula: 'turned + (i - 1) * 360deg / n' },
    {
      name: 'c',
      means: 'share',
      quantity: 'ratio',
      unit: '',
      formula: 'cos(turned) * sin(at) - sin(turned) * cos(at)',
    },
    { name: 'side', means: 'side', quantity: 'count', unit: '', formula: 'sign(c)' },
    { name: 'off', means: 'off', quantity: 'count', unit: '', formula: 'if(c == 0, 0, 1)' },
    { name: 'behind', means: 'behind', quantity: 'count', unit: '', formula: 'if(cos(at - turned) < 0, 1, 0)' },
    {
      name: 'before',
      means: 'share',
      quantity: 'ratio',
      unit: '',
      formula: 'cos(at) * sin(turned) - sin(at) * cos(turned)',
    },
    { name: 'twice', means: 'twice that', quantity: 'ratio', unit: '', formula: '2 * before' },
    { name: 'far', means: 'a step further on', quantity: 'count', unit: '', formula: 'if(twice == 0, 0, 1)' },
    { name: 'all', means: 'of all', quantity: 'ratio', unit: '', formula: 'sum(c)' },
    { name: 'none', means: 'cancelled', quantity: 'count', unit: '', formula: 'if(all >= 0 and all <= 0, 1, 0)' },
    { name: 'back', means: 'direction', quantity: 'angle', unit: 'deg', formula: 'atan2(all, -1)' },
    { name: 'forth', means: 'direction', quantity: 'angle', unit: 'deg', formula: 'atan2(c, c)' },
    { name: 'level', means: 'level', quantity: 'count', unit: '', formula: 'round(255 * duty)' },
    { name: 'tenths', means: 'tenths', quantity: 'count', unit: '', formula: 'floor(duty / 0.1)' },
    { name: 'rest', means: 'rest', quantity: 'ratio', unit: '', formula: 'mod(duty, 0.1)' },
  ],
  results: ['side', 'off', 'behind', 'far', 'none', 'back', 'forth', 'level', 'tenths', 'rest'],
});

/** Where its terms cancel: whole multiples of 45 degrees, and numbers of wheels that divide the circle alike. */
export const dustPoints: readonly Values[] = [3, 4, 6, 8].flatMap((n) =>
  Array.from({ length: 17 }, (_, k): Values => ({ n, turned: ((k - 8) * Math.PI) / 4, duty: (k % 10) / 10 })),
);

export const smallCalculators: readonly Calculator[] = [root, rootBy, noRoot, table, everything];
