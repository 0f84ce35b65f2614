import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { parseHTML } from 'linkedom';
import { inject } from 'vitest';

export const folder = inject('folder');

/** The addresses of all pages of the built site, `/lessons/` for lessons/index.html. */
export const pages: readonly string[] = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.html'))
  .map(
    (file) =>
      `/${file
        .split(sep)
        .join('/')
        .replace(/(^|\/)index\.html$/, '$1')}`,
  )
  .sort();

if (!pages.includes('/')) throw new Error(`There is no page in ${folder}.`);

/** The file that a host gives for an address without its query, if there is one. */
export function fileAt(pathname: string): string | undefined {
  const path = join(folder, decodeURIComponent(pathname));
  const file = pathname.endsWith('/') ? join(path, 'index.html') : path;
  return existsSync(file) ? file : undefined;
}

const documents = new Map<string, Document>();

/** A page as the server wrote it. */
export function documentOf(page: string): Document {
  const known = documents.get(page) ?? parseHTML(readFileSync(fileAt(page) ?? '', 'utf8')).document;
  documents.set(page, known);
  return known;
}

/** The pages with an element that the selector finds. */
export const pagesWith = (selector: string): string[] =>
  pages.filter((page) => documentOf(page).querySelector(selector) !== null);
