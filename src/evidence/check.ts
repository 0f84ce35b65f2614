import { fieldsOf, listOf, textOf, textsOf } from './fields.ts';

/**
 * How a published figure came to be known: seen in print or in retrieved text; remembered; or worked out by hand from a
 * printed formula or matrix, not itself printed.
 */
export type Known = 'read' | 'memory' | 'derived';

/** One published figure, or one a wheel, and what of ours stands against it. */
export interface Comparison {
  /** A formula over the names of the calculator: it shows how the conventions map. */
  readonly of: string;
  /** A unit of the table of units, or '' for a plain number. */
  readonly unit: string;
  /** As published: a decimal or an exact expression; a list for one figure a wheel. */
  readonly printed: string | readonly string[];
  /** Tolerance in the unit, in place of half the last printed digit. */
  readonly slack?: number;
}

/** A published figure to check a calculator against. */
export interface Check {
  readonly about: string;
  /** Id of an entry of the bibliography, and the place in it. */
  readonly source: string;
  readonly place: string;
  readonly known: Known;
  /** Givens as a reader types them. */
  readonly given: Readonly<Record<string, string>>;
  readonly compare: readonly Comparison[];
  readonly note?: string;
  /** Why the published figure does not agree. It stays, marked. */
  readonly disagrees?: string;
}

export interface CheckFile {
  readonly calculator: string;
  readonly checks: readonly Check[];
}

/**
 * Reads the parsed YAML of one file of checks.
 * @throws Error that names the place, for anything missing, unknown or of the wrong shape.
 */
export function readCheckFile(parsed: unknown): CheckFile {
  const file = fieldsOf(parsed, 'checks', ['calculator', 'checks']);
  const calculator = textOf(file['calculator'], 'checks: calculator');
  const where = `checks of ${calculator}`;
  const checks = listOf(file['checks'], where).map((one, k) => readCheck(one, `${where}, number ${k + 1}`));
  return { calculator, checks };
}

function readCheck(parsed: unknown, where: string): Check {
  const fields = fieldsOf(
    parsed,
    where,
    ['about', 'source', 'place', 'known', 'given', 'compare'],
    ['note', 'disagrees'],
  );
  const text = (key: string): string => textOf(fields[key], `${where}: ${key}`);
  const compare = listOf(fields['compare'], `${where}: compare`).map((one, k) =>
    readComparison(one, `${where}: compare ${k + 1}`),
  );
  const note = 'note' in fields ? { note: text('note') } : {};
  if (compare.some(({ slack }) => slack !== undefined) && !('note' in fields)) {
    throw new Error(`${where}: slack needs its reason in a note`);
  }
  return {
    about: text('about'),
    source: text('source'),
    place: text('place'),
    known: readKnown(fields['known'], `${where}: known`),
    given: textsOf(fields['given'], `${where}: given`),
    compare,
    ...note,
    ...('disagrees' in fields ? { disagrees: text('disagrees') } : {}),
  };
}

function readKnown(parsed: unknown, where: string): Known {
  if (parsed === 'read' || parsed === 'memory' || parsed === 'derived') return parsed;
  throw new Error(`${where}: read, memory or derived`);
}

function readComparison(parsed: unknown, where: string): Comparison {
  const fields = fieldsOf(parsed, where, ['of', 'unit', 'printed'], ['slack']);
  const { of, unit, printed, slack } = fields;
  if (typeof unit !== 'string') throw new Error(`${where}: unit: a text wanted, '' for a plain number`);
  if (slack !== undefined && !(typeof slack === 'number' && slack > 0 && Number.isFinite(slack))) {
    throw new Error(`${where}: slack: a number above 0 wanted`);
  }
  return {
    of: textOf(of, `${where}: of`),
    unit,
    printed: Array.isArray(printed)
      ? listOf(printed, `${where}: printed`).map((one) => textOf(one, `${where}: printed`))
      : textOf(printed, `${where}: printed`),
    ...(slack === undefined ? {} : { slack }),
  };
}
