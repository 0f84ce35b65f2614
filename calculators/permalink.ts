import type { Calculator, Given } from './calculator.ts';
import type { Entries } from './inputs.ts';
import type { Entry } from './quantity/parse.ts';

/** The edition of the calculator a link was made with; a name no given may have. */
export const editionKey = 'edition';

type Linkable = Pick<Calculator, 'edition' | 'given'>;

/**
 * The query string of a piece of working: `edition=1&v=0.6m/s&r=60mm`. Every given is in it, usual or not, so that
 * the working stays the same when a usual value changes years later.
 */
export function toQuery(calculator: Linkable, entries: Entries): string {
  const pairs = calculator.given.map((given) => [given.name, compact(given, entries[given.name] ?? given.usual)]);
  return [[editionKey, String(calculator.edition)], ...pairs]
    .map(([name = '', text = '']) => `${name}=${encodeURIComponent(text).replace(/%2F/g, '/').replace(/%2C/g, ',')}`)
    .join('&');
}

/** `60mm`, `12kgf.cm`, `10,-5,-5rad/s`: what the parser of inputs reads back without loss. */
function compact(given: Given, entry: Entry): string {
  const [word] = Object.entries(given.options ?? {}).find(([, value]) => value === entry.value) ?? [];
  return word ?? [entry.value].flat().map(String).join(',') + entry.unit.replace(/ /g, '.');
}

export interface FromQuery {
  /** What the link says of each given, as text still to be read. */
  readonly texts: Readonly<Record<string, string>>;
  /** Sentences about the link itself. With any, its numbers may mean something else than they say. */
  readonly problems: readonly string[];
}

/** Reads a link. A missing given is no problem (it has its usual value); a bad one is found when its text is read. */
export function fromQuery(calculator: Linkable, query: string): FromQuery {
  const parameters = new URLSearchParams(query);
  const texts: Record<string, string> = {};
  const problems: string[] = [];
  const known = new Set(calculator.given.map((given) => given.name));
  for (const name of new Set(parameters.keys())) {
    const all = parameters.getAll(name);
    if (name === editionKey) continue;
    if (!known.has(name)) problems.push(`The link gives “${name}”, which this calculator does not take.`);
    else if (all.length > 1) problems.push(`The link gives ${name} more than once; the first is used.`);
    if (known.has(name)) texts[name] = all[0] ?? '';
  }
  const edition = parameters.get(editionKey);
  if (edition !== null && edition !== String(calculator.edition)) {
    problems.push(
      `The link was made for edition “${edition}” of this calculator and this is edition ${calculator.edition}: check that the numbers mean what they did.`,
    );
  }
  return { texts, problems };
}
