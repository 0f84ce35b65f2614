import type { Browser, CDPSession } from 'playwright-core';

/** As much of a trace event as is read here; times are in microseconds. */
interface TraceEvent {
  readonly name: string;
  /** Processor time of the thread, which stands still while other processes run. */
  readonly tdur?: number;
  readonly args?: { readonly data?: { readonly type?: string } };
}

/** The milliseconds of processor that the page spent on each input event while something was done to it. */
export async function processorTimes(browser: Browser, doing: () => Promise<unknown>): Promise<number[]> {
  const session = await browser.newBrowserCDPSession();
  const events: TraceEvent[] = [];
  session.on('Tracing.dataCollected', ({ value }) => events.push(...(value as unknown as TraceEvent[])));
  const traceConfig = { includedCategories: ['devtools.timeline'] };
  await session.send('Tracing.start', { transferMode: 'ReportEvents', traceConfig });
  await doing();
  await endOfTrace(session);
  return events.filter(isInput).map(({ tdur }) => (tdur ?? NaN) / 1000);
}

const isInput = ({ name, args }: TraceEvent): boolean => name === 'EventDispatch' && args?.data?.type === 'input';

async function endOfTrace(session: CDPSession): Promise<void> {
  const complete = new Promise((resolve) => session.once('Tracing.tracingComplete', resolve));
  await session.send('Tracing.end');
  await complete;
  await session.detach();
}
