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

const textOf = (page: string): string => readFileSync(fileAt(page) ?? '', 'utf8');

const documents = new Map<string, Document>();

/** A page as the server wrote it. */
export function documentOf(page: string): Document {
  const known = documents.get(page) ?? parseHTML(textOf(page)).document;
  documents.set(page, known);
  return known;
}

/** The pages with a piece of HTML in them. */
export const pagesWith = (html: string): string[] => pages.filter((page) => textOf(page).includes(html));

/** Pages with only some of the examples: all are made alike, and what they show stands on other pages too. */
export const fewExamples = (all: readonly string[]): string[] =>
  all.filter((page) => !page.startsWith('/examples/') || pages.indexOf(page) % 5 === 0);

/** One page of each kind, by the first part of its address. */
export const onePageOfEachKind: readonly string[] = [
  ...new Map(pages.map((page) => [page.split('/')[1], page])).values(),
];
