import { readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { basename, dirname, extname, join } from 'node:path';

const TEXT_ENDINGS = new Set(['.html', '.css', '.js', '.mjs', '.json', '.xml', '.txt', '.svg', '.webmanifest']);
const FONT_ENDINGS = new Set(['.woff2', '.woff', '.ttf', '.otf', '.eot']);
const STYLE_ELEMENT = /(<style\b[^>]*>)(.*?)(<\/style>)/gis;

/** Texts of a built site by path. */
export type Texts = ReadonlyMap<string, string>;

export interface SiteFiles {
  readonly texts: Texts;
  /** Paths of font files by name. */
  readonly fonts: ReadonlyMap<string, string>;
}

export async function readSiteFiles(folder: string): Promise<SiteFiles> {
  const paths = (await readdir(folder, { recursive: true })).sort().map((path) => join(folder, path));
  const ending = (set: ReadonlySet<string>): string[] => paths.filter((path) => set.has(extname(path)));
  const texts = new Map<string, string>();
  for (const path of ending(TEXT_ENDINGS)) texts.set(path, await readFile(path, 'utf8'));
  return { texts, fonts: new Map(ending(FONT_ENDINGS).map((path) => [basename(path), path])) };
}

export function withEnding(texts: Texts, ...endings: string[]): Map<string, string> {
  return new Map([...texts].filter(([path]) => endings.includes(extname(path))));
}

/** All that the site's stylesheets and its pages' style elements say. */
export function siteCss(texts: Texts): string {
  const inPages = [...withEnding(texts, '.html').values()].flatMap((html) => [...html.matchAll(STYLE_ELEMENT)]);
  const sheets = [...withEnding(texts, '.css').values(), ...inPages.map((match) => match[2] ?? '')];
  return [...new Set(sheets)].join('\n');
}

/** The same texts with their CSS changed, in stylesheets and in pages. */
export function withCss(texts: Texts, change: (css: string) => string): Map<string, string> {
  const changed = new Map(texts);
  for (const [path, css] of withEnding(texts, '.css')) changed.set(path, change(css));
  for (const [path, html] of withEnding(texts, '.html')) {
    const inPage = (_: string, open: string, css: string, close: string): string => open + change(css) + close;
    changed.set(path, html.replace(STYLE_ELEMENT, inPage));
  }
  return changed;
}

/** Writes a text or a font under a name of its own in the folder of the file that it replaces. */
export async function replaceFile(path: string, name: string, content: string | Uint8Array): Promise<void> {
  if (name !== basename(path)) await rm(path);
  await writeFile(join(dirname(path), name), content);
}
