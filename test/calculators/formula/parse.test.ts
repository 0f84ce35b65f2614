import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FormulaError, parse } from '../../../calculators/formula/parse.ts';
import type { Operator, Tree } from '../../../calculators/formula/tree.ts';
import { allFunctions } from './random-trees.ts';

const x: Tree = { kind: 'name', name: 'x' };
const y: Tree = { kind: 'name', name: 'y' };
const z: Tree = { kind: 'name', name: 'z' };
const number = (value: number): Tree => ({ kind: 'number', value });
const minus = (of: Tree): Tree => ({ kind: 'negate', of });
const operate = (left: Tree, op: Operator, right: Tree): Tree => ({ kind: 'operate', op, left, right });

describe('what binds tighter', () => {
  test.each<[string, Tree]>([
    ['-x^2', minus(operate(x, '^', number(2)))],
    ['(-x)^2', operate(minus(x), '^', number(2))],
    ['x^-y', operate(x, '^', minus(y))],
    ['x^-y^z', operate(x, '^', minus(operate(y, '^', z)))],
    ['x^y^z', operate(x, '^', operate(y, '^', z))],
    ['(x^y)^z', operate(operate(x, '^', y), '^', z)],
    ['-x*y', operate(minus(x), '*', y)],
    ['x*-y', operate(x, '*', minus(y))],
    ['--x', minus(minus(x))],
    ['x-y-z', operate(operate(x, '-', y), '-', z)],
    ['x/y/z', operate(operate(x, '/', y), '/', z)],
    ['x/y*z', operate(operate(x, '/', y), '*', z)],
    ['x+y*z', operate(x, '+', operate(y, '*', z))],
    ['x*y^z', operate(x, '*', operate(y, '^', z))],
    ['x < y + z', operate(x, '<', operate(y, '+', z))],
    ['x > 0 and y > 0', operate(operate(x, '>', number(0)), 'and', operate(y, '>', number(0)))],
    ['x or y and z', operate(x, 'or', operate(y, 'and', z))],
    ['x and y or z', operate(operate(x, 'and', y), 'or', z)],
    ['x <= y', operate(x, '<=', y)],
    ['x>=y', operate(x, '>=', y)],
    ['x==y', operate(x, '==', y)],
  ])('%s', (formula, tree) => {
    expect(parse(formula)).toEqual(tree);
  });
});

describe('numbers', () => {
  test.each([
    ['60', 60],
    ['0.5', 0.5],
    ['.5', 0.5],
    ['1e-9', 1e-9],
    ['2.5e+3', 2500],
    [' 7 ', 7],
  ])('%s', (formula, value) => {
    expect(parse(formula)).toEqual(number(value));
  });

  test.each(['360deg', '360 deg', '3.6e2 deg'])('%s is an angle', (formula) => {
    expect(parse(formula)).toEqual({ kind: 'number', value: 360, unit: 'deg' });
  });
});

describe('names', () => {
  test('pi needs no telling', () => {
    expect(parse('pi', new Set())).toEqual({ kind: 'name', name: 'pi' });
  });

  test('a name beside its namesake of a function', () => {
    expect(parse('min(min, x)')).toEqual({ kind: 'call', name: 'min', args: [{ kind: 'name', name: 'min' }, x] });
  });

  test.each(['constructor', 'toString', 'hasOwnProperty', 'valueOf'])('%s is a name like any other', (name) => {
    expect(parse(name, new Set([name]))).toEqual({ kind: 'name', name });
    expect(() => parse(name, new Set(['x']))).toThrow(`unknown name: ${name}`);
    expect(() => parse(`${name}(x)`)).toThrow(`unknown function: ${name}`);
    expect(() => parse(`x ${name} y`)).toThrow(`unexpected ${name}`);
  });
});

/** The message shows the formula and a caret under the place. */
const complaint = (formula: string): string => {
  try {
    parse(formula, new Set(['x', 'y', 'u']));
  } catch (error) {
    if (error instanceof FormulaError) return error.message;
  }
  return 'no FormulaError';
};

describe('where a formula goes wrong', () => {
  test('at its end', () => {
    expect(complaint('x +')).toMatchInlineSnapshot(`
      "the formula ends too soon
        x +
           ^"
    `);
    expect(complaint('')).toMatchInlineSnapshot(`
      "the formula ends too soon
        
        ^"
    `);
    expect(complaint('2 * (x + y')).toMatchInlineSnapshot(`
      "missing )
        2 * (x + y
                  ^"
    `);
    expect(complaint('max(x, y')).toMatchInlineSnapshot(`
      "missing )
        max(x, y
                ^"
    `);
  });

  test('at a character', () => {
    expect(complaint('x $ y')).toMatchInlineSnapshot(`
      "unexpected character: $
        x $ y
          ^"
    `);
    expect(complaint('x −y')).toMatchInlineSnapshot(`
      "unexpected character: −
        x −y
          ^"
    `);
    expect(complaint('__proto__')).toMatchInlineSnapshot(`
      "unexpected character: _
        __proto__
        ^"
    `);
    expect(complaint('x = y')).toMatchInlineSnapshot(`
      "unexpected character: =
        x = y
          ^"
    `);
    expect(complaint('1.5. + x')).toMatchInlineSnapshot(`
      "unexpected character: .
        1.5. + x
           ^"
    `);
  });

  test('at a word or sign', () => {
    expect(complaint('x + * y')).toMatchInlineSnapshot(`
      "unexpected *
        x + * y
            ^"
    `);
    expect(complaint('x y')).toMatchInlineSnapshot(`
      "unexpected y
        x y
          ^"
    `);
    expect(complaint('2 x')).toMatchInlineSnapshot(`
      "unexpected x
        2 x
          ^"
    `);
    expect(complaint('(x))')).toMatchInlineSnapshot(`
      "unexpected )
        (x))
           ^"
    `);
    expect(complaint('x + and')).toMatchInlineSnapshot(`
      "unexpected and
        x + and
            ^"
    `);
    expect(complaint('+x')).toMatchInlineSnapshot(`
      "unexpected +
        +x
        ^"
    `);
    expect(complaint('2 deg deg')).toMatchInlineSnapshot(`
      "unexpected deg
        2 deg deg
              ^"
    `);
    expect(complaint('()')).toMatchInlineSnapshot(`
      "unexpected )
        ()
         ^"
    `);
    expect(complaint('max()')).toMatchInlineSnapshot(`
      "unexpected )
        max()
            ^"
    `);
  });

  test('at a name or function', () => {
    expect(complaint('x + speed * y')).toMatchInlineSnapshot(`
      "unknown name: speed
        x + speed * y
            ^"
    `);
    expect(complaint('2 * sine(x)')).toMatchInlineSnapshot(`
      "unknown function: sine
        2 * sine(x)
            ^"
    `);
    expect(complaint('x * (y(2))')).toMatchInlineSnapshot(`
      "unknown function: y
        x * (y(2))
             ^"
    `);
    expect(complaint('x constructor y')).toMatchInlineSnapshot(`
      "unexpected constructor
        x constructor y
          ^"
    `);
  });

  test('at the arguments of a function', () => {
    expect(complaint('1 + sin(x, y)')).toMatchInlineSnapshot(`
      "sin takes 1 argument, not 2
        1 + sin(x, y)
          ^"
    `);
    expect(complaint('atan2(x)')).toMatchInlineSnapshot(`
      "atan2 takes 2 arguments, not 1
        atan2(x)
        ^"
    `);
    expect(complaint('min(x, y, x, y, x)')).toMatchInlineSnapshot(`
      "min takes 1 to 4 arguments, not 5
        min(x, y, x, y, x)
        ^"
    `);
    expect(complaint('2 * sum(u * x)')).toMatchInlineSnapshot(`
      "sum of a list takes a single name: make the list a step of its own
        2 * sum(u * x)
          ^"
    `);
    expect(complaint('max(-u)')).toMatchInlineSnapshot(`
      "max of a list takes a single name: make the list a step of its own
        max(-u)
        ^"
    `);
  });

  test('at a number too large to be one', () => {
    expect(complaint('x * 1e400')).toMatchInlineSnapshot(`
      "the number is too large
        x * 1e400
            ^"
    `);
  });

  test('tells the place in numbers too', () => {
    try {
      parse('x + * y');
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(FormulaError);
      expect(error).toMatchObject({ formula: 'x + * y', position: 4 });
    }
  });
});

const word = fc.constantFrom(
  ...allFunctions,
  ...['x', 'pi', 'deg', 'and', 'or', 'constructor', '__proto__', '1', '.5', '2e3', '1e999'],
  ...['+', '-', '*', '/', '^', '(', ')', ',', '<', '<=', '==', '=', ' ', '\n', '°', '−', '{', '\\'],
);

test('any text gives a tree or a FormulaError that points into it', { timeout: 30_000 }, () => {
  const text = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.array(word, { maxLength: 12 }).map((words) => words.join('')),
  );
  fc.assert(
    fc.property(text, fc.boolean(), (formula, strict) => {
      try {
        expect(parse(formula, strict ? new Set(['x']) : undefined)).toHaveProperty('kind');
      } catch (error) {
        expect(error).toBeInstanceOf(FormulaError);
        const { position } = error as FormulaError;
        expect(position).toBeGreaterThanOrEqual(0);
        expect(position).toBeLessThanOrEqual(formula.length);
      }
    }),
    { numRuns: 2000 },
  );
});
