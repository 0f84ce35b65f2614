import { readFontFaces } from './font-faces.ts';
import { readFonts } from './font-files.ts';
import { fontedCharacters } from './glyphs-used.ts';
import type { HasGlyph } from './glyphs-used.ts';
import { mathsRunsByPage } from './site-characters.ts';
import { readSiteFiles, siteCss } from './site-files.ts';

export interface MissingGlyph {
  readonly page: string;
  readonly character: string;
  readonly families: readonly string[];
}

/** The characters of formulas in a built site that none of the fonts meant for them can show. */
export async function missingGlyphs(folder: string): Promise<MissingGlyph[]> {
  const { texts, fonts } = await readSiteFiles(folder);
  const faces = readFontFaces(siteCss(texts)).filter(({ woff2 }) => fonts.has(woff2));
  const files = await readFonts(fonts, faces);
  const hasGlyph: HasGlyph = (face, code) => files.get(face.woff2)?.codes.has(code) ?? false;
  return mathsRunsByPage(texts).flatMap(({ path, runs }) =>
    runs
      .filter((run) => run.inFormula)
      .flatMap((run) =>
        fontedCharacters(run, faces, hasGlyph)
          .filter(({ character, face }) => face === undefined && character.trim() !== '')
          .map(({ character }) => ({ page: path, character, families: run.style.families })),
      ),
  );
}
