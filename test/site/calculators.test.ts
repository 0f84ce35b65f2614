import { describe, expect, test } from 'vitest';
import { catalogue } from '../../calculators/catalogue.ts';
import { givenText, readInputs } from '../../calculators/inputs.ts';
import { useBrowser, useVisit } from './browser.ts';
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
import type { Shown } from './shown.ts';
import { otherTexts } from './texts.ts';

const visits = useBrowser();

const nonsense = ['abc', '', '1e999', '--5', '<script>alert(1)</script>', 'x'.repeat(3000)];
const mostlyNonsense = ['-3', '5 kg', '1,234', '1e300', '1/0'];
/** What every field is tried with; one field of each calculator is tried with everything. */
const shortList = ['abc', '-3'];

describe.each(catalogue)('$id', ({ id, given, results, limits }) => {
  const visit = useVisit(visits, calculatorPage(id));
  const onPage = (): CalculatorOnPage => new CalculatorOnPage(visit().page);
  const usual = Object.fromEntries(given.map((one) => [one.name, givenText(one, one.usual)]));
  const typed = given.filter((one) => !one.options);
  let first: Shown;

  test('there and back: other values change everything they should, the first bring everything back', async () => {
    first = await onPage().shown();
    expectWhole(first);
    expect(first.fields).toEqual(usual);
    const changed = await onPage().give(otherInputs(id));
    expectWhole(changed);
    expect(changed.results).not.toEqual(first.results);
    if (first.figure !== '') await onPage().figureOtherThan(first.figure);
    const { caption } = await onPage().shown();
    expect(caption === first.caption).toBe(first.caption === '');
    expect(await onPage().give(usual)).toEqual(first);
  });

  test('follows every given in any unit', async () => {
    for (const { name, text } of given.flatMap((one) => otherTexts(one).map((text) => ({ name: one.name, text })))) {
      let shown = await onPage().give({ ...usual, [name]: text });
      if (!isWorking(judged(id, shown.fields))) {
        // What stands then is from one change earlier: begin at the usual values.
        expect(await onPage().give(usual)).toEqual(first);
        shown = await onPage().give({ [name]: text });
      }
      if (!expectFollowed(shown, first)) continue;
      expect({ name, text, steps: shown.steps }).not.toEqual({ name, text, steps: first.steps });
    }
  });

  test('a text that is no value leaves a sentence beside its field, and nothing else changes', async () => {
    let good = await onPage().give(usual);
    for (const [k, { name, means }] of typed.entries()) {
      for (const text of k === 0 ? [...nonsense, ...mostlyNonsense] : shortList) {
        const shown = await onPage().give({ [name]: text });
        if (!nonsense.includes(text) && expectFollowed(shown, good)) good = shown;
        if (shown === good) continue;
        expectRefused(shown, good);
        // A number in its range may still not go with the others: then the sentence is the calculator's own.
        if (readInputs(given, shown.fields).ok) continue;
        expect(shown.problems[name]).toContain(`(${means}): give `);
        expect(shown.problems[name]).toMatch(/ from .* to .*, such as /);
        expect(shown.problems[name]).toContain(usual[name]);
      }
      good = await onPage().give({ [name]: usual[name] ?? '' });
      expectWorked(good);
    }
    expect(await visit().page.locator('.problem *').count()).toBe(0);
  });

  test('where the model ends, it says what the core says', async () => {
    let before = await onPage().give(usual);
    for (const { at } of limits) {
      const shown = await onPage().give({ ...usual, ...at });
      if (expectFollowed(shown, before)) before = shown;
    }
    expectWhole(await onPage().give(usual));
  });

  test('a unit chosen for a result changes that result only', async () => {
    for (const [name, { unit }] of new Map(first.results.map((result) => [result.name, result]))) {
      if (unit === null) continue;
      const shown = await onPage().chooseUnit(name);
      expectWorked(shown);
      const changed = shown.results.filter(({ text }, k) => text !== first.results[k]?.text);
      expect([...new Set(changed.map((result) => result.name))]).toEqual([name]);
      await onPage().chooseUnit(name, unit);
    }
    expect(await onPage().shown()).toEqual(first);
  });

  test('a ± typed with a number reaches the results', async () => {
    const shares = onPage().root.locator('[data-shares]');
    for (const { name } of typed.filter(({ list, whole }) => !list && !whole).slice(0, 3)) {
      const texts = { ...usual, [name]: withSpread(usual[name] ?? '') };
      const working = judged(id, texts);
      if (!isWorking(working)) throw new Error(`no working with a ±: ${name}`);
      await onPage().give(texts);
      const reached = working.steps.filter(({ step, spread }) => !step.list && spread && results.includes(step.name));
      const expected = Object.fromEntries(reached.map(({ step, text }) => [step.name, text]));
      await expect.poll(async () => resultTexts(await onPage().shown()), { timeout: 10_000 }).toMatchObject(expected);
      expect(Object.values(expected).filter((text) => !text.includes('±'))).toEqual([]);
      if (reached.length > 0) await expect.poll(() => shares.innerText()).toContain('%');
    }
    expect(await onPage().give(usual)).toEqual(first);
    expect(await shares.innerText()).toBe('');
  });

  test('through all of this nothing broke in the page', async () => {
    expect(visit().complaints).toEqual([]);
    expect(await visit().page.locator('crab-calculator').innerText()).not.toMatch(/NaN|undefined/);
  });
});

const resultTexts = ({ results }: Shown): Record<string, string> =>
  Object.fromEntries(results.map(({ name, text }) => [name, text]));

/** `60 ± 0.01 mm` for `60 mm`. */
const withSpread = (text: string): string => text.replace(/^([−\d.]+)/, '$1 ± 0.01');
