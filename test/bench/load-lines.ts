import type { Browser } from 'playwright-core';
import type { Addresses } from './addresses.ts';
import { coldLoad, type Load } from './cold-load.ts';
import { contentOf, difference } from './same-content.ts';
import { holds, note, under, type Line } from './table.ts';

const SCRIPT_BUDGET_KB = 12;
const RATIO_BUDGET = 1.25;

const kB = (bytes: number): string => (bytes / 1000).toFixed(1);

/** What a reader downloads to read the lesson, beside the same lesson written by hand. */
export async function loadLines(browser: Browser, { lesson, handWritten }: Addresses): Promise<Line[]> {
  const ours = await coldLoad(browser, lesson);
  const theirs = await coldLoad(browser, handWritten);
  const [said, saidByHand] = [await contentOf(browser, lesson), await contentOf(browser, handWritten)];
  const script = (ours.content['Script'] ?? 0) / 1000;
  return [
    under('JavaScript of the lesson until it rests, compressed', script, SCRIPT_BUDGET_KB, ' kB'),
    under('first load of the lesson ÷ of the page by hand', ours.wire / theirs.wire, RATIO_BUDGET, '', 2),
    holds('  both say the same: prose, formulas, numbers', difference(said, saidByHand)),
    note('  words and figure shapes: lesson', `${said.words} and ${said.shapes}`),
    note('  words and figure shapes: by hand', `${saidByHand.words} and ${saidByHand.shapes}`),
    ...loadNotes('lesson', ours),
    ...loadNotes('by hand', theirs),
  ];
}

function loadNotes(page: string, load: Load): Line[] {
  const kinds = Object.entries(load.content).sort(([, a], [, b]) => b - a);
  return [
    note(`  first load: ${page}`, `${kB(load.wire)} kB in ${load.requests} requests, headers counted`),
    note(`    of it`, kinds.map(([kind, bytes]) => `${kind.toLowerCase()} ${kB(bytes)}`).join(', ')),
    note(`    largest contentful paint`, `${load.largestPaint.toFixed(0)} ms`),
    note(`    total blocking time`, `${load.blocking.toFixed(0)} ms`),
  ];
}
