import fc from 'fast-check';
import katex from 'katex';
import { describe, expect, test } from 'vitest';
import { evaluate } from '../../../calculators/formula/evaluate.ts';
import { parse } from '../../../calculators/formula/parse.ts';
import { symbolTex } from '../../../calculators/formula/symbols.ts';
import { typeset, type Names } from '../../../calculators/formula/typeset.ts';
import { allFunctions, allOperators, anyTree, randomTree } from './random-trees.ts';
import { readTex } from './read-tex.ts';

const lists = new Set(['u', 'w']);
const symbols: Names = { name: (name) => symbolTex(name, lists.has(name)), factors: 'side by side' };
const letters: Names = { name: (name) => name, factors: 'side by side' };
const numbers: Names = { name: (_, bare) => (bare ? '-0.5' : '\\left(-0.5\\right)'), factors: 'dotted' };

const set = (tex: string): string =>
  katex.renderToString(tex, { displayMode: true, throwOnError: true, strict: 'error' });

describe('known formulas', () => {
  test.each([
    ['v * s + R * Omega', 'v \\, s + R \\, \\Omega'],
    ['2 * C * cos(phi) + pi * (D + d) / 2', '2 \\, C \\, \\cos \\varphi + \\frac{\\pi \\, \\left(D + d\\right)}{2}'],
    ['alpha + (i - 1) * 360deg / n', '\\alpha + \\frac{\\left(i - 1\\right) \\cdot 360^{\\circ}}{n}'],
    ['-u * sin(alpha_i)', '-u_{i} \\, \\sin \\alpha_{i}'],
    ['2 / n * sum(u)', '\\frac{2}{n} \\, \\sum_i u_{i}'],
    ['sqrt(v_x^2 + v_y^2)', '\\sqrt{v_{x}^{2} + v_{y}^{2}}'],
    ['sin(x)^2', '\\sin^{2} x'],
    ['x^(1 / 2)', 'x^{\\frac{1}{2}}'],
    ['max(u)', '\\max_i\\, u_{i}'],
    ['max(x, y)', '\\max\\left(x,\\,y\\right)'],
    ['upto(n)', '1,\\,\\dots,\\,n'],
    ['x * 3', 'x \\cdot 3'],
    ['x^2 * y', 'x^{2} \\, y'],
    ['abs(x) * y', '\\left|x\\right| \\, y'],
    ['if(x > 0, x, y)', '\\begin{cases}x & \\text{if } x > 0\\\\ y & \\text{otherwise}\\end{cases}'],
  ])('%s', (formula, tex) => {
    expect(typeset(parse(formula), symbols)).toBe(tex);
  });
});

describe('signs that would be read otherwise without their parentheses or dots', () => {
  test.each([
    ['sin(x) * y', '\\sin x \\cdot y'],
    ['-sin(x) * y', '-\\sin x \\cdot y'],
    ['sin(x)^2 * y', '\\sin^{2} x \\cdot y'],
    ['sin(x)^n', '\\left(\\sin x\\right)^{n}'],
    ['sin(x)^-1', '\\left(\\sin x\\right)^{-1}'],
    ['exp(x)^2', '\\left(e^{x}\\right)^{2}'],
    ['90deg^2', '\\left(90^{\\circ}\\right)^{2}'],
    ['(x^y)^z', '\\left(x^{y}\\right)^{z}'],
    ['(x / y)^2', '\\left(\\frac{x}{y}\\right)^{2}'],
    ['sum(u)^2', '\\left(\\sum_i u_{i}\\right)^{2}'],
    ['sum(u) * x', '\\left(\\sum_i u_{i}\\right) \\, x'],
    ['max(u) * x', '\\left(\\max_i\\, u_{i}\\right) \\cdot x'],
    ['mod(x + y, z) * n', '\\left(\\left(x + y\\right) \\bmod z\\right) \\, n'],
    ['x - mod(y, z)', 'x - \\left(y \\bmod z\\right)'],
    ['2 * upto(n)', '2 \\, \\left(1,\\,\\dots,\\,n\\right)'],
    ['(x < y) < z', '\\left(x < y\\right) < z'],
    ['min(w, x, y, z)', '\\min\\left(w_{i},\\,x,\\,y,\\,z\\right)'],
  ])('%s', (formula, tex) => {
    expect(typeset(parse(formula), symbols)).toBe(tex);
  });
});

describe('numbers', () => {
  test.each([
    ['1e-9 * x', '1 \\cdot 10^{-9} \\, x'],
    ['2.5e30', '2.5 \\cdot 10^{30}'],
    ['(1e-9)^x', '\\left(1 \\cdot 10^{-9}\\right)^{x}'],
    ['1e-9 deg', '\\left(1 \\cdot 10^{-9}\\right)^{\\circ}'],
    ['0.0001', '0.0001'],
  ])('%s', (formula, tex) => {
    expect(typeset(parse(formula), symbols)).toBe(tex);
  });

  test('in the place of names they stand apart, and a sum is a sum of them', () => {
    const put: Names = { name: (name, bare) => (bare ? `<${name}>` : `(${name})`), factors: 'dotted' };
    expect(typeset(parse('v * s - R * Omega'), put)).toBe('<v> \\cdot (s) - (R) \\cdot (Omega)');
    expect(typeset(parse('sum(u) / n'), put)).toBe('\\frac{\\left(<u>\\right)}{<n>}');
    expect(typeset(parse('max(u) * sin(x)'), put)).toBe('\\max\\left(<u>\\right) \\cdot \\sin\\left(<x>\\right)');
    expect(typeset(parse('x^2 + mod(y, 2)'), put)).toBe('(x)^{2} + \\left((y) \\bmod 2\\right)');
  });
});

test('KaTeX sets every formula without a complaint, as symbols and as numbers', { timeout: 30_000 }, () => {
  fc.assert(
    fc.property(randomTree(anyTree), fc.constantFrom(symbols, numbers), (tree, names) => {
      expect(set(typeset(tree, names))).toContain('katex');
    }),
    { numRuns: 1000 },
  );
});

test('a careful person reads the formula that was meant', { timeout: 30_000 }, () => {
  const readable = randomTree({
    names: ['x', 'y', 'u', 'w', 'pi'],
    operators: allOperators,
    functions: allFunctions.filter((name) => name !== 'upto'),
    numbers: fc.integer({ min: 0, max: 24 }).map((k) => k / 8),
    degrees: true,
  });
  const number = fc.integer({ min: -24, max: 24 }).map((k) => k / 8);
  const list = fc.tuple(number, number, number);
  fc.assert(
    fc.property(readable, number, number, list, list, (tree, x, y, u, w) => {
      const tex = typeset(tree, letters);
      const read = readTex(tex);
      const values = { x, y, u, w };
      let wanted: unknown;
      try {
        wanted = evaluate(tree, values);
      } catch (error) {
        if (!String(error).includes('takes a list')) throw error;
        return;
      }
      expect(rounded(evaluate(read, values)), tex).toEqual(rounded(wanted));
    }),
    { numRuns: 4000 },
  );
});

const rounded = (value: unknown): unknown =>
  [value].flat().map((x) => (typeof x === 'number' && Number.isFinite(x) ? Number(x.toPrecision(9)) + 0 : x));
