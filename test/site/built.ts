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

const byKind = new Map<string, string[]>();
for (const page of pages) {
  const [, kind = ''] = page.split('/');
  byKind.set(kind, [...(byKind.get(kind) ?? []), page]);
}

/** One page of each kind, by the first part of its address. */
export const onePageOfEachKind: readonly string[] = [...byKind.values()].flatMap((all) => all.slice(-1));

/** The first, the middle and the last page of each kind, where there are so many. */
export const threePagesOfEachKind: readonly string[] = [...byKind.values()].flatMap((all) => [
  ...new Set([...all.slice(0, 1), ...all.slice(all.length >> 1).slice(0, 1), ...all.slice(-1)]),
]);

const classesOf = (page: string): Set<string> =>
  new Set(
    [...textOf(page).matchAll(/<([a-z][\w-]*)|\sclass="([^"]*)"/g)].flatMap(
      (one) => one[1] ?? one[2]?.split(' ') ?? [],
    ),
  );

/** Few pages that hold every element and class of the site between them: each time the one with most of what is left. */
export function pagesWithEveryClass(): string[] {
  const held = new Map(pages.map((page) => [page, classesOf(page)]));
  const left = new Set([...held.values()].flatMap((classes) => [...classes]));
  const gain = (page: string): number => [...(held.get(page) ?? [])].filter((one) => left.has(one)).length;
  const chosen: string[] = [];
  while (left.size > 0) {
    const best = pages.reduce((a, b) => (gain(b) > gain(a) ? b : a));
    for (const one of held.get(best) ?? []) left.delete(one);
    chosen.push(best);
  }
  return chosen;
}
