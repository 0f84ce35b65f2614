/** A small function that written code needs beside it when its name is called. */
export interface Helper {
  readonly name: string;
  readonly text: string;
}

/** The helpers that a text calls, directly or through one another, in the order of the list. */
export function helpersFor(text: string, helpers: readonly Helper[]): readonly Helper[] {
  const wanted = new Set<Helper>();
  const want = (caller: string): void => {
    for (const helper of helpers) {
      if (wanted.has(helper) || !calls(caller, helper.name)) continue;
      wanted.add(helper);
      want(helper.text);
    }
  };
  want(text);
  return helpers.filter((helper) => wanted.has(helper));
}

const calls = (text: string, name: string): boolean => new RegExp(`\\b${name}\\(`).test(text);
