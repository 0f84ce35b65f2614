const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const superscript = (n: number): string =>
  String(n).replace(/[-\d]/g, (c) => (c === '-' ? '⁻' : superscripts.charAt(Number(c))));

/**
 * A number as it is printed: `digits` significant digits, no trailing zeros, a true minus sign, powers of ten beyond
 * 0.0001 and 9 999 999.
 * @throws Error for NaN: what cannot be printed must have been refused before.
 */
export function formatNumber(value: number, digits: number): string {
  if (Number.isNaN(value)) throw new Error('invalid number: NaN');
  const rounded = roundTo(value, digits);
  if (rounded === 0) return '0';
  const sign = rounded < 0 ? '−' : '';
  const size = Math.abs(rounded);
  if (size === Infinity) return `${sign}∞`;
  if (size >= 1e-4 && size < 1e7) return sign + plainDigits(size);
  const [mantissa = '', exponent = ''] = size.toExponential().split('e');
  return `${sign}${mantissa} · 10${superscript(Number(exponent))}`;
}

/** The number that `formatNumber` prints. */
export const roundTo = (value: number, digits: number): number =>
  Number.isFinite(value) ? Number(value.toPrecision(digits)) : value;

/** JavaScript turns to exponents below 1e-6 only, so within our range this is plain decimal notation. */
const plainDigits = (size: number): string => String(size);

/** Reads back what `formatNumber` printed. */
export function readNumber(printed: string): number {
  const ascii = printed
    .replace(/−/g, '-')
    .replace(/∞/g, 'Infinity')
    .replace(/ · 10/g, 'e')
    .replace(/⁻/g, '-')
    .replace(/[⁰¹²³⁴⁵⁶⁷⁸⁹]/g, (c) => String(superscripts.indexOf(c)));
  return Number(ascii);
}

/** How a unit is printed after its number: `60°`, `60 mm`, `12 kgf·cm`, `2 m/s²`. */
export function formatUnit(symbol: string): string {
  const known = printedUnits.get(symbol) ?? printUnit(symbol);
  printedUnits.set(symbol, known);
  return known;
}

const printedUnits = new Map<string, string>();

function printUnit(symbol: string): string {
  if (symbol === '') return '';
  if (symbol === 'deg') return '°';
  if (symbol === 'degC') return ' °C';
  const pretty = symbol
    .replace(/^deg\//, '°/')
    .replace(/\^2/g, '²')
    .replace(/\^3/g, '³')
    .replace(/\^4/g, '⁴')
    .replace(/ /g, '·')
    .replace(/ohm/, 'Ω')
    .replace(/^um$/, 'µm')
    .replace(/^gn$/, 'g₀');
  return pretty.startsWith('°') ? pretty : ` ${pretty}`;
}

/** `60 mm`; `digits` as in `formatNumber`. */
export const formatQuantity = (value: number, symbol: string, digits: number): string =>
  formatNumber(value, digits) + formatUnit(symbol);
