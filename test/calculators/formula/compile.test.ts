import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compile, needsList } from '../../../calculators/formula/compile.ts';
import { evaluateNumber } from '../../../calculators/formula/evaluate.ts';
import { parse } from '../../../calculators/formula/parse.ts';

const names = ['a', 'b', 'c'];
const formulas = [
  'a + b - (c - 2 * a) - -b',
  '-(a - b - c)',
  'a^2 / (1 + abs(b)) - pi * c',
  'sin(a + 30deg) * cos(b) - tan(c / 4) + atan(a) - atan2(b, c)',
  'if(a < b and b <= c or c == a, max(a, b, c, 0.1), min(a, b))',
  'asin(a / 9) + acos(b / 9) + sqrt(abs(c)) + exp(a) + ln(1 + abs(b))',
  'round(a * 3) + floor(b * 3) + ceil(c * 3) + mod(a, 1.5) + sign(b)',
];

test.each(formulas)('made ready, %s gives what it gives', (formula) => {
  const tree = parse(formula, new Set(names));
  const run = compile(tree, (name) => names.indexOf(name));
  const number = fc.double({ min: -8, max: 8, noNaN: true });
  fc.assert(
    fc.property(number, number, number, (a, b, c) => {
      expect(run([a, b, c])).toBe(evaluateNumber(tree, { a, b, c }));
    }),
  );
});

test('what asks for a whole list is told apart', () => {
  const asks = (formula: string): boolean => needsList(parse(formula, new Set(names)));
  expect(asks('1 + sum(a)')).toBe(true);
  expect(asks('max(a)')).toBe(true);
  expect(asks('upto(3)')).toBe(true);
  expect(asks('max(a, b)')).toBe(false);
});
