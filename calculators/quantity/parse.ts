import { findUnit, quantityOf, type QuantityName, type Unit } from './units.ts';

/** What a reader gave: the number(s) as typed and the unit they meant. `value` is in that unit, not in SI. */
export interface Entry {
  readonly value: number | readonly number[];
  readonly unit: string;
  /** The ± of each number, in the unit, where one was given. */
  readonly spread?: number | readonly number[];
}

export type Parsed = { readonly ok: true; readonly entry: Entry } | { readonly ok: false; readonly problem: string };

const fail = (problem: string): Parsed => ({ ok: false, problem });

const numberThenUnit = /^([+-]?(?:\d+(?:[.,]\d+)?|[.,]\d+)(?:e[+-]?\d{1,3})?)(?:\s*\/\s*(\d+))?\s*(.*)$/i;
/** Eight numbers with all their digits, each with its ±, fit in. */
const longest = 500;

/** A number with the unit written behind it (or none), or the problem in words. */
function readOne(text: string): { readonly value: number; readonly unit: string } | string {
  const match = numberThenUnit.exec(text);
  if (!match) return text === '' ? 'nothing is filled in' : `“${text}” is not a number`;
  const [, digits = '', below, unit = ''] = match;
  if (/^(?!1\/[a-z])[.,\d]/i.test(unit)) return `“${text}” is not one number`;
  if (/^[+-]?[1-9]\d{0,2},\d{3}$/.test(digits)) {
    return `“${digits}” can be read two ways: write ${digits.replace(',', '')} or ${digits.replace(',', '.')}`;
  }
  // Adding 0 turns −0 into 0: nobody means it, and atan2 would tell them apart.
  const value = Number(digits.replace(',', '.')) / Number(below ?? 1) + 0;
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
  const spreads: (number | undefined)[] = [];
  const typed = new Set<string>();
  for (const part of parts) {
    const read = readPart(part, name);
    if (typeof read === 'string') return fail(read);
    values.push(read.value);
    spreads.push(read.spread);
    for (const one of read.units) typed.add(findUnit(quantityOf(name), one)?.symbol ?? one);
  }
  if (typed.size > 1) return fail(`one unit for the whole list, please, not ${[...typed].join(' and ')}`);
  const [wanted] = typed;
  const found = wanted === undefined ? { symbol: unit } : findUnit(quantityOf(name), wanted);
  if (!found) return fail(unknownUnit(wanted ?? '', name));
  const entry: Entry = { value: list ? values : (values[0] ?? NaN), unit: found.symbol };
  const all = spreadsOfAll(spreads);
  return { ok: true, entry: all ? { ...entry, spread: list ? all : (all[0] ?? 0) } : entry };
}

const plusMinus = /\s*(?:±|\+\/-|\+-)\s*/;

interface Part {
  readonly value: number;
  readonly spread: number | undefined;
  readonly units: readonly string[];
}

/** A number with its ± if it has one: `60 ± 0.5 mm`, `60 mm ± 1 %`. */
function readPart(text: string, name: QuantityName): Part | string {
  const [left = '', right, ...more] = text.split(plusMinus);
  if (more.length > 0) return 'there is more than one ±';
  const number = readOne(left);
  if (typeof number === 'string') return number;
  const units = number.unit ? [number.unit] : [];
  if (right === undefined) return { value: number.value, spread: undefined, units };
  const spread = readOne(right);
  if (typeof spread === 'string') return `behind the ±, ${spread}`;
  if (spread.value < 0) return 'the ± cannot be negative';
  const relative = spread.unit === '%' && name !== 'ratio';
  return {
    value: number.value,
    spread: relative ? (Math.abs(number.value) * spread.value) / 100 : spread.value,
    units: relative || !spread.unit ? units : [...units, spread.unit],
  };
}

/** A ± behind the last number of a list alone is meant for all of it; elsewhere a number without one is exact. */
function spreadsOfAll(spreads: readonly (number | undefined)[]): readonly number[] | undefined {
  if (spreads.every((one) => one === undefined)) return undefined;
  const last = spreads[spreads.length - 1];
  const lastOnly = spreads.slice(0, -1).every((one) => one === undefined);
  return spreads.map((one) => one ?? (lastOnly ? (last ?? 0) : 0));
}

function unknownUnit(typed: string, name: QuantityName): string {
  const symbols = quantityOf(name)
    .units.map((one: Unit) => one.symbol)
    .filter(Boolean);
  const known = symbols.length > 0 ? `known here: ${symbols.join(', ')}` : 'it takes no unit';
  return `“${typed}” is not a unit of ${quantityOf(name).phrase.replace(/^an? /, '')} (${known})`;
}
