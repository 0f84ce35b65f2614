import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseEntry, type Entry, type Parsed } from '../../../calculators/quantity/parse.ts';
import { quantities, type Quantity, type QuantityName } from '../../../calculators/quantity/units.ts';

const entry = (value: Entry['value'], unit: string): Parsed => ({ ok: true, entry: { value, unit } });
const problem = (text: string, name: QuantityName, unit: string, list = false): string => {
  const parsed = parseEntry(text, name, unit, list);
  return parsed.ok ? `read as ${JSON.stringify(parsed.entry)}` : parsed.problem;
};

describe('what a reader types', () => {
  test.each<[string, QuantityName, string, number, string]>([
    ['60', 'length', 'mm', 60, 'mm'],
    ['60mm', 'length', 'm', 60, 'mm'],
    [' 60  mm ', 'length', 'm', 60, 'mm'],
    ['2.36 in', 'length', 'mm', 2.36, 'in'],
    ['2.36"', 'length', 'mm', 2.36, 'in'],
    ['1/4 in', 'length', 'mm', 0.25, 'in'],
    ['-1/4 in', 'length', 'mm', -0.25, 'in'],
    ['1 / 4', 'length', 'mm', 0.25, 'mm'],
    ['2,5 m', 'length', 'mm', 2.5, 'm'],
    ['0,125 m', 'length', 'mm', 0.125, 'm'],
    ['1,25', 'length', 'mm', 1.25, 'mm'],
    ['1000', 'length', 'mm', 1000, 'mm'],
    ['.5 m', 'length', 'mm', 0.5, 'm'],
    [',5 m', 'length', 'mm', 0.5, 'm'],
    ['+5', 'length', 'mm', 5, 'mm'],
    ['−3', 'length', 'mm', -3, 'mm'],
    ['–3', 'length', 'mm', -3, 'mm'],
    ['-3', 'length', 'mm', -3, 'mm'],
    ['-0', 'length', 'mm', 0, 'mm'],
    ['1e-3 m', 'length', 'mm', 1e-3, 'm'],
    ['1E3', 'length', 'mm', 1000, 'mm'],
    ['1e−3 m', 'length', 'mm', 1e-3, 'm'],
    ['12 µm', 'length', 'mm', 12, 'um'],
    ['60 MM', 'length', 'm', 60, 'mm'],
    ['300 rpm', 'angular velocity', 'rad/s', 300, 'rpm'],
    ['300 RPM', 'angular velocity', 'rad/s', 300, 'rpm'],
    ['300 r/min', 'angular velocity', 'rad/s', 300, 'rpm'],
    ['300 1/min', 'angular velocity', 'rad/s', 300, 'rpm'],
    ['1/2 1/m', 'curvature', 'deg/m', 0.5, 'rad/m'],
    ['90°/s', 'angular velocity', 'rad/s', 90, 'deg/s'],
    ['60°', 'angle', 'rad', 60, 'deg'],
    ['1/2 turn', 'angle', 'deg', 0.5, 'turn'],
    ['12 kgf cm', 'torque', 'N m', 12, 'kgf cm'],
    ['12 kgf·cm', 'torque', 'N m', 12, 'kgf cm'],
    ['12kgf.cm', 'torque', 'N m', 12, 'kgf cm'],
    ['12 kg cm', 'torque', 'N m', 12, 'kgf cm'],
    ['9.8 m/s²', 'acceleration', 'm/s^2', 9.8, 'm/s^2'],
    ['50 %', 'ratio', '', 50, '%'],
    ['3', 'count', '', 3, ''],
  ])('“%s” as %s in %s', (text, name, unit, value, read) => {
    expect(parseEntry(text, name, unit)).toEqual(entry(value, read));
  });

  test.each<[string, readonly number[], string]>([
    ['10, -5, -5', [10, -5, -5], 'rad/s'],
    ['10,−5;2.5 rpm', [10, -5, 2.5], 'rpm'],
    ['1 rpm, 2 rpm', [1, 2], 'rpm'],
    ['1 RPM, 2 r/min', [1, 2], 'rpm'],
    ['-4rad/s,-1rad/s,-2rad/s', [-4, -1, -2], 'rad/s'],
    ['7', [7], 'rad/s'],
    ['1,000', [1, 0], 'rad/s'],
  ])('a list: “%s”', (text, values, unit) => {
    expect(parseEntry(text, 'angular velocity', 'rad/s', true)).toEqual(entry(values, unit));
  });
});

describe('with a ±', () => {
  test.each<[string, QuantityName, Entry]>([
    ['60 ± 0.5 mm', 'length', { value: 60, unit: 'mm', spread: 0.5 }],
    ['60 mm ± 0.5', 'length', { value: 60, unit: 'mm', spread: 0.5 }],
    ['60±0,5mm', 'length', { value: 60, unit: 'mm', spread: 0.5 }],
    ['60 +/- 1/2 in', 'length', { value: 60, unit: 'in', spread: 0.5 }],
    ['-60 mm +- 1 %', 'length', { value: -60, unit: 'mm', spread: 0.6 }],
    ['50 ± 1 %', 'ratio', { value: 50, unit: '%', spread: 1 }],
  ])('“%s”', (text, name, wanted) => {
    expect(parseEntry(text, name, 'm')).toEqual({ ok: true, entry: wanted });
  });

  test.each<[string, readonly number[]]>([
    ['1, 2, 3 ± 0.5 mm', [0.5, 0.5, 0.5]],
    ['1 ± 0.1, 2, 3 ± 0.5 mm', [0.1, 0, 0.5]],
    ['1, 2 ± 0.1, 3', [0, 0.1, 0]],
    ['1, -20, 3 ± 10 %', [0.3, 0.3, 0.3]],
  ])('a list: “%s”', (text, spread) => {
    expect(parseEntry(text, 'length', 'mm', true)).toMatchObject({ entry: { spread, unit: 'mm' } });
  });

  test.each([
    ['60 ± -1 mm', 'the ± cannot be negative'],
    ['60 ± 1 ± 2', 'there is more than one ±'],
    ['60 ± one', 'behind the ±, “one” is not a number'],
    ['60 ±', 'behind the ±, nothing is filled in'],
    ['± 1 mm', 'nothing is filled in'],
    ['60 mm ± 1 in', 'one unit for the whole list, please, not mm and in'],
  ])('not “%s”', (text, wanted) => {
    expect(problem(text, 'length', 'mm')).toBe(wanted);
  });
});

describe('what cannot be read', () => {
  test.each<[string, QuantityName, string, string]>([
    ['', 'length', 'mm', 'nothing is filled in'],
    ['   ', 'length', 'mm', 'nothing is filled in'],
    ['sixty', 'length', 'mm', '“sixty” is not a number'],
    ['mm', 'length', 'mm', '“mm” is not a number'],
    ['--3', 'length', 'mm', '“--3” is not a number'],
    ['NaN', 'length', 'mm', '“NaN” is not a number'],
    ['Infinity', 'length', 'mm', '“Infinity” is not a number'],
    ['1,000', 'length', 'mm', '“1,000” can be read two ways: write 1000 or 1.000'],
    ['-12,500 mm', 'length', 'mm', '“-12,500” can be read two ways: write -12500 or -12.500'],
    ['1,000,000', 'length', 'mm', '“1,000,000” is not one number'],
    ['1 000', 'length', 'mm', '“1 000” is not one number'],
    ['1.2.3', 'length', 'mm', '“1.2.3” is not one number'],
    ['1 1/2 in', 'length', 'mm', '“1 1/2 in” is not one number'],
    ['1/0', 'length', 'mm', '“1/0” is too large or divides by zero'],
    ['0/0', 'length', 'mm', '“0/0” is too large or divides by zero'],
    ['1e999', 'length', 'mm', '“1e999” is too large or divides by zero'],
    ['3 mm', 'count', '', '“mm” is not a unit of whole number (it takes no unit)'],
    ['60 kg', 'angle', 'deg', '“kg” is not a unit of angle (known here: rad, deg, turn)'],
    ['60 constructor', 'angle', 'deg', '“constructor” is not a unit of angle (known here: rad, deg, turn)'],
    ['60 __proto__', 'angle', 'deg', '“__proto__” is not a unit of angle (known here: rad, deg, turn)'],
    ['0x10', 'angle', 'deg', '“x10” is not a unit of angle (known here: rad, deg, turn)'],
  ])('“%s” as %s in %s', (text, name, unit, wanted) => {
    expect(problem(text, name, unit)).toBe(wanted);
  });

  test('1,000 is refused with either sign and the ways to write it', () => {
    expect(problem('1,000 mm', 'length', 'mm')).toContain('write 1000 or 1.000');
    expect(parseEntry('1000 mm', 'length', 'mm')).toEqual(entry(1000, 'mm'));
    expect(parseEntry('1.000 mm', 'length', 'mm')).toEqual(entry(1, 'mm'));
  });

  test('a list with a hole or two units', () => {
    expect(problem('1,,2', 'length', 'mm', true)).toBe('nothing is filled in');
    expect(problem('1, two', 'length', 'mm', true)).toBe('“two” is not a number');
    expect(problem('1 mm, 2 pigs', 'length', 'mm', true)).toBe('one unit for the whole list, please, not mm and pigs');
    expect(problem('1 mm, 2 in', 'length', 'mm', true)).toBe('one unit for the whole list, please, not mm and in');
  });

  test('a text without end', () => {
    expect(problem('1'.repeat(501), 'length', 'mm')).toBe('it is longer than 500 characters');
  });
});

const spelling = fc
  .constantFrom<Quantity>(...quantities)
  .chain((quantity) =>
    fc
      .constantFrom(...quantity.units)
      .chain((unit) =>
        fc.constantFrom(unit.symbol, ...(unit.also ?? [])).map((text) => ({ quantity, unit: unit.symbol, text })),
      ),
  );

const number = fc.double({ noNaN: true, noDefaultInfinity: true }).map((x) => x + 0);

test('every unit in every spelling, with every number JavaScript writes, reads back', () => {
  fc.assert(
    fc.property(spelling, number, ({ quantity, unit, text }, value) => {
      const space = /^\d/.test(text) ? ' ' : '';
      const read = parseEntry(`${value}${space}${text}`, quantity.name as QuantityName, quantity.units[0].symbol);
      expect(read).toEqual(entry(value, unit === '' ? quantity.units[0].symbol : unit));
    }),
    { numRuns: 2000 },
  );
});

test('any text gives an entry of finite numbers or a problem in words', { timeout: 30_000 }, () => {
  const piece = fc.constantFrom(
    ...['1', '60', '2,5', '1,000', '.', ',', ';', '/', '-', '−', '+', 'e', 'e400', ' ', 'mm', 'in', 'kgf cm', 'rpm'],
    ...['°', '"', 'NaN', 'Infinity', '0', '{r}', '%', '__proto__', '\n', '\u2028', '１', '±', '± 1 %', '+/-'],
  );
  const text = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 250 }),
    fc.array(piece, { maxLength: 8 }).map((pieces) => pieces.join('')),
  );
  fc.assert(
    fc.property(text, fc.constantFrom<Quantity>(...quantities), fc.boolean(), (typed, quantity, list) => {
      const read = parseEntry(typed, quantity.name as QuantityName, quantity.units[0].symbol, list);
      if (!read.ok) {
        expect(read.problem).not.toMatch(/undefined|NaN is|\[object/);
        expect(read.problem.length).toBeGreaterThan(5);
        return;
      }
      expect(Array.isArray(read.entry.value)).toBe(list);
      expect([read.entry.value].flat().every(Number.isFinite)).toBe(true);
      expect([read.entry.spread ?? 0].flat().every((spread) => Number.isFinite(spread) && spread >= 0)).toBe(true);
      expect(quantity.units.map((unit) => unit.symbol)).toContain(read.entry.unit);
    }),
    { numRuns: 3000 },
  );
});
