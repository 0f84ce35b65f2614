/**
 * Names fit for a language, by the calculator's own. What the language or the written code needs for itself gets an
 * underscore behind it.
 */
export function identifiers(names: readonly string[], taken: Iterable<string>): ReadonlyMap<string, string> {
  const used = new Set(taken);
  const own = new Set(names);
  return new Map(
    names.map((name) => {
      let free = name;
      while (used.has(free) || (free !== name && own.has(free))) free += '_';
      used.add(free);
      return [name, free];
    }),
  );
}

/** A function's name from a calculator's id: `wheel-speeds` is `wheel_speeds`. */
export const functionName = (id: string): string => id.replace(/-/g, '_');
