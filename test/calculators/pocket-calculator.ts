/**
 * Works out a printed line as a person with a pocket calculator does, by JavaScript's own arithmetic: nothing here is
 * shared with calculators/formula. The calculator is set to degrees where the line or its result has a degree sign.
 */
export function press(line: string, result: string): number | readonly number[] {
  const functions = /°(?!\/)/.test(line + result) ? inDegrees : plain;
  // The line is turned into JavaScript; each word on it is one of the functions.
  // eslint-disable-next-line @typescript-eslint/no-implied-eval, @typescript-eslint/no-unsafe-call
  const value: unknown = new Function(...Object.keys(functions), `'use strict'; return ${toJavaScript(line)};`)(
    ...Object.values(functions),
  );
  return Array.isArray(value) ? value.map(Number) : Number(value);
}

const plain = {
  ...{ sin: Math.sin, cos: Math.cos, tan: Math.tan, asin: Math.asin, acos: Math.acos, atan: Math.atan },
  ...{ atan2: Math.atan2, sqrt: Math.sqrt, exp: Math.exp, ln: Math.log, abs: Math.abs, sign: Math.sign },
  ...{ round: Math.round, floor: Math.floor, ceil: Math.ceil, min: Math.min, max: Math.max, pi: Math.PI },
  mod: (a: number, b: number): number => ((a % b) + b) % b,
  sum: (total: number): number => total,
  count: (...all: readonly number[]): number => all.length,
  upto: (n: number): number[] => [...Array(n).keys()].map((k) => k + 1),
  choose: (condition: boolean | number, yes: number, no: number): number => (condition ? yes : no),
};

const degree = Math.PI / 180;

/** A pocket calculator knows that the sine of 180° is 0. */
const sine = (x: number): number => (x % 180 === 0 ? 0 : Math.sin((x % 360) * degree));
const cosine = (x: number): number => (x % 180 === 90 || x % 180 === -90 ? 0 : Math.cos((x % 360) * degree));

const inDegrees: typeof plain = {
  ...plain,
  sin: sine,
  cos: cosine,
  tan: (x) => sine(x) / cosine(x),
  asin: (x) => Math.asin(x) / degree,
  acos: (x) => Math.acos(x) / degree,
  atan: (x) => Math.atan(x) / degree,
  atan2: (y, x) => Math.atan2(y, x) / degree,
};

/** The words of a printed line as JavaScript has them. A leading minus binds less than a power, there as here. */
export const toJavaScript = (line: string): string =>
  toAscii(line)
    .replace(/°/g, '')
    .replace(/(^|[(,]\s*)-/g, '$1-1 * ')
    .replace(/\^/g, '**')
    .replace(/==/g, '===')
    .replace(/\band\b/g, '&&')
    .replace(/\bor\b/g, '||')
    .replace(/\bif\(/g, 'choose(');

const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹';

const toAscii = (text: string): string =>
  text.replace(/−/g, '-').replace(/ · 10(⁻?)([⁰¹²³⁴⁵⁶⁷⁸⁹]+)/g, (_, minus: string, digits: string) => {
    const exponent = [...digits].map((digit) => superscripts.indexOf(digit)).join('');
    return `e${minus === '' ? '' : '-'}${exponent}`;
  });

/** The number a printed result begins with: −0.25 of `−0.25 m/s`. */
export const readResult = (printed: string): number => parseFloat(toAscii(printed));

const unsigned = /(?<![\w.])\d+(?:\.\d+)?(?:e-?\d+)?/g;

/** All numbers on a line, without their signs. */
export const numbersOn = (line: string): number[] => (toAscii(line).match(unsigned) ?? []).map(Number);

/** How far the result moves when the numbers on the line move by their last bits. */
function looseness(line: string, result: string): number {
  if (/\b(round|floor|ceil|mod|count|upto)\(/.test(line)) return 0;
  const text = toAscii(line);
  const here = Number(press(line, result));
  const moved = [...text.matchAll(unsigned)].map((match) => {
    const nudged = String(Number(match[0]) * (1 + 4 * Number.EPSILON));
    const other = text.slice(0, match.index) + nudged + text.slice(match.index + match[0].length);
    return Math.abs(Number(press(other, result)) - here);
  });
  return moved.reduce((total, one) => total + one, 0);
}

/**
 * Whether a line, worked out and rounded to four digits, gives its printed result. Last bits are allowed for: 0.12345 may
 * round either way, and what is left of 1 − 1 may be printed as 0.
 */
export function isTrue(line: string, printed: string, value: number): boolean {
  const wanted = readResult(printed);
  const rounded = (x: number): number => Number(x.toPrecision(4));
  if (rounded(value) === wanted) return true;
  const loose = looseness(line, printed);
  if (wanted === 0) return Math.abs(value) <= 2000 * loose;
  return rounded(value - loose) <= wanted && wanted <= rounded(value + loose);
}
