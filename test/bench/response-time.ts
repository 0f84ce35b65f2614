import type { Browser, Page } from 'playwright-core';
import { onSlowedPage, SLOW_DOWN } from './slowed-page.ts';

/** The input that is changed, on every page measured. */
export const CHANGED = '[name="theta"]';

export interface Change {
  /** Milliseconds from the input event to the last change of a number or of the figure. */
  readonly answered: number;
  /** Milliseconds from the input event to the second animation frame, by when the first has been painted. */
  readonly framed: number;
}

/** The browser compiles what runs often: the first answers are slower, and reported apart. */
export const WARM_UP = 20;
const CHANGES = 100;
const PLOTS = 6;

/**
 * Types one heading after the other, each as one input event of the browser's own, and times the answers; those of the
 * warm-up come first.
 */
export const answerTimes = (browser: Browser, address: string, slowDown = SLOW_DOWN): Promise<Change[]> =>
  timesOf(browser, address, WARM_UP + CHANGES, watchAnswer, slowDown);

/** Milliseconds from the input event to the new plot: at first with Plot still to fetch. */
export const plotTimes = (browser: Browser, address: string): Promise<number[]> =>
  timesOf(browser, address, PLOTS, watchPlot);

type Watch<T> = (field: string) => Promise<T>;

function timesOf<T>(
  browser: Browser,
  address: string,
  count: number,
  watch: Watch<T>,
  slowDown = SLOW_DOWN,
): Promise<T[]> {
  const type = async (page: Page): Promise<T[]> => {
    await page.goto(address, { waitUntil: 'networkidle' });
    await page.locator(CHANGED).scrollIntoViewIfNeeded();
    const times: T[] = [];
    for (let k = 0; k < count; k++) times.push(await timed(page, k, watch));
    return times;
  };
  return onSlowedPage(browser, ({ page }) => type(page), slowDown);
}

/** @param watch starts to watch before the input comes: the browser takes orders in turn. */
async function timed<T>(page: Page, k: number, watch: Watch<T>): Promise<T> {
  const watched = page.evaluate(watch, CHANGED);
  await page.locator(CHANGED).evaluate((field: HTMLInputElement) => {
    field.focus();
    field.select();
  });
  await page.keyboard.insertText(String(headingAt(k)));
  return watched;
}

/**
 * Headings all round the circle, a good way apart, none twice. From one to the next is an odd number of degrees always, so
 * that no two neighbours lie alike to three wheels: every number must change.
 */
const headingAt = (k: number): number => ((k * 77) % 360) - 179;

/** Runs in the page. */
function watchAnswer(field: string): Promise<Change> {
  const root = document.querySelector(field)?.closest('crab-calculator, form');
  const figure = root?.querySelector('[data-drawing], #figure');
  const numbers = root?.querySelector('[data-results], #results');
  if (!root || !figure || !numbers) throw new Error('There is no calculator here.');
  const before = [figure.innerHTML, numbers.textContent];
  return new Promise((resolve, reject) => {
    let start = NaN;
    let last = NaN;
    const observer = new MutationObserver(() => {
      last = performance.now();
    });
    observer.observe(root, { subtree: true, childList: true, characterData: true, attributes: true });
    const end = (): void => {
      const change = { answered: last - start, framed: performance.now() - start };
      observer.disconnect();
      const stood = figure.innerHTML === before[0] || numbers.textContent === before[1];
      if (stood) reject(new Error('The figure or the numbers did not follow the input within two frames.'));
      else resolve(change);
    };
    const begin = (): void => {
      start = performance.now();
      requestAnimationFrame(() => requestAnimationFrame(end));
    };
    addEventListener('input', begin, { capture: true, once: true });
  });
}

/** Runs in the page. */
function watchPlot(field: string): Promise<number> {
  const plot = document.querySelector(field)?.closest('crab-calculator')?.querySelector('[data-plot]');
  if (!plot) throw new Error('There is no plot here.');
  return new Promise((resolve) => {
    const begin = (): void => {
      const start = performance.now();
      const observer = new MutationObserver(() => {
        observer.disconnect();
        resolve(performance.now() - start);
      });
      observer.observe(plot, { childList: true });
    };
    addEventListener('input', begin, { capture: true, once: true });
  });
}
