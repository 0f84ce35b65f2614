import { readFile } from 'node:fs/promises';
import subsetFont from 'subset-font';
import type { FontFace } from './font-faces.ts';
import { codeOf } from './glyphs-used.ts';
import { rehashed } from './hashed-names.ts';
import { sfntCharacters } from './sfnt-characters.ts';

export interface FontFile {
  readonly bytes: Uint8Array;
  readonly codes: ReadonlySet<number>;
}

export interface Subset {
  readonly file: string;
  readonly name: string;
  readonly original: Uint8Array;
  readonly bytes: Uint8Array;
}

/** Fields 13 and 14 of the name table: the fonts' licence asks that each copy carry it. */
const LICENCE_NAMES = [13, 14];
const FEATURES_KEPT = ['mark', 'mkmk', 'ccmp', 'locl', 'liga', 'tnum', 'lnum'];

export async function readFonts(
  paths: ReadonlyMap<string, string>,
  faces: readonly FontFace[],
): Promise<Map<string, FontFile>> {
  const fonts = new Map<string, FontFile>();
  for (const file of new Set(faces.map(({ woff2 }) => woff2))) {
    const bytes = await readFile(paths.get(file) ?? file);
    fonts.set(file, { bytes, codes: await charactersOf(bytes) });
  }
  return fonts;
}

/** The font with these characters only, or an error when one of them got lost. */
export async function subsetOf(
  file: string,
  fonts: ReadonlyMap<string, FontFile>,
  characters: ReadonlySet<string>,
  kerned = true,
): Promise<Subset> {
  const original = fonts.get(file)?.bytes ?? new Uint8Array();
  const bytes = await subsetBytes(original, characters, kerned);
  const codes = await charactersOf(bytes);
  const lost = [...characters].filter((character) => !codes.has(codeOf(character)));
  if (lost.length > 0) throw new Error(`${file} lost ${lost.join(' ')} when it was cut down.`);
  return { file, name: rehashed(file, bytes), original, bytes };
}

/** @param kerned whether pairs of letters keep distances of their own; they are a fifth of a file. */
export async function subsetBytes(
  font: Uint8Array,
  characters: ReadonlySet<string>,
  kerned = true,
): Promise<Uint8Array> {
  return subsetFont(font, [...characters].sort().join(''), {
    targetFormat: 'woff2',
    keepFeatures: kerned ? ['kern', ...FEATURES_KEPT] : FEATURES_KEPT,
    preserveNameIds: LICENCE_NAMES,
    // Hints fill two kilobytes of every file, and screens that need them are rare now.
    noHinting: true,
  });
}

async function charactersOf(font: Uint8Array): Promise<Set<number>> {
  return sfntCharacters(await subsetFont(font, undefined, { keepAllGlyphs: true, targetFormat: 'sfnt' }));
}
