import type { Calculator, Given } from './calculator.ts';
import type { Entries } from './inputs.ts';
import type { Entry } from './quantity/parse.ts';
import { findUnit, quantityOf } from './quantity/units.ts';

/** The edition of the calculator a link was made with; a name no given may have. */
export const editionKey = 'edition';

type Linkable = Pick<Calculator, 'edition' | 'given' | 'steps' | 'results'>;

/** The units that a reader chose for results, by name. */
export type ResultUnits = Readonly<Record<string, string>>;

/**
 * The query string of a piece of working: `edition=1&v=0.6m/s&r=60mm&omega=rad/s`. Every given is in it, usual or not, so
 * that the working stays the same when a usual value changes years later; of the results only the unit, where one was chosen.
 */
export function toQuery(calculator: Linkable, entries: Entries, units: ResultUnits = {}): string {
  const pairs = calculator.given.map((given) => [given.name, compact(given, entries[given.name] ?? given.usual)]);
  const chosen = Object.entries(units).map(([name, unit]) => [name, unit.replace(/ /g, '.')]);
  return [[editionKey, String(calculator.edition)], ...pairs, ...chosen]
    .map(([name = '', text = '']) => `${name}=${encodeURIComponent(text).replace(/%2F/g, '/').replace(/%2C/g, ',')}`)
    .join('&');
}

/** `60±0.5mm`, `12kgf.cm`, `10,-5,-5rad/s`: what the parser of inputs reads back without loss. */
function compact(given: Given, entry: Entry): string {
  const [word] = Object.entries(given.options ?? {}).find(([, value]) => value === entry.value) ?? [];
  const spreads = [entry.spread ?? []].flat();
  const numbers = [entry.value].flat().map((x, k) => (spreads[k] === undefined ? String(x) : `${x}±${spreads[k]}`));
  return word ?? numbers.join(',') + apart(entry.unit) + entry.unit.replace(/ /g, '.');
}

/** Without a space `5` and `1/K` would run into one number. */
const apart = (unit: string): string => (/^\d/.test(unit) ? ' ' : '');

export interface FromQuery {
  /** What the link says of each given, as text still to be read. */
  readonly texts: Readonly<Record<string, string>>;
  readonly units: ResultUnits;
  /** Sentences about the link itself. With any, its numbers may mean something else than they say. */
  readonly problems: readonly string[];
}

/**
 * Reads a link. A missing given is no problem (it has its usual value); a bad one is found when its text is read.
 * @param pairs the names and texts of the query string, as `new URLSearchParams(query)` gives them.
 */
export function fromQuery(calculator: Linkable, pairs: Iterable<readonly [string, string]>): FromQuery {
  const texts = new Map<string, string>();
  const units = new Map<string, string>();
  const problems: string[] = [];
  const known = new Set(calculator.given.map((given) => given.name));
  for (const [name, text] of pairs) {
    if (name === editionKey) problems.push(...editionProblems(calculator, text));
    else if (texts.has(name) || units.has(name)) {
      problems.push(`The link gives ${name} more than once; the first is used.`);
    } else if (known.has(name)) texts.set(name, text);
    else if (calculator.results.includes(name)) {
      const symbol = resultUnit(calculator, name, text);
      if (symbol === undefined) problems.push(`The link asks for ${name} in “${text}”, which is no unit of it.`);
      else units.set(name, symbol);
    } else problems.push(`The link gives “${name}”, which this calculator does not take.`);
  }
  return { texts: Object.fromEntries(texts), units: Object.fromEntries(units), problems };
}

function resultUnit({ steps }: Linkable, name: string, text: string): string | undefined {
  const step = steps.find((one) => one.name === name);
  return step && findUnit(quantityOf(step.quantity), text)?.symbol;
}

const editionProblems = ({ edition }: Linkable, text: string): string[] =>
  text === String(edition)
    ? []
    : [
        `The link was made for edition “${text}” of this calculator and this is edition ${edition}: check that the numbers mean what they did.`,
      ];
