import type { Browser, CDPSession, Page } from 'playwright-core';

/** How many times slower than this machine the reader's is taken to be. */
export const SLOW_DOWN = 4;

export interface SlowedPage {
  readonly page: Page;
  readonly session: CDPSession;
}

/** Opens a page on a slow machine with nothing in its cache, and closes it afterwards. */
export async function onSlowedPage<T>(
  browser: Browser,
  use: (slowed: SlowedPage) => Promise<T>,
  rate = SLOW_DOWN,
): Promise<T> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
  try {
    const page = await context.newPage();
    const session = await context.newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate });
    return await use({ page, session });
  } finally {
    await context.close();
  }
}
