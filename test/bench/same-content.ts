import type { Browser, Page } from 'playwright-core';
import { onSlowedPage } from './slowed-page.ts';
import { CHANGED } from './response-time.ts';

/** What a page says. */
export interface Content {
  /** The sentences of the lesson without its calculator, spaces left out. */
  readonly prose: string;
  /** Every formula and symbol in reading order, without those in rows of worked numbers. */
  readonly formulas: readonly string[];
  /** The table of results at several headings. */
  readonly results: readonly string[];
  /** Without formulas and rows of worked numbers. */
  readonly words: number;
  /** How many shapes the figure has. */
  readonly shapes: number;
}

const HEADINGS = [37, -150, 0];

export const contentOf = (browser: Browser, address: string): Promise<Content> =>
  onSlowedPage(browser, async ({ page }) => {
    await page.goto(address, { waitUntil: 'networkidle' });
    const said = await page.evaluate(readContent);
    const results: string[] = [];
    for (const heading of HEADINGS) results.push(await resultsAt(page, heading));
    return { ...said, results };
  });

async function resultsAt(page: Page, heading: number): Promise<string> {
  await page.locator(CHANGED).fill(String(heading));
  return (await page.locator(':is([data-results] tbody, #results) td').allInnerTexts()).join('; ');
}

/** Where two pages differ; undefined when they say the same. */
export function difference(ours: Content, theirs: Content): string | undefined {
  const pairs = [
    ['prose', [ours.prose], [theirs.prose]],
    ['formula', ours.formulas, theirs.formulas],
    ['results', ours.results, theirs.results],
  ] as const;
  for (const [what, mine, other] of pairs) {
    const k = Array.from({ length: Math.max(mine.length, other.length) }, (_, i) => i).find(
      (i) => mine[i] !== other[i],
    );
    if (k !== undefined) return `${what}: ${whereApart(mine[k] ?? 'none', other[k] ?? 'none')}`;
  }
  return undefined;
}

/** The first characters in which two texts differ, and a few before them. */
function whereApart(a: string, b: string): string {
  let from = 0;
  while (from < a.length && a[from] === b[from]) from++;
  const [mine, other] = [a, b].map((text) => text.slice(Math.max(0, from - 15), from + 25));
  return `“${mine ?? ''}”, by hand “${other ?? ''}”`;
}

/** Runs in the page. */
function readContent(): Omit<Content, 'results'> {
  const textWithout = (root: Element | null, left: string): string => {
    if (!root) throw new Error('There is no article here.');
    const copy = root.cloneNode(true) as Element;
    for (const element of copy.querySelectorAll(left)) element.remove();
    return copy.textContent;
  };
  const article = document.querySelector('main > article');
  const formulas = [...document.querySelectorAll('main .katex-mathml')].filter((one) => !one.closest('[data-row]'));
  const words = textWithout(document.body, '.katex, script, noscript, [data-row], .working .scroller')
    .split(/\s+/)
    .filter(Boolean);
  return {
    prose: textWithout(article, '.katex, .calculator, #calculator').replace(/\s+/g, ''),
    formulas: formulas.map((one) => textWithout(one, 'annotation').replace(/[\s\u2061-\u2064]/g, '')),
    words: words.length,
    shapes: document.querySelectorAll(':is([data-drawing], #figure) svg *').length,
  };
}
