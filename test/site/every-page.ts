import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type * as Axe from 'axe-core';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { desk, phone, useBrowser, useVisit, type Visits } from './browser.ts';
import { onePageOfEachKind, pages, pagesWithEveryClass, threePagesOfEachKind } from './built.ts';
import { layOut, layoutFaults, unfold } from './layout.ts';
import { third } from './part.ts';

declare global {
  interface Window {
    readonly axe: typeof Axe;
  }
}

const AXE = readFileSync(fileURLToPath(import.meta.resolve('axe-core/axe.min.js')), 'utf8');
/** The rules of axe whose outcome depends on the colours: the slowest of all. */
const colourRules = ['color-contrast', 'link-in-text-block'];
/** A4 less the margins that browsers print with. */
const paper = { width: 718, height: 1000 };

/** Colours come from the style sheet by class: pages that hold every class between them stand for all, and a few more. */
const judgedForColours = new Set([...threePagesOfEachKind, ...pagesWithEveryClass()]);

const faults = (page: Page, onPaper = false): Promise<string[]> => page.evaluate(layoutFaults, onPaper);

/** Of the colour rules only, or of all others. */
const violations = (page: Page, which: 'colours' | 'all else'): Promise<string[]> =>
  page.evaluate(
    async ({ rules, enabled }) => {
      const { violations: found } = await window.axe.run(document, {
        resultTypes: ['violations'],
        preload: false,
        ...(enabled
          ? { runOnly: rules }
          : { rules: Object.fromEntries(rules.map((rule) => [rule, { enabled: false }])) }),
      });
      return found.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.target.join(' ')}: ${node.html}`));
    },
    { rules: colourRules, enabled: which === 'colours' },
  );

/** Most of axe's time goes into the many small boxes of formulas: a few stand for all. */
const thinOutFormulas = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const formula of [...document.querySelectorAll('.katex')].slice(4)) formula.replaceChildren();
  });

/** The pages of evidence and sources repeat their rows by the hundred; what has a class of its own stands elsewhere too. */
const thinOutRows = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const row of [...document.querySelectorAll('tbody tr')].slice(40)) row.remove();
  });

const paperColour = (page: Page): Promise<string> =>
  page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);

/** One visit to each page, in which it is laid out in each way and judged. */
export function lookAtPages(which: 1 | 2 | 3): void {
  const visits = useBrowser();
  describe.each(third(pages, which))('%s', (path) => {
    lookAtPage(visits, path);
  });
}

function lookAtPage(visits: Visits, path: string): void {
  const visit = useVisit(visits, path, { viewport: phone, colorScheme: 'light' });
  /** Dark colours move nothing; a page of each kind shows that. */
  const schemes = onePageOfEachKind.includes(path) ? (['dark', 'light'] as const) : (['light'] as const);

  test('fits a phone, folded and unfolded', async () => {
    const { page } = visit();
    await page.evaluate(layOut);
    expect(await faults(page)).toEqual([]);
    await page.evaluate(unfold);
    for (const colorScheme of schemes) {
      await page.emulateMedia({ colorScheme });
      expect(await faults(page)).toEqual([]);
    }
  });

  test('fits a wide window', async () => {
    const { page } = visit();
    await page.setViewportSize(desk);
    for (const colorScheme of schemes) {
      await page.emulateMedia({ colorScheme });
      expect(await faults(page)).toEqual([]);
    }
  });

  test('fits on paper', async () => {
    const { page } = visit();
    await page.emulateMedia({ media: 'print' });
    await page.setViewportSize(paper);
    expect(await faults(page, true)).toEqual([]);
  });

  test('has no fault that axe finds, colours aside', async () => {
    const { page } = visit();
    // First, so that the next layout is a small one.
    await thinOutFormulas(page);
    await page.emulateMedia({ media: 'screen', colorScheme: 'light' });
    await page.setViewportSize(phone);
    await page.evaluate(AXE);
    expect(await violations(page, 'all else')).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(phone.width);
  });

  if (judgedForColours.has(path)) {
    test('can be read in light colours and in dark', async () => {
      const { page } = visit();
      await thinOutRows(page);
      const papers = new Set<string>();
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme });
        papers.add(await paperColour(page));
        expect({ colorScheme, found: await violations(page, 'colours') }).toEqual({ colorScheme, found: [] });
      }
      expect(papers.size).toBe(2);
    });
  }

  test('loads without an error, a warning, a failed request or one to another host', () => {
    expect(visit().requests).toContain(path);
    expect(visit().complaints).toEqual([]);
  });
}
