import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatNumber, formatQuantity, formatUnit, readNumber, roundTo } from '../../../calculators/quantity/format.ts';

describe('numbers as printed', () => {
  test.each<[number, number, string]>([
    [60, 4, '60'],
    [0.5, 4, '0.5'],
    [-3, 4, '−3'],
    [0, 4, '0'],
    [-0, 4, '0'],
    [95.49296585513721, 4, '95.49'],
    [95.49296585513721, 6, '95.493'],
    [59.99999999999999, 12, '60'],
    [0.0001, 4, '0.0001'],
    [0.000099994, 4, '9.999 · 10⁻⁵'],
    [0.000099996, 4, '0.0001'],
    [-0.000012345678, 3, '−1.23 · 10⁻⁵'],
    [9999999, 7, '9999999'],
    [9999999, 4, '1 · 10⁷'],
    [10000000, 4, '1 · 10⁷'],
    [123456789, 4, '1.235 · 10⁸'],
    [1e21, 4, '1 · 10²¹'],
    [1.5e-300, 4, '1.5 · 10⁻³⁰⁰'],
    [Infinity, 4, '∞'],
    [-Infinity, 4, '−∞'],
  ])('%d to %d digits is %s', (value, digits, wanted) => {
    expect(formatNumber(value, digits)).toBe(wanted);
  });

  test('what is not a number is refused', () => {
    expect(() => formatNumber(NaN, 4)).toThrow('invalid number: NaN');
    expect(() => formatQuantity(NaN, 'mm', 4)).toThrow('invalid number: NaN');
  });
});

const anyNumber = fc.oneof(
  fc.double({ min: -1e300, max: 1e300, noNaN: true }),
  fc.double({ min: -1e8, max: 1e8, noNaN: true }),
  fc.constantFrom(Infinity, -Infinity),
);
const digits = fc.integer({ min: 1, max: 15 });

test('what is printed reads back as the number that was rounded, and prints the same again', () => {
  fc.assert(
    fc.property(anyNumber, digits, (value, count) => {
      const printed = formatNumber(value, count);
      expect(readNumber(printed)).toBe(roundTo(value, count) + 0);
      expect(formatNumber(readNumber(printed), count)).toBe(printed);
      expect(printed).toMatch(/^−?(∞|\d+(\.\d*[1-9])?( · 10⁻?[⁰¹²³⁴⁵⁶⁷⁸⁹]+)?)$/);
    }),
    { numRuns: 2000 },
  );
});

test('the digits printed are the significant ones', () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-6, max: 1e9, noNaN: true }), digits, (value, count) => {
      const rounded = readNumber(formatNumber(value, count));
      const lastDigit = 10 ** (Math.floor(Math.log10(value)) + 1 - count);
      expect(Math.abs(rounded - value)).toBeLessThanOrEqual(0.5 * lastDigit + 1e-15 * value);
      const [mantissa = ''] = formatNumber(value, count).split(' ');
      expect(mantissa.replace('.', '').replace(/^0+/, '').replace(/0+$/, '').length).toBeLessThanOrEqual(count);
    }),
  );
});

describe('units as printed', () => {
  test.each([
    ['', ''],
    ['mm', ' mm'],
    ['deg', '°'],
    ['deg/s', '°/s'],
    ['kgf cm', ' kgf·cm'],
    ['N m', ' N·m'],
    ['m/s^2', ' m/s²'],
    ['mm^2', ' mm²'],
    ['ohm', ' Ω'],
    ['mohm', ' mΩ'],
    ['um', ' µm'],
    ['gn', ' g₀'],
    ['%', ' %'],
    ['N mm', ' N·mm'],
    ['m^3', ' m³'],
  ])('“%s” as “%s”', (symbol, wanted) => {
    expect(formatUnit(symbol)).toBe(wanted);
  });

  test('stand behind their number', () => {
    expect(formatQuantity(2.36, 'in', 12)).toBe('2.36 in');
    expect(formatQuantity(-60, 'deg', 4)).toBe('−60°');
    expect(formatQuantity(3, '', 4)).toBe('3');
  });
});
