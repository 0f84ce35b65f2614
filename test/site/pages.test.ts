import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type * as Axe from 'axe-core';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { desk, phone, useBrowser, useVisit } from './browser.ts';
import { fewExamples, onePageOfEachKind, pages } from './built.ts';
import { layOut, layoutFaults, unfold } from './layout.ts';

declare global {
  interface Window {
    readonly axe: typeof Axe;
  }
}

const AXE = readFileSync(fileURLToPath(import.meta.resolve('axe-core/axe.min.js')), 'utf8');
/** The rules of axe whose outcome depends on the colours. */
const colourRules = ['color-contrast', 'link-in-text-block'];
/** A4 less the margins that browsers print with. */
const paper = { width: 718, height: 1000 };

const visits = useBrowser();
const judgedByAxe = new Set(fewExamples(pages));

const faults = (page: Page, onPaper = false): Promise<string[]> => page.evaluate(layoutFaults, onPaper);

const violations = (page: Page, rules?: string[]): Promise<string[]> =>
  page.evaluate(async (runOnly) => {
    const only = runOnly ? { runOnly } : {};
    const { violations: found } = await window.axe.run(document, {
      resultTypes: ['violations'],
      preload: false,
      ...only,
    });
    return found.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.target.join(' ')}: ${node.html}`));
  }, rules);

/** Most of axe's time goes into the many small boxes of formulas: a few stand for all. */
const thinOutFormulas = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const formula of [...document.querySelectorAll('.katex')].slice(12)) formula.replaceChildren();
  });

const paperColour = (page: Page): Promise<string> =>
  page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);

describe.each(pages)('%s', (path) => {
  const visit = useVisit(visits, path, { viewport: phone, colorScheme: 'light' });

  test('fits a phone, folded and unfolded', async () => {
    const { page } = visit();
    await page.evaluate(layOut);
    expect(await faults(page)).toEqual([]);
    await page.evaluate(unfold);
    expect(await faults(page)).toEqual([]);
  });

  test('fits a wide window', async () => {
    const { page } = visit();
    await page.setViewportSize(desk);
    expect(await faults(page)).toEqual([]);
  });

  test('fits on paper', async () => {
    const { page } = visit();
    await page.emulateMedia({ media: 'print' });
    await page.setViewportSize(paper);
    expect(await faults(page, true)).toEqual([]);
  });

  if (judgedByAxe.has(path)) {
    test('has no fault that axe finds, in light colours and in dark', async () => {
      const { page } = visit();
      await page.emulateMedia({ media: 'screen', colorScheme: 'light' });
      await page.setViewportSize(phone);
      await thinOutFormulas(page);
      await page.evaluate(AXE);
      const light = await violations(page);
      const paperInLight = await paperColour(page);
      await page.emulateMedia({ colorScheme: 'dark' });
      expect(await paperColour(page)).not.toBe(paperInLight);
      expect([...light, ...(await violations(page, colourRules))]).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(phone.width);
    });
  }

  test('loads without an error, a warning, a failed request or one to another host', () => {
    expect(visit().requests).toContain(path);
    expect(visit().complaints).toEqual([]);
  });
});

/** Dark colours move nothing; a page of each kind shows that. */
describe.each(onePageOfEachKind)('%s in dark colours', (path) => {
  const visit = useVisit(visits, path, { viewport: phone, colorScheme: 'dark' });

  test('fits a phone and a wide window', async () => {
    const { page } = visit();
    await page.evaluate(layOut);
    expect(await faults(page)).toEqual([]);
    await page.setViewportSize(desk);
    expect(await faults(page)).toEqual([]);
  });
});
