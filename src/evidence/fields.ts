/** Strict readers of parsed YAML: what is missing, unknown or of the wrong kind is an error that names its place. */

type Fields = Readonly<Record<string, unknown>>;

function recordOf(parsed: unknown, where: string): Fields {
  if (typeof parsed === 'object' && parsed !== null && !Array.isArray(parsed)) return { ...parsed };
  throw new Error(`${where}: names with values wanted`);
}

/** A record with every required key and no other than the required and the optional ones. */
export function fieldsOf(
  parsed: unknown,
  where: string,
  required: readonly string[],
  optional: readonly string[] = [],
): Fields {
  const fields = recordOf(parsed, where);
  const missing = required.filter((key) => !Object.hasOwn(fields, key));
  if (missing.length > 0) throw new Error(`${where}: missing: ${missing.join(', ')}`);
  const unknown = Object.keys(fields).filter((key) => !required.includes(key) && !optional.includes(key));
  if (unknown.length > 0) throw new Error(`${where}: unknown: ${unknown.join(', ')}`);
  return fields;
}

/** A list with at least one entry. */
export function listOf(parsed: unknown, where: string): readonly unknown[] {
  if (!Array.isArray(parsed)) throw new Error(`${where}: a list wanted`);
  const list: readonly unknown[] = parsed;
  if (list.length === 0) throw new Error(`${where}: the list is empty`);
  return list;
}

/** A text that is not blank. A bare number is none: YAML would drop its last zeros. */
export function textOf(parsed: unknown, where: string): string {
  if (typeof parsed !== 'string') throw new Error(`${where}: a text wanted, in quotes if it is a number`);
  if (parsed.trim() === '') throw new Error(`${where}: the text is empty`);
  return parsed;
}

/** A record of texts. */
export const textsOf = (parsed: unknown, where: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(recordOf(parsed, where)).map(([key, value]) => [key, textOf(value, `${where}: ${key}`)]),
  );
