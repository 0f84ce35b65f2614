import { cp, mkdir, mkdtemp, readdir, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import katex from 'katex';
import { modules } from '../../src/modules.ts';

const SOURCE = fileURLToPath(new URL('hand-written/', import.meta.url));
const ICON = fileURLToPath(new URL('../../src/public/icon.svg', import.meta.url));
const KATEX = dirname(fileURLToPath(import.meta.resolve('katex/dist/katex.min.css')));
const FORMULA = /\\\((.*?)\\\)|\\\[(.*?)\\\]/gs;

/** The page written by hand, ready to serve: formulas set once by KaTeX, beside KaTeX's own stylesheet and fonts. */
export async function layOutHandWritten(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'crabwise-by-hand-'));
  const page = await readFile(join(SOURCE, 'page.html'), 'utf8');
  await writeFile(join(folder, 'index.html'), withFormulas(page.replace('{module}', lastModule())));
  for (const name of ['page.css', 'page.js']) await cp(join(SOURCE, name), join(folder, name));
  await cp(ICON, join(folder, 'icon.svg'));
  await mkdir(join(folder, 'katex'));
  await cp(join(KATEX, 'katex.min.css'), join(folder, 'katex', 'katex.min.css'));
  await mkdir(join(folder, 'katex', 'fonts'));
  for (const font of await readdir(join(KATEX, 'fonts'))) {
    if (font.endsWith('.woff2')) await cp(join(KATEX, 'fonts', font), join(folder, 'katex', 'fonts', font));
  }
  return folder;
}

/** The module that the lesson of the bench stands in. */
const lastModule = (): string => modules.at(-1)?.title ?? '';

/** Sets what stands between `\(` and `\)` in the line, and between `\[` and `\]` on a line of its own. */
export function withFormulas(html: string): string {
  return html.replace(FORMULA, (_, inLine: string | undefined, display: string | undefined) => {
    const tex = (inLine ?? display ?? '').replace(/\s+/g, ' ');
    return katex.renderToString(tex, { displayMode: display !== undefined, throwOnError: true });
  });
}
