import { rm } from 'node:fs/promises';
import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { faceKey, fontFilesNamed, readFontFaces, trimFontFaces } from './font-faces.ts';
import type { FontFace } from './font-faces.ts';
import { MATHS_FAMILY } from './font-cascade.ts';
import { readFonts, subsetOf } from './font-files.ts';
import type { Subset } from './font-files.ts';
import { TEXT_CHARACTERS } from './glyphs-used.ts';
import { rehashed, renamedScripts, withNewNames } from './hashed-names.ts';
import { mathsRunsByPage, proseOf } from './site-characters.ts';
import { readSiteFiles, replaceFile, siteCss, withCss, withEnding } from './site-files.ts';
import type { SiteFiles, Texts } from './site-files.ts';
import { charactersByFile, planSubsets } from './subset-plan.ts';
import type { SubsetPlan } from './subset-plan.ts';

export interface FontReport {
  readonly name: string;
  readonly bytesBefore: number;
  readonly bytesAfter: number;
}

/** Leaves in the built site only the fonts that its pages use, each with only the characters that they show. */
export function subsetFonts(): AstroIntegration {
  return {
    name: 'subset-fonts',
    hooks: {
      'astro:build:done': async ({ dir, logger }) => {
        for (const { name, bytesBefore, bytesAfter } of await subsetSiteFonts(fileURLToPath(dir))) {
          logger.info(`${name}: ${bytesBefore} to ${bytesAfter} bytes`);
        }
      },
    },
  };
}

export default subsetFonts;

export async function subsetSiteFonts(folder: string): Promise<FontReport[]> {
  const site = await readSiteFiles(folder);
  const css = siteCss(site.texts);
  const faces = readFontFaces(css).filter(({ woff2 }) => site.fonts.has(woff2));
  const fonts = await readFonts(site.fonts, faces);
  const runs = mathsRunsByPage(site.texts).flatMap((page) => page.runs);
  const prose = { always: TEXT_CHARACTERS, found: proseOf(site.texts) };
  const plan = planSubsets(faces, runs, prose, (face, code) => fonts.get(face.woff2)?.codes.has(code) ?? false);
  const unkerned = new Set(faces.filter(isSparse).map(({ woff2 }) => woff2));
  const subsets: Subset[] = [];
  for (const [file, characters] of charactersByFile(plan)) {
    subsets.push(await subsetOf(file, fonts, characters, !unkerned.has(file)));
  }
  await replaceTexts(site.texts, plan, subsets);
  await replaceFonts(site, fontFilesNamed(css), subsets);
  return subsets.map(({ name, original, bytes }) => ({
    name,
    bytesBefore: original.byteLength,
    bytesAfter: bytes.byteLength,
  }));
}

/** Italics and bold of the text are single words and headings: there, kerning is not worth what it weighs. */
const isSparse = ({ family, italic, weights: [lightest] }: FontFace): boolean =>
  (italic || lightest > 500) && !MATHS_FAMILY.test(family);

async function replaceTexts(texts: Texts, plan: SubsetPlan, subsets: readonly Subset[]): Promise<void> {
  const kept = new Set([...plan.keys()].map(faceKey));
  const trimmed = withCss(texts, (css) => trimFontFaces(css, (face) => kept.has(faceKey(face))));
  const names = new Map(subsets.map(({ file, name }) => [file, name]));
  for (const [path, css] of withEnding(trimmed, '.css')) {
    const renamed = withNewNames(css, names);
    if (renamed !== texts.get(path)) names.set(basename(path), rehashed(basename(path), renamed));
  }
  const scripts = [...withEnding(trimmed, '.js', '.mjs')].map(([path, source]) => [basename(path), source] as const);
  for (const [name, next] of renamedScripts(new Map(scripts), names)) names.set(name, next);
  for (const [path, text] of trimmed) {
    const next = withNewNames(text, names);
    if (next !== texts.get(path)) await replaceFile(path, names.get(basename(path)) ?? basename(path), next);
  }
}

async function replaceFonts(site: SiteFiles, named: readonly string[], subsets: readonly Subset[]): Promise<void> {
  const written = new Set(subsets.map(({ file }) => file));
  for (const { file, name, bytes } of subsets) await replaceFile(site.fonts.get(file) ?? file, name, bytes);
  for (const file of new Set(named)) {
    const path = site.fonts.get(file);
    if (path !== undefined && !written.has(file)) await rm(path);
  }
}
