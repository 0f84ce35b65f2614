import { cp, mkdir, mkdtemp, readdir, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { basename, dirname, extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import katex from 'katex';

export const KATEX_CSS = fileURLToPath(import.meta.resolve('katex/dist/katex.css'));
export const KATEX_FONTS = join(dirname(KATEX_CSS), 'fonts');
const TEXT_FONT = fileURLToPath(
  import.meta.resolve('@fontsource/source-serif-4/files/source-serif-4-latin-400-normal.woff2'),
);
const TEXT_FACE = `@font-face{font-family:Text;src:url(/_astro/text.AAAAAAAA.woff2)format("woff2");unicode-range:U+??,U+2000-206F}`;

export const formula = (tex: string): string => katex.renderToString(tex, { output: 'htmlAndMathml' });

/** A small built site as Astro leaves it: one page, one stylesheet, a script that names it, hashed names. */
export async function scratchSite(body: string): Promise<string> {
  const site = await mkdtemp(join(tmpdir(), 'subset-fonts-'));
  const assets = join(site, '_astro');
  await mkdir(assets);
  for (const file of await readdir(KATEX_FONTS)) await cp(join(KATEX_FONTS, file), join(assets, hashed(file)));
  await cp(TEXT_FONT, join(assets, 'text.AAAAAAAA.woff2'));
  const css = await readFile(KATEX_CSS, 'utf8');
  const rebased = css.replace(/url\(fonts\/([^)]+)\)/g, (_, file: string) => `url(/_astro/${hashed(file)})`);
  await writeFile(join(assets, 'page.AAAAAAAA.css'), TEXT_FACE + rebased);
  await writeFile(join(assets, 'script.AAAAAAAA.js'), 'load("/_astro/page.AAAAAAAA.css")');
  await writeFile(
    join(site, 'index.html'),
    `<!doctype html><html><head><link rel="stylesheet" href="/_astro/page.AAAAAAAA.css">` +
      `<link rel="preload" href="/_astro/KaTeX_Main-Regular.AAAAAAAA.woff2">` +
      `<script src="/_astro/script.AAAAAAAA.js"></script></head><body>${body}</body></html>`,
  );
  return site;
}

function hashed(file: string): string {
  const ending = extname(file);
  return `${basename(file, ending)}.AAAAAAAA${ending}`;
}
