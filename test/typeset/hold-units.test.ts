import { expect, test } from 'vitest';
import { parseEntry } from '../../calculators/quantity/parse.ts';
import { holdUnits } from '../../src/typeset/hold-units.ts';

test.each([
  ['a sill of 8 mm high', 'a sill of 8\u00a0mm high'],
  ['1.4 N·m at 2 m/s² and 30 %', '1.4\u00a0N·m at 2\u00a0m/s² and 30\u00a0%'],
  ['3 more, 2 mmm, 4 sills', '3 more, 2 mmm, 4 sills'],
])('“%s”: a number keeps its unit, a word is free', (text, held) => {
  expect(holdUnits(text)).toBe(held);
});

test('an input reads the same with it', () => {
  expect(parseEntry(holdUnits('2.6 N m'), 'torque', 'N m')).toEqual(parseEntry('2.6 N m', 'torque', 'N m'));
});
