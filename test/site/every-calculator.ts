import { isDeepStrictEqual } from 'node:util';
import { describe, expect, test } from 'vitest';
import type { Calculator, Given } from '../../calculators/calculator.ts';
import { catalogue } from '../../calculators/catalogue.ts';
import { givenText, readInputs } from '../../calculators/inputs.ts';
import { toQuery } from '../../calculators/permalink.ts';
import { address, desk, phone, useBrowser, useVisit, type Visit, type Visits } from './browser.ts';
import {
  CalculatorOnPage,
  calculatorPage,
  expectFollowed,
  expectRefused,
  expectWhole,
  expectWorked,
  isWorking,
  judged,
  otherInputs,
} from './calculator.ts';
import { layOut, layoutFaults } from './layout.ts';
import { third } from './part.ts';
import { fetchedLibrary, plotLines, plotText } from './plotted.ts';
import type { Shown } from './shown.ts';
import { otherTexts } from './texts.ts';

const nonsense = ['abc', '', '1e999', '--5', '<script>alert(1)</script>', 'x'.repeat(3000)];
const mostlyNonsense = ['-3', '5 kg', '1,234', '1e300', '1/0'];
/** What every field is tried with; one field of each calculator is tried with everything. */
const shortList = ['abc', '-3'];
const soon = { timeout: 10_000 };

/** One visit to the page of each calculator, in which everything about it that lives is tried. */
export function tryCalculators(which: 1 | 2 | 3): void {
  const visits = useBrowser();
  describe.each(third(catalogue, which))('$id', (calculator) => {
    tryCalculator(visits, calculator);
  });
}

function tryCalculator(visits: Visits, calculator: Calculator): void {
  const { id, given, results, limits } = calculator;
  const visit = useVisit(visits, calculatorPage(id));
  const onPage = (): CalculatorOnPage => new CalculatorOnPage(visit().page);
  const usual = Object.fromEntries(given.map((one) => [one.name, givenText(one, one.usual)]));
  const typed = given.filter((one) => !one.options);
  let first: Shown;

  /** Each test begins with it: the usual values bring back what was shown first. */
  const restore = async (): Promise<void> => expect(await onPage().give(usual)).toEqual(first);

  test('is there as the server made it, with a plot, and without what draws plots', async () => {
    first = await onPage().shown();
    expectWhole(first);
    expect(first.fields).toEqual(usual);
    expect(new URL(visit().page.url()).search).toBe('');
    expect(Math.max(...(await plotLines(visit().page)))).toBeGreaterThan(30);
    expect(fetchedLibrary(visit().requests)).toEqual([]);
  });

  test('there and back: other values change everything they should, the first bring everything back', async () => {
    await restore();
    const changed = await onPage().give(otherInputs(id));
    expectWhole(changed);
    expect(changed.results).not.toEqual(first.results);
    if (first.figure !== '') await onPage().figureOtherThan(first.figure);
    const { caption } = await onPage().shown();
    expect(caption === first.caption).toBe(first.caption === '');
    await restore();
  });

  test('its address follows the inputs and opens the same working elsewhere', async () => {
    await restore();
    const texts = otherInputs(id);
    const query = queryOf(calculator, texts);
    const shown = await onPage().give(texts);
    await expect.poll(() => new URL(visit().page.url()).search, soon).toBe(`?${query}`);
    const elsewhere = await visits.open(new URL(visit().page.url()).href.slice(address.length - 1));
    try {
      const opened = new CalculatorOnPage(elsewhere.page);
      await expect.poll(async () => (await opened.shown()).figure, soon).toBe(shown.figure);
      const there = await opened.shown();
      expectWhole(there);
      expect({ ...there, fields: {} }).toEqual({ ...shown, fields: {} });
      expect(queryOf(calculator, there.fields)).toBe(query);
      expect(await elsewhere.page.locator('[data-link-problems]').innerText()).toBe('');
      expect(elsewhere.complaints).toEqual([]);
    } finally {
      await visits.close(elsewhere);
    }
  });

  test('follows every given in any unit', async () => {
    await restore();
    const tries = given.flatMap((one) => otherTexts(one).map((text) => ({ name: one.name, text })));
    const after = await onPage().after(
      // Refused, it shows what stood one change earlier: the usual values first.
      tries.flatMap(({ name, text }) => [{ fields: usual }, { fields: { [name]: text } }]),
    );
    const followed = new Set<string>();
    for (const [k, { name, text }] of tries.entries()) {
      const [before, shown] = after.slice(2 * k, 2 * k + 2);
      if (!before || !shown) throw new Error(`nothing was read: ${name}`);
      expect(before).toEqual(first);
      if (!expectFollowed(shown, first) || !isDeepStrictEqual(shown.steps, first.steps)) followed.add(name);
      // Two words may stand for one value of a table.
      else
        expect({ name, text, words: given.some((one) => one.name === name && one.options) }).toMatchObject({
          words: true,
        });
    }
    expect(given.filter(({ name }) => !followed.has(name))).toEqual([]);
  });

  test('a text that is no value leaves a sentence beside its field, and nothing else changes', async () => {
    await restore();
    const tries = typed.flatMap(({ name, means }, k) => [
      ...(k === 0 ? [...nonsense, ...mostlyNonsense] : shortList).map((text) => ({ name, means, text })),
      { name, means, text: usual[name] ?? '' },
    ]);
    const after = await onPage().after(tries.map(({ name, text }) => ({ fields: { [name]: text } })));
    expect(after).toHaveLength(tries.length);
    let good = first;
    for (const [k, shown] of after.entries()) {
      const { name = '', means = '', text = '' } = tries[k] ?? {};
      if (text === usual[name]) {
        expectWorked(shown);
        good = shown;
        continue;
      }
      if (!nonsense.includes(text) && expectFollowed(shown, good)) {
        good = shown;
        continue;
      }
      expectRefused(shown, good);
      // A number in its range may still not go with the others: then the sentence is the calculator's own.
      if (readInputs(given, shown.fields).ok) continue;
      expect(shown.problems[name]).toContain(`(${means}): give `);
      expect(shown.problems[name]).toMatch(/ from .* to .*, such as /);
      expect(shown.problems[name]).toContain(usual[name]);
    }
    await onPage().give({ [typed[0]?.name ?? '']: nonsense[4] ?? '' });
    expect(await visit().page.locator('.problem *').count()).toBe(0);
  });

  test('where the model ends, it says what the core says', async () => {
    await restore();
    let before = first;
    for (const shown of await onPage().after(limits.map(({ at }) => ({ fields: { ...usual, ...at } })))) {
      if (expectFollowed(shown, before)) before = shown;
    }
  });

  test('a unit chosen for a result changes that result only', async () => {
    await restore();
    const chosen = [...new Map(first.results.map((result) => [result.name, result])).values()].filter(
      ({ unit }) => unit !== null,
    );
    const after = await onPage().after(
      chosen.flatMap(({ name, unit }) => [{ units: { [name]: null } }, { units: { [name]: unit } }]),
    );
    expect(after).toHaveLength(2 * chosen.length);
    for (const [k, shown] of after.entries()) {
      const own = k % 2 === 1;
      expectWorked(shown);
      const changed = shown.results.filter(({ text }, j) => text !== first.results[j]?.text);
      expect([...new Set(changed.map((result) => result.name))]).toEqual(own ? [] : [chosen[k / 2]?.name]);
    }
    expect(await onPage().shown()).toEqual(first);
  });

  test('a ± typed with a number reaches the results', async () => {
    await restore();
    const shares = onPage().root.locator('[data-shares]');
    for (const { name } of typed.filter(({ list, whole }) => !list && !whole).slice(0, 3)) {
      const texts = { ...usual, [name]: withSpread(usual[name] ?? '') };
      const working = judged(id, texts);
      if (!isWorking(working)) throw new Error(`no working with a ±: ${name}`);
      await onPage().give(texts);
      const reached = working.steps.filter(({ step, spread }) => !step.list && spread && results.includes(step.name));
      const expected = Object.fromEntries(reached.map(({ step, text }) => [step.name, text]));
      await expect.poll(async () => resultTexts(await onPage().shown()), soon).toMatchObject(expected);
      expect(Object.values(expected).filter((text) => !text.includes('±'))).toEqual([]);
      if (reached.length > 0) await expect.poll(() => shares.innerText()).toContain('%');
    }
    await restore();
    expect(await shares.innerText()).toBe('');
  });

  tryPlot(visit, given);
  tryRows(visit, given);

  test('through all of this nothing broke in the page', async () => {
    expect(visit().complaints).toEqual([]);
    expect(await visit().page.locator('crab-calculator').innerText()).not.toMatch(/NaN|undefined/);
  });
}

function tryPlot(visit: () => Visit, given: readonly Given[]): void {
  test('a result chosen is plotted, and against the given chosen', async () => {
    const { page } = visit();
    const of = page.locator('[data-plot-of]');
    const against = page.locator('[data-plot-against]');
    await of.selectOption({ index: 1 });
    const chosen = await of.locator('option:checked').innerText();
    await expect.poll(() => plotText(page), soon).toContain(chosen);
    expect(fetchedLibrary(visit().requests)).toHaveLength(1);
    const other = (await against.locator('option:not(:checked)').first().textContent()) ?? '';
    expect(given.map(({ means }) => means)).toContain(other);
    await against.selectOption({ label: other });
    await expect.poll(() => plotText(page), soon).toContain(other);
    expect(await page.locator('[data-plot] svg').innerHTML()).not.toMatch(/NaN|undefined|Infinity/);
  });
}

function tryRows(visit: () => Visit, given: readonly Given[]): void {
  const onPage = (): CalculatorOnPage => new CalculatorOnPage(visit().page);

  if (given.some(({ name }) => name === 'n')) {
    test('a row for each wheel: three, five, three again, eight; eight fit a phone', async () => {
      const counts = [3, 5, 3, 8];
      const after = await onPage().after(counts.map((n) => ({ fields: { n: String(n) } })));
      const [three] = after;
      if (!three) throw new Error('Nothing was read.');
      expect(after.map(rowCounts)).toEqual(counts.map((n) => rowCounts(three).map(() => n)));
      after.forEach(expectWhole);
      await visit().page.setViewportSize(phone);
      await visit().page.evaluate(layOut);
      expect(await visit().page.evaluate(layoutFaults, false)).toEqual([]);
      await visit().page.setViewportSize(desk);
      expect(await onPage().give({ n: '3' })).toEqual(three);
    });
  }

  const [list] = given.filter((one) => one.list);
  if (list) {
    test('a row for each number given', async () => {
      const counts = [5, 3, 4];
      const texts = counts.map((n) => Array.from({ length: n }, (_, k) => k / 2).join(', '));
      const after = await onPage().after(texts.map((text) => ({ fields: { [list.name]: text } })));
      after.forEach(expectWhole);
      expect(after.map((shown) => [...new Set(rowCounts(shown))])).toEqual(counts.map((n) => [n]));
    });
  }
}

const resultTexts = ({ results }: Shown): Record<string, string> =>
  Object.fromEntries(results.map(({ name, text }) => [name, text]));

/** How many rows the steps with several rows have. */
const rowCounts = ({ steps }: Shown): number[] => steps.map(({ rows }) => rows.length).filter((rows) => rows > 1);

/** `60 ± 0.01 mm` for `60 mm`. */
const withSpread = (text: string): string => text.replace(/^([−\d.]+)/, '$1 ± 0.01');

function queryOf(calculator: Calculator, texts: Readonly<Record<string, string>>): string {
  const inputs = readInputs(calculator.given, texts);
  if (!inputs.ok) throw new Error(inputs.problems.map(({ message }) => message).join(' '));
  return toQuery(calculator, inputs.entries);
}
