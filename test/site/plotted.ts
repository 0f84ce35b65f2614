import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { folder } from './built.ts';

/** The scripts that hold the plotting library, told by the name it gives its own drawings. */
export const library: readonly string[] = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.js') && /plot-[0-9a-f]{6}/.test(readFileSync(join(folder, file), 'utf8')))
  .map((file) => `/${file}`);

export const fetchedLibrary = (requests: readonly string[]): string[] =>
  library.filter((path) => requests.includes(path));

export const plotOf = (page: Page): Promise<string> => page.locator('[data-plot]').innerHTML();

export const plotText = (page: Page): Promise<string | null> => page.locator('[data-plot] svg').textContent();

/** How often each line of the plot changes its way: a drawn curve has many points. */
export const plotLines = (page: Page): Promise<number[]> =>
  page
    .locator('[data-plot] svg g[aria-hidden] path, [data-plot] svg path')
    .evaluateAll((paths) => paths.map((path) => (path.getAttribute('d') ?? '').split(/[LC]/).length));
