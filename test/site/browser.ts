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

/** A browser tab that serves one visit after another: to start a new one takes longer than most tests. */
interface Tab {
  readonly page: Page;
  readonly kind: string;
  visit: Visit | undefined;
}

const newVisit = (page: Page): Visit => ({ page, complaints: [], requests: [] });

/** One browser for a test file. */
export class Visits {
  #browser: Browser | undefined;
  readonly #tabs: Tab[] = [];

  async start(): Promise<void> {
    this.#browser = await chromium.launch(launchOptions());
  }

  async end(): Promise<void> {
    await this.#browser?.close();
  }

  async open(path: string, options: BrowserContextOptions = {}): Promise<Visit> {
    const kind = JSON.stringify(options);
    const free = this.#tabs.find((one) => one.kind === kind && !one.visit);
    const visit = free ? (free.visit = newVisit(free.page)) : await this.#openTab(kind, options);
    const { page } = visit;
    await page.setViewportSize(options.viewport ?? desk);
    await page.emulateMedia({ media: 'screen', colorScheme: options.colorScheme ?? 'light' });
    await page.goto(new URL(path, address).href);
    if (options.javaScriptEnabled !== false) await awake(page);
    return visit;
  }

  async #openTab(kind: string, options: BrowserContextOptions): Promise<Visit> {
    if (!this.#browser) throw new Error('The browser has not started.');
    const context = await this.#browser.newContext(options);
    context.setDefaultTimeout(15_000);
    const page = await context.newPage();
    const visit = newVisit(page);
    const tab: Tab = { page, kind, visit };
    listen(tab);
    this.#tabs.push(tab);
    return visit;
  }

  /** Leaves the page, so that nothing of it is left for the next visit. */
  async close({ page }: Visit): Promise<void> {
    await page.goto('about:blank');
    for (const tab of this.#tabs) if (tab.page === page) tab.visit = undefined;
  }
}

export function useBrowser(): Visits {
  const visits = new Visits();
  beforeAll(() => visits.start());
  afterAll(() => visits.end());
  return visits;
}

type Look = (visit: Visit) => Promise<void>;
type Visiting = (path: string, look: Look, options?: BrowserContextOptions) => Promise<void>;

/** Looks at a page; complaints fail the test. */
export function useVisits(): Visiting {
  const visits = useBrowser();
  return async (path, look, options) => {
    const visit = await visits.open(path, options);
    try {
      await look(visit);
      expect(visit.complaints).toEqual([]);
    } finally {
      await visits.close(visit);
    }
  };
}

/** One visit for all tests of a describe block; the last of them looks at its complaints. */
export function useVisit(visits: Visits, path: string, options?: BrowserContextOptions): () => Visit {
  let visit: Visit | undefined;
  beforeAll(async () => {
    visit = await visits.open(path, options);
  });
  afterAll(() => visit && visits.close(visit));
  return () => {
    if (!visit) throw new Error(`There is no visit to ${path}.`);
    return visit;
  };
}

function listen(tab: Tab): void {
  const complain = (what: string): void => void tab.visit?.complaints.push(what);
  tab.page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) complain(`${message.type()}: ${message.text()}`);
  });
  tab.page.on('pageerror', (error) => complain(`uncaught: ${error.message}`));
  tab.page.on('requestfailed', (request) => complain(`failed: ${request.url()}`));
  tab.page.on('response', (response) => {
    if (response.status() >= 400) complain(`${response.status()}: ${response.url()}`);
  });
  tab.page.on('request', (request) => {
    const url = new URL(request.url());
    if (url.protocol === 'about:') return;
    tab.visit?.requests.push(url.pathname);
    if (url.origin !== new URL(address).origin) complain(`request to another host: ${request.url()}`);
  });
}

/** Until every calculator and question of the page answers. */
async function awake(page: Page): Promise<void> {
  await page.waitForFunction(
    () => document.querySelector(':is(crab-calculator, crab-question):not([data-awake])') === null,
  );
}
