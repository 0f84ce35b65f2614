import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { given, type Given } from '../../calculators/calculator.ts';
import { siOf } from '../../calculators/si-of.ts';
import { catalogue } from '../../calculators/catalogue.ts';
import { symbolText } from '../../calculators/formula/symbols.ts';
import { entryText, givenText, readGiven, readInputs } from '../../calculators/inputs.ts';
import { formatNumber } from '../../calculators/quantity/format.ts';
import type { Entry } from '../../calculators/quantity/parse.ts';
import { quantities, quantityOf } from '../../calculators/quantity/units.ts';

const radius = given('r', 'wheel radius', 'length', '60 mm', ['1 mm', '10 m']);
const count = given('n', 'number of wheels', 'count', '3', ['3', '8'], { whole: true });
const speeds = given('omega', 'wheel speeds', 'angular velocity', '10, -5, -5 rad/s', ['-100 rad/s', '100 rad/s'], {
  list: [3, 4],
});
const floor = given('floor', 'kind of floor', 'ratio', '1', ['1', '2'], { options: { Carpet: 1, bare: 2 } });

describe('what is wrong is said with the symbol, the range and an example', () => {
  test.each<[Given, string, string]>([
    [radius, '-3', 'r (wheel radius): give a length from 1 to 10000 mm, such as 60 mm. “−3 mm” is below that.'],
    [radius, '11 m', 'r (wheel radius): give a length from 1 to 10000 mm, such as 60 mm. “11 m” is above that.'],
    [radius, 'wide', 'r (wheel radius): give a length from 1 to 10000 mm, such as 60 mm. “wide” is not a number.'],
    [radius, '', 'r (wheel radius): give a length from 1 to 10000 mm, such as 60 mm. Nothing is filled in.'],
    [count, '3.5', 'n (number of wheels): give a whole number from 3 to 8, such as 3. “3.5” is not whole.'],
    [count, '9', 'n (number of wheels): give a whole number from 3 to 8, such as 3. “9” is above that.'],
    [
      speeds,
      '1, 2 rpm',
      'ω (wheel speeds): give 3 to 4 numbers, each a turning speed from −100 to 100 rad/s, such as 10, −5, −5 rad/s. 2 numbers are given.',
    ],
    [
      speeds,
      '1',
      'ω (wheel speeds): give 3 to 4 numbers, each a turning speed from −100 to 100 rad/s, such as 10, −5, −5 rad/s. One number is given.',
    ],
    [floor, 'lino', 'floor (kind of floor): choose one of Carpet, bare. “lino” is none of them.'],
    [floor, '1', 'floor (kind of floor): choose one of Carpet, bare. “1” is none of them.'],
    [floor, 'constructor', 'floor (kind of floor): choose one of Carpet, bare. “constructor” is none of them.'],
  ])('%o: “%s”', (one, text, message) => {
    expect(readGiven(one, text)).toBe(message);
  });

  test('a long word is cut short', () => {
    expect(readGiven(floor, 'x'.repeat(300))).toContain(`“${'x'.repeat(40)}…”`);
  });
});

describe('what is right', () => {
  test.each<[Given, string, Entry]>([
    [radius, '60', { value: 60, unit: 'mm' }],
    [radius, '1 mm', { value: 1, unit: 'mm' }],
    [radius, '10 m', { value: 10, unit: 'm' }],
    [count, '8', { value: 8, unit: '' }],
    [count, '6/2', { value: 3, unit: '' }],
    [speeds, '100, -100, 0', { value: [100, -100, 0], unit: 'rad/s' }],
    [floor, ' carpet ', { value: 1, unit: '' }],
    [floor, 'BARE', { value: 2, unit: '' }],
  ])('%o: “%s”', (one, text, entry) => {
    expect(readGiven(one, text)).toEqual(entry);
  });

  test('is shown as it was given', () => {
    expect(entryText({ value: 2.36, unit: 'in' })).toBe('2.36 in');
    expect(entryText({ value: [10, -5, -5], unit: 'rad/s' })).toBe('10, −5, −5 rad/s');
    expect(entryText({ value: 60, unit: 'mm', spread: 0.5 })).toBe('60 ± 0.5 mm');
    expect(givenText(floor, { value: 2, unit: '' })).toBe('bare');
    expect(givenText(radius, { value: 2, unit: 'mm' })).toBe('2 mm');
  });
});

describe('several at once', () => {
  const givens = [radius, count, speeds];

  test('what is not typed has its usual value', () => {
    expect(readInputs(givens, { r: '2 cm' })).toEqual({
      ok: true,
      entries: { r: { value: 2, unit: 'cm' }, n: count.usual, omega: speeds.usual },
      values: { r: 0.02, n: 3, omega: [10, -5, -5] },
    });
  });

  test('every problem is told, each with its given', () => {
    const read = readInputs(givens, { r: 'x', n: '3', omega: '1' });
    expect(read.ok ? [] : read.problems.map((problem) => problem.given)).toEqual(['r', 'omega']);
  });

  test('names nobody asked for are the caller’s business', () => {
    expect(readInputs([radius], { constructor: 'x', n: '99' }).ok).toBe(true);
  });
});

const all = catalogue.flatMap((calculator) =>
  calculator.given.map((one): [string, Given] => [`${calculator.id}: ${one.name}`, one]),
);

/** Texts that are mostly wrong: stray characters, numbers beyond the range, units of something else, too many numbers. */
function badTexts(one: Given): fc.Arbitrary<string> {
  const units = quantities.flatMap((quantity) => quantity.units.map(({ symbol }) => symbol));
  const number = fc.oneof(
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.constantFrom(one.least, one.most, -one.most, one.most * 1.001, one.least - 0.001, 0, 1e308, 1e-308),
    fc.integer({ min: -20, max: 20 }),
  );
  const piece = fc.constantFrom(
    '1,000',
    '1/0',
    '−3',
    '+-',
    '1e999',
    'NaN',
    '{r}',
    '__proto__',
    '±',
    ';',
    '\n',
    '⅓',
    '%',
  );
  return fc.oneof(
    fc.string({ unit: 'binary', maxLength: 20 }),
    fc.string({ maxLength: 700, size: 'max' }),
    fc.tuple(number, fc.constantFrom(...units)).map(([x, unit]) => `${x} ${unit}`),
    fc.array(number, { maxLength: 12 }).map((numbers) => numbers.join(', ')),
    fc.array(fc.oneof(piece, number.map(String)), { maxLength: 5 }).map((pieces) => pieces.join('')),
  );
}

/** The ends of the range as the reader is told them, in the given’s own unit. */
function rangeOf({ least, most, quantity, unit }: Given): string {
  const factor = quantityOf(quantity).units.find(({ symbol }) => symbol === unit)?.factor ?? NaN;
  return `from ${formatNumber(least / factor, 6)} to ${formatNumber(most / factor, 6)}`;
}

test.each(all)('%s takes an entry in its range or says what is wrong', { timeout: 30_000 }, (_, one) => {
  let refused = 0;
  fc.assert(
    fc.property(badTexts(one), (text) => {
      const read = readGiven(one, text);
      if (typeof read === 'string') {
        refused++;
        expect(read.startsWith(`${symbolText(one.name)} (${one.means}): `)).toBe(true);
        if (one.options) Object.keys(one.options).forEach((word) => expect(read).toContain(word));
        else expect(read).toContain(rangeOf(one));
        expect(read).not.toMatch(/undefined|\[object|NaN mm|Infinity mm/);
        expect(read).toMatch(/[.]$/);
        return;
      }
      const numbers = [siOf(read, one.quantity)].flat();
      const hair = 1e-12 * Math.max(Math.abs(one.least), Math.abs(one.most));
      expect(numbers.every((x) => x >= one.least - hair && x <= one.most + hair)).toBe(true);
      expect(Array.isArray(read.value)).toBe(one.list !== undefined);
      if (one.list) expect(numbers.length >= one.list[0] && numbers.length <= one.list[1]).toBe(true);
      if (one.whole) expect(numbers.every(Number.isInteger)).toBe(true);
    }),
  );
  expect(refused).toBeGreaterThan(50);
});
