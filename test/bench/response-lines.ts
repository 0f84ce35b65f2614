import type { Browser } from 'playwright-core';
import type { Addresses } from './addresses.ts';
import { processorTimes } from './processor-time.ts';
import { answerTimes, plotTimes, WARM_UP, type Change } from './response-time.ts';
import { SLOW_DOWN } from './slowed-page.ts';
import { median, percentile } from './statistics.ts';
import { note, under, type Line } from './table.ts';

const BUDGET_MS = 8;
const MOST_SERIES = 3;

/** The lesson's calculator on its own page, with a plot; and the one whose figure takes the most working out. */
const CALCULATORS = ['wheel-speeds', 'speed-envelope'];

/** How soon a calculator answers a changed input. */
export async function responseLines(browser: Browser, { site, lesson, handWritten }: Addresses): Promise<Line[]> {
  const lines = await answerLines(browser, 'lesson', lesson);
  for (const id of CALCULATORS) {
    const address = `${site}calculators/${id}/`;
    lines.push(...(await answerLines(browser, id, address)), await plotLine(browser, address));
  }
  const byHand = await answerTimes(browser, handWritten);
  return [...lines, note('page by hand: input to numbers and figure, 50th and 95th', spread(answered(warm(byHand))))];
}

async function answerLines(browser: Browser, page: string, address: string): Promise<Line[]> {
  const changes = await quietestSeries(browser, address);
  const times = await processorTimes(browser, () => answerTimes(browser, address, 1));
  const slowed = warm(times).map((time) => time * SLOW_DOWN);
  return [
    under(`${page}: input to numbers and figure, 95th of 100`, slowest(changes), BUDGET_MS, ' ms'),
    note('  50th and 95th', spread(answered(warm(changes)))),
    note(`  the ${WARM_UP} before them, which warm the page up`, spread(answered(changes.slice(0, WARM_UP)))),
    note('  input to second animation frame, 50th and 95th', spread(warm(changes).map(({ framed }) => framed))),
    note(`  ${SLOW_DOWN} × processor time at full speed, 50th and 95th`, spread(slowed)),
  ];
}

/** Other processes make times longer, never shorter: a series over the budget is measured again, and the best counts. */
async function quietestSeries(browser: Browser, address: string): Promise<Change[]> {
  let best = await answerTimes(browser, address);
  for (let k = 1; k < MOST_SERIES && slowest(best) >= BUDGET_MS; k++) {
    const again = await answerTimes(browser, address);
    if (slowest(again) < slowest(best)) best = again;
  }
  return best;
}

async function plotLine(browser: Browser, address: string): Promise<Line> {
  const [first = NaN, ...later] = await plotTimes(browser, address);
  return note(
    '  input to new plot: the first, then the median',
    `${first.toFixed(0)} and ${median(later).toFixed(0)} ms`,
  );
}

const answered = (changes: readonly Change[]): number[] => changes.map((change) => change.answered);

const warm = <T>(series: readonly T[]): T[] => series.slice(WARM_UP);

const slowest = (changes: readonly Change[]): number => percentile(answered(warm(changes)), 0.95);

const spread = (times: readonly number[]): string =>
  `${percentile(times, 0.5).toFixed(1)} and ${percentile(times, 0.95).toFixed(1)} ms`;
