import { chromium, type Browser, type BrowserContextOptions, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject } from 'vitest';
import { launchOptions } from '../../src/setup/browser.mjs';

export const address = inject('address');

export const phone = { width: 390, height: 844 };
export const desk = { width: 1280, height: 900 };

export interface Visit {
  readonly page: Page;
  /** What a visitor's browser has to say against the page: errors, warnings, failed and foreign requests. */
  readonly complaints: string[];
  /** The paths asked for so far. */
  readonly requests: string[];
}

type Look = (visit: Visit) => Promise<void>;
type Visiting = (path: string, look: Look, options?: BrowserContextOptions) => Promise<void>;

/** One browser for a test file. */
export function useBrowser(): () => Browser {
  let browser: Browser | undefined;
  beforeAll(async () => {
    browser = await chromium.launch(launchOptions());
  });
  afterAll(() => browser?.close());
  return () => {
    if (!browser) throw new Error('The browser has not started.');
    return browser;
  };
}

/** Looks at a page in a browser context of its own; complaints fail the test. */
export function useVisits(): Visiting {
  const browser = useBrowser();
  return async (path, look, options) => {
    const visit = await open(browser(), path, options);
    try {
      await look(visit);
      expect(visit.complaints).toEqual([]);
    } finally {
      await visit.page.context().close();
    }
  };
}

/** One visit for all tests of a describe block; the last of them looks at its complaints. */
export function useVisit(browser: () => Browser, path: string, options?: BrowserContextOptions): () => Visit {
  let visit: Visit | undefined;
  beforeAll(async () => {
    visit = await open(browser(), path, options);
  });
  afterAll(() => visit?.page.context().close());
  return () => {
    if (!visit) throw new Error(`There is no visit to ${path}.`);
    return visit;
  };
}

async function open(browser: Browser, path: string, options: BrowserContextOptions = {}): Promise<Visit> {
  const context = await browser.newContext({ viewport: desk, ...options });
  context.setDefaultTimeout(15_000);
  const page = await context.newPage();
  const visit: Visit = { page, complaints: [], requests: [] };
  listen(visit);
  await page.goto(new URL(path, address).href);
  if (options.javaScriptEnabled !== false) await awake(page);
  return visit;
}

function listen({ page, complaints, requests }: Visit): void {
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) complaints.push(`${message.type()}: ${message.text()}`);
  });
  page.on('pageerror', (error) => complaints.push(`uncaught: ${error.message}`));
  page.on('requestfailed', (request) => complaints.push(`failed: ${request.url()}`));
  page.on('response', (response) => {
    if (response.status() >= 400) complaints.push(`${response.status()}: ${response.url()}`);
  });
  page.on('request', (request) => {
    const url = new URL(request.url());
    requests.push(url.pathname);
    if (url.origin !== new URL(address).origin) complaints.push(`request to another host: ${request.url()}`);
  });
}

/** Until every calculator and question of the page answers. */
async function awake(page: Page): Promise<void> {
  await page.waitForFunction(
    () => document.querySelector(':is(crab-calculator, crab-question):not([data-awake])') === null,
  );
}
