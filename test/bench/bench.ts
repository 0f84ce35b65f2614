import { rm } from 'node:fs/promises';
import { chromium } from 'playwright-core';
import { launchOptions } from '../../src/setup/browser.mjs';
import { serveCompressed } from './brotli-host.ts';
import { buildLines } from './build-lines.ts';
import { busyNote } from './busy.ts';
import { explain } from './explain.ts';
import { layOutHandWritten } from './hand-written.ts';
import { loadLines } from './load-lines.ts';
import { responseLines } from './response-lines.ts';
import { benchLesson, build, createScratchProject, writeLessons } from './scratch-project.ts';
import { failed, table, type Line } from './table.ts';

const say = (text: string): boolean => process.stdout.write(`${text}\n`);

const busyBefore = busyNote();
const project = await createScratchProject();
const handWritten = await layOutHandWritten();
try {
  say('Building a copy of the site with the lesson of the bench in it.');
  await writeLessons(project, 1);
  await build(project);
  const lines = [...(await browserLines()), ...(await buildLines(project))];
  say(`\n${table(lines)}\n`);
  if (busyBefore !== undefined) say(busyBefore);
  const broken = failed(lines);
  say(broken.length === 0 ? 'All budgets are kept.' : `Broken budgets: ${broken.length}.`);
  process.exitCode = broken.length === 0 ? 0 : 1;
} finally {
  for (const folder of [project.folder, handWritten]) await rm(folder, { recursive: true, force: true });
}

async function browserLines(): Promise<Line[]> {
  const [site, byHand] = [await serveCompressed(project.site), await serveCompressed(handWritten)];
  const browser = await chromium.launch(launchOptions());
  try {
    say(`\n${explain(browser.version())}`);
    const addresses = { site: site.address, lesson: site.address + benchLesson, handWritten: byHand.address };
    return [...(await loadLines(browser, addresses)), ...(await responseLines(browser, addresses))];
  } finally {
    await browser.close();
    site.close();
    byHand.close();
  }
}
