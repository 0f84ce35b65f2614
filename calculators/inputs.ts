import type { Given } from './calculator.ts';
import type { Values } from './formula/evaluate.ts';
import { symbolText } from './formula/symbols.ts';
import { formatNumber, formatQuantity, formatUnit } from './quantity/format.ts';
import { parseEntry, type Entry } from './quantity/parse.ts';
import { quantityOf, unitOf } from './quantity/units.ts';
import { siOf } from './si-of.ts';

export type Entries = Readonly<Record<string, Entry>>;

/** A given that cannot be used, and a sentence for the reader that names it, its unit and its range. */
export interface Problem {
  readonly given: string;
  readonly message: string;
}

export type ReadInputs =
  | { readonly ok: true; readonly entries: Entries; readonly values: Values }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Reads what a reader typed; what is not typed has its usual value.
 * @param texts by name of the given; other names are the caller's business.
 */
export function readInputs(givens: readonly Given[], texts: Readonly<Record<string, string>>): ReadInputs {
  const entries: Record<string, Entry> = {};
  const problems: Problem[] = [];
  for (const given of givens) {
    const text = Object.hasOwn(texts, given.name) ? texts[given.name] : undefined;
    const read = text === undefined ? given.usual : readGiven(given, text);
    if (typeof read === 'string') problems.push({ given: given.name, message: read });
    else entries[given.name] = read;
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, entries, values: toValues(givens, entries) };
}

/** The entries in SI. */
export const toValues = (givens: readonly Given[], entries: Entries): Values =>
  Object.fromEntries(givens.map((given) => [given.name, siOf(entries[given.name] ?? given.usual, given.quantity)]));

/** The usual value of every given. */
export const usualEntries = (givens: readonly Given[]): Entries =>
  Object.fromEntries(givens.map((given) => [given.name, given.usual]));

/** Reads one given: the entry, or the sentence that says what is wrong. */
export function readGiven(given: Given, text: string): Entry | string {
  if (given.options) return readOption(given, given.options, text);
  const parsed = parseEntry(text, given.quantity, given.unit, given.list !== undefined);
  if (!parsed.ok) return sentence(given, `${capital(parsed.problem)}.`);
  const problem = outside(given, parsed.entry);
  return problem === undefined ? parsed.entry : sentence(given, problem);
}

function readOption(given: Given, options: Readonly<Record<string, number>>, text: string): Entry | string {
  const wanted = text.trim().toLowerCase();
  const [, value] = Object.entries(options).find(([word]) => word.toLowerCase() === wanted) ?? [];
  if (value !== undefined) return { value, unit: '' };
  return `${label(given)}: choose one of ${Object.keys(options).join(', ')}. “${short(text)}” is none of them.`;
}

function outside(given: Given, entry: Entry): string | undefined {
  const numbers = [entry.value].flat();
  const typed = (x: number): string => `“${formatQuantity(x, entry.unit, 12)}”`;
  if (given.list && (numbers.length < given.list[0] || numbers.length > given.list[1])) {
    return numbers.length === 1 ? 'One number is given.' : `${numbers.length} numbers are given.`;
  }
  const fraction = given.whole ? numbers.find((x) => !Number.isInteger(x)) : undefined;
  if (fraction !== undefined) return `${typed(fraction)} is not whole.`;
  const { factor } = unitOf(quantityOf(given.quantity), entry.unit);
  const slack = 1e-12;
  const low = numbers.find((x) => x * factor < given.least - slack * Math.abs(given.least));
  if (low !== undefined) return `${typed(low)} is below that.`;
  const high = numbers.find((x) => x * factor > given.most + slack * Math.abs(given.most));
  return high === undefined ? undefined : `${typed(high)} is above that.`;
}

const label = (given: Given): string => `${symbolText(given.name)} (${given.means})`;

/** "r (wheel radius): give a length from 1 to 10000 mm, such as 60 mm. “−3 mm” is below that." */
const sentence = (given: Given, problem: string): string => `${label(given)}: ${wants(given)}. ${problem}`;

/** What a given takes: "give a length from 1 to 10000 mm, such as 60 mm". */
export function wants(given: Given): string {
  const { factor } = unitOf(quantityOf(given.quantity), given.unit);
  const end = (si: number): string => formatNumber(si / factor, 6);
  const range = `from ${end(given.least)} to ${end(given.most)}${formatUnit(given.unit)}`;
  const phrase = given.whole ? 'a whole number' : quantityOf(given.quantity).phrase;
  const what = given.list ? `${given.list[0]} to ${given.list[1]} numbers, each ${phrase}` : phrase;
  return `give ${what} ${range}, such as ${entryText(given.usual)}`;
}

/** An entry as a person writes it: `60 ± 0.5 mm`, `10, −5, −5 rad/s`. */
export function entryText(entry: Entry, digits = 12): string {
  const spreads = [entry.spread ?? []].flat();
  const one = (x: number, k: number): string => {
    const spread = spreads[k];
    return formatNumber(x, digits) + (spread === undefined ? '' : ` ± ${formatNumber(spread, digits)}`);
  };
  return [entry.value].flat().map(one).join(', ') + formatUnit(entry.unit);
}

/** The word of a choice, or the entry as text. */
export function givenText(given: Given, entry: Entry): string {
  const [word] = Object.entries(given.options ?? {}).find(([, value]) => value === entry.value) ?? [];
  return word ?? entryText(entry);
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const short = (text: string): string => (text.length > 40 ? `${text.slice(0, 40)}…` : text);
