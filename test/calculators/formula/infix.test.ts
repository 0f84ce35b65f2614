import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { infix, plainDialect, type Dialect } from '../../../calculators/formula/infix.ts';
import { parse } from '../../../calculators/formula/parse.ts';
import { anyTree, randomTree } from './random-trees.ts';

/** Formula strings as authors write them; the plain dialect of printed lines has ° for deg. */
const written: Dialect = {
  ...plainDialect((name) => name),
  number: (value, unit) => (unit === 'deg' ? `${value} deg` : String(value)),
};

test('what is written reads back as the same tree', () => {
  fc.assert(
    fc.property(randomTree(anyTree), (tree) => {
      expect(parse(infix(tree, written))).toEqual(tree);
    }),
    { numRuns: 3000 },
  );
});

describe('no parentheses more than needed', () => {
  test.each([
    ['((x)) + (y * z)', 'x + y * z'],
    ['(x + y) * z', '(x + y) * z'],
    ['x - (y - z)', 'x - (y - z)'],
    ['(x - y) - z', 'x - y - z'],
    ['x / (y * z)', 'x / (y * z)'],
    ['(-x)^2', '(-x) ^ 2'],
    ['-(x^2)', '-x ^ 2'],
    ['x^(y^z)', 'x ^ y ^ z'],
    ['(x^y)^z', '(x ^ y) ^ z'],
    ['x * -y', 'x * (-y)'],
    ['-x * y', '-x * y'],
    ['(x and y) or z', 'x and y or z'],
    ['x and (y or z)', 'x and (y or z)'],
    ['if((x > 0), (-y), z)', 'if(x > 0, -y, z)'],
  ])('%s', (formula, wanted) => {
    expect(infix(parse(formula), written)).toBe(wanted);
  });
});

describe('numbers in the place of names', () => {
  const put = (formula: string, numbers: Readonly<Record<string, string>>): string =>
    infix(
      parse(formula),
      plainDialect((name, bare) => (bare ? (numbers[name] ?? name) : `<${numbers[name] ?? name}>`)),
    );

  test('a place is bare only where a leading minus sign changes nothing', () => {
    expect(put('x - y', { x: '1', y: '2' })).toBe('1 - <2>');
    expect(put('x^2', { x: '1' })).toBe('<1> ^ 2');
    expect(put('2^x', { x: '1' })).toBe('2 ^ <1>');
    expect(put('-x', { x: '1' })).toBe('-<1>');
    expect(put('sin(x) * (y + 1)', { x: '1', y: '2' })).toBe('sin(1) * (2 + 1)');
    expect(put('max(x, y)', { x: '1', y: '2' })).toBe('max(1, 2)');
  });

  test('degrees have their sign', () => {
    expect(put('x + 360deg', { x: '60°' })).toBe('60° + 360°');
  });

  test('pi stays a word', () => {
    expect(put('x * pi', { x: '1' })).toBe('1 * <pi>');
  });

  test('a language without a sign for powers', () => {
    const other: Dialect = {
      ...written,
      instead: (node) =>
        node.kind === 'operate' && node.op === '^'
          ? `pow(${infix(node.left, other)}, ${infix(node.right, other)})`
          : undefined,
    };
    expect(infix(parse('-(x + 1)^(y - 2) * 3'), other)).toBe('-pow(x + 1, y - 2) * 3');
  });
});
