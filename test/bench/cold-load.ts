import type { Browser, CDPSession } from 'playwright-core';
import { onSlowedPage } from './slowed-page.ts';
import { median } from './statistics.ts';

interface Transfer {
  /** As the browser calls it: Document, Stylesheet, Script, Font, Image. */
  readonly kind: string;
  /** The compressed content alone. */
  content: number;
  /** The content and the headers before it. */
  wire: number;
}

export interface Load {
  readonly requests: number;
  /** All that came over the wire. */
  readonly wire: number;
  /** Compressed content by kind. */
  readonly content: Readonly<Record<string, number>>;
  /** Milliseconds until the largest thing in view was painted. */
  readonly largestPaint: number;
  /** Milliseconds by which tasks were longer than 50 ms. */
  readonly blocking: number;
}

/** The median of several loads, each number for itself. The first load warms the host up and does not count. */
export async function coldLoad(browser: Browser, address: string, times = 5): Promise<Load> {
  await loadOnce(browser, address);
  const loads: Load[] = [];
  for (let k = 0; k < times; k++) loads.push(await loadOnce(browser, address));
  const of = (take: (load: Load) => number): number => median(loads.map(take));
  const kinds = new Set(loads.flatMap(({ content }) => Object.keys(content)));
  return {
    requests: of((load) => load.requests),
    wire: of((load) => load.wire),
    content: Object.fromEntries([...kinds].map((kind) => [kind, of(({ content }) => content[kind] ?? 0)])),
    largestPaint: of((load) => load.largestPaint),
    blocking: of((load) => load.blocking),
  };
}

const loadOnce = (browser: Browser, address: string): Promise<Load> =>
  onSlowedPage(browser, async ({ page, session }) => {
    const transfers = await listen(session);
    await page.goto(address, { waitUntil: 'networkidle' });
    const times = await page.evaluate(paintTimes);
    const all = [...transfers.values()];
    const content: Record<string, number> = {};
    for (const { kind, content: bytes } of all) content[kind] = (content[kind] ?? 0) + bytes;
    return { requests: all.length, wire: all.reduce((sum, { wire }) => sum + wire, 0), content, ...times };
  });

async function listen(session: CDPSession): Promise<Map<string, Transfer>> {
  const transfers = new Map<string, Transfer>();
  session.on('Network.responseReceived', ({ requestId, type, response }) => {
    if (response.status !== 200) throw new Error(`${response.status}: ${response.url}`);
    transfers.set(requestId, { kind: type, content: Number(response.headers['content-length']), wire: NaN });
  });
  session.on('Network.loadingFinished', ({ requestId, encodedDataLength }) => {
    const transfer = transfers.get(requestId);
    if (transfer) transfer.wire = encodedDataLength;
  });
  await session.send('Network.enable');
  return transfers;
}

/** Runs in the page. */
function paintTimes(): Promise<{ largestPaint: number; blocking: number }> {
  const times = { largestPaint: 0, blocking: 0 };
  new PerformanceObserver((list) => {
    for (const { startTime } of list.getEntries()) times.largestPaint = startTime;
  }).observe({ type: 'largest-contentful-paint', buffered: true });
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) times.blocking += duration - 50;
  }).observe({ type: 'longtask', buffered: true });
  return new Promise((resolve) => setTimeout(() => resolve(times), 100));
}
