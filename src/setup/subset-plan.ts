import { covers } from './font-faces.ts';
import type { FontFace } from './font-faces.ts';
import { MATHS_FAMILY } from './font-cascade.ts';
import { codeOf, fontedCharacters, hasDigit, isVisible, RUN_TIME_CHARACTERS } from './glyphs-used.ts';
import type { HasGlyph, TextRun } from './glyphs-used.ts';

/** For each face that the site uses, the characters it must keep. */
export type SubsetPlan = ReadonlyMap<FontFace, ReadonlySet<string>>;

/** The face whose digits KaTeX uses when nothing asks for another. */
const isMainMathsFace = (face: FontFace): boolean =>
  face.family === 'KaTeX_Main' && !face.italic && face.weights[0] === 400;

export function planSubsets(
  faces: readonly FontFace[],
  runs: readonly TextRun[],
  prose: { readonly always: string; readonly found: ReadonlySet<string> },
  hasGlyph: HasGlyph,
): SubsetPlan {
  const maths = faces.filter((face) => MATHS_FAMILY.test(face.family));
  const text = faces.filter((face) => !MATHS_FAMILY.test(face.family));
  const shown = new Set([...Array.from(prose.always), ...prose.found, ...leftOver(maths, runs, hasGlyph)]);
  return new Map([...mathsPlan(maths, runs, hasGlyph), ...textPlan(text, shown, hasGlyph)]);
}

/** The characters each font file must keep: several faces may share a file. */
export function charactersByFile(plan: SubsetPlan): Map<string, Set<string>> {
  const files = new Map<string, Set<string>>();
  for (const [{ woff2 }, characters] of plan) files.set(woff2, new Set([...(files.get(woff2) ?? []), ...characters]));
  return files;
}

function mathsPlan(faces: readonly FontFace[], runs: readonly TextRun[], hasGlyph: HasGlyph): SubsetPlan {
  const plan = new Map<FontFace, Set<string>>();
  for (const run of runs) {
    for (const { character, face } of fontedCharacters(run, faces, hasGlyph)) {
      if (face) plan.set(face, (plan.get(face) ?? new Set()).add(character));
    }
  }
  for (const [face, characters] of plan) {
    if (!isMainMathsFace(face) && !hasDigit(characters)) continue;
    for (const character of visible(RUN_TIME_CHARACTERS, face, hasGlyph)) characters.add(character);
  }
  return plan;
}

/** Characters of formulas that no maths font has: a text face may stand behind it. */
function leftOver(faces: readonly FontFace[], runs: readonly TextRun[], hasGlyph: HasGlyph): string[] {
  const characters = runs.flatMap((run) => fontedCharacters(run, faces, hasGlyph));
  return characters.filter(({ face }) => face === undefined).map(({ character }) => character);
}

function textPlan(faces: readonly FontFace[], shown: ReadonlySet<string>, hasGlyph: HasGlyph): SubsetPlan {
  const entries = faces.map((face) => [face, new Set(visible(shown, face, hasGlyph))] as const);
  return new Map(entries.filter(([, characters]) => characters.size > 0));
}

function visible(characters: Iterable<string>, face: FontFace, hasGlyph: HasGlyph): string[] {
  return [...characters].filter((character) => {
    const code = codeOf(character);
    return isVisible(character) && covers(face, code) && hasGlyph(face, code);
  });
}
