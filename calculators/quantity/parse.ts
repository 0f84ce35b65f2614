import { findUnit, quantityOf, type QuantityName, type Unit } from './units.ts';

/** What a reader gave: the number(s) as typed and the unit they meant. `value` is in that unit, not in SI. */
export interface Entry {
  readonly value: number | readonly number[];
  readonly unit: string;
}

export type Parsed = { readonly ok: true; readonly entry: Entry } | { readonly ok: false; readonly problem: string };

const fail = (problem: string): Parsed => ({ ok: false, problem });

const numberThenUnit = /^([+-]?(?:\d+(?:[.,]\d+)?|[.,]\d+)(?:e[+-]?\d{1,3})?)(?:\s*\/\s*(\d+))?\s*(.*)$/i;
const longest = 200;

/** A number with the unit written behind it (or none), or the problem in words. */
function readOne(text: string): { readonly value: number; readonly unit: string } | string {
  const match = numberThenUnit.exec(text);
  if (!match) return text === '' ? 'nothing is filled in' : `“${text}” is not a number`;
  const [, digits = '', below, unit = ''] = match;
  if (/^[+-]?[1-9]\d{0,2},\d{3}$/.test(digits)) {
    return `“${digits}” can be read two ways: write ${digits.replace(',', '')} or ${digits.replace(',', '.')}`;
  }
  if (/^[.,\d]/.test(unit)) return `“${text}” is not one number`;
  const value = Number(digits.replace(',', '.')) / Number(below ?? 1);
  return Number.isFinite(value) ? { value, unit: unit.trim() } : `“${text}” is too large or divides by zero`;
}

/**
 * Reads `60`, `60mm`, `2.36 in`, `1/4 in`, `2,5 m`, `-4rad/s, -1, -2`.
 * @param unit the unit meant when none is typed.
 * @param list whether several numbers, separated by commas or semicolons, are wanted.
 * @returns the entry, or a problem as a clause without capital or full stop.
 */
export function parseEntry(text: string, name: QuantityName, unit: string, list = false): Parsed {
  const tidy = text.trim().replace(/[−–]/g, '-').replace(/\s+/g, ' ');
  if (tidy.length > longest) return fail(`it is longer than ${longest} characters`);
  const parts = list ? tidy.split(/\s*[;,]\s*/) : [tidy];
  const values: number[] = [];
  const typed = new Set<string>();
  for (const part of parts) {
    const read = readOne(part);
    if (typeof read === 'string') return fail(read);
    values.push(read.value);
    if (read.unit) typed.add(read.unit);
  }
  if (typed.size > 1) return fail(`one unit for the whole list, please, not ${[...typed].join(' and ')}`);
  const [wanted] = typed;
  const found = wanted === undefined ? { symbol: unit } : findUnit(quantityOf(name), wanted);
  if (!found) return fail(unknownUnit(wanted ?? '', name));
  return { ok: true, entry: { value: list ? values : (values[0] ?? NaN), unit: found.symbol } };
}

function unknownUnit(typed: string, name: QuantityName): string {
  const symbols = quantityOf(name)
    .units.map((one: Unit) => one.symbol)
    .filter(Boolean);
  const known = symbols.length > 0 ? `known here: ${symbols.join(', ')}` : 'it takes no unit';
  return `“${typed}” is not a unit of ${quantityOf(name).phrase.replace(/^an? /, '')} (${known})`;
}
