import { expect, test } from 'vitest';
import { failed, holds, note, table, under } from './table.ts';

test('a budget is passed below it only', () => {
  expect(under('a', 11.99, 12, ' kB')).toEqual({ what: 'a', measured: '12.0 kB', budget: '< 12 kB', passes: true });
  expect(under('a', 12, 12, ' kB').passes).toBe(false);
});

test('what is not a number fails its budget', () => {
  expect(under('a', NaN, 12, ' kB').passes).toBe(false);
});

test('what must hold says what differs', () => {
  expect(holds('a', undefined)).toMatchObject({ measured: 'yes', passes: true });
  expect(holds('a', 'differs')).toMatchObject({ measured: 'differs', passes: false });
});

test('only broken budgets fail; what has none does not', () => {
  const broken = under('b', 2, 1, '');
  expect(failed([under('a', 1, 2, ''), broken, note('c', 'long')])).toEqual([broken]);
});

test('a table has a line for each, in columns', () => {
  expect(table([under('long name', 1, 2, ' s'), note('b', '3'), under('c', 3, 2, ' s')]).split('\n')).toEqual([
    'what       measured  budget',
    'long name  1.0 s     < 2 s   pass',
    'b          3',
    'c          3.0 s     < 2 s   FAIL',
  ]);
});
