import { describe, expect, test } from 'vitest';
import { catalogue } from '../../calculators/catalogue.ts';
import { usualEntries, givenText } from '../../calculators/inputs.ts';
import { useVisits } from './browser.ts';
import {
  CalculatorOnPage,
  calculatorPage,
  expectFollowed,
  expectRefused,
  expectWhole,
  expectWorked,
  judged,
} from './calculator.ts';
import type { Shown } from './shown.ts';
import { otherTexts } from './texts.ts';

const visiting = useVisits();

const nonsense = ['abc', '', '1e999', '--5', '<script>alert(1)</script>', 'x'.repeat(3000)];
const mostlyNonsense = ['-3', '5 kg', '1,234', '1e300', '1/0'];
/** What every field is tried with; one field of each calculator is tried with everything. */
const shortList = ['abc', '', '1e999', '-3', '5 kg'];

describe.each(catalogue)('$id', (calculator) => {
  const { id, given } = calculator;
  const usual = Object.fromEntries(
    given.map((one) => [one.name, givenText(one, usualEntries(given)[one.name] ?? one.usual)]),
  );
  const typed = given.filter((one) => !one.options);

  test('there and back: another value changes everything it should, the first brings everything back', () =>
    visiting(calculatorPage(id), async ({ page }) => {
      const calculator = new CalculatorOnPage(page);
      const first = await calculator.shown();
      expectWhole(first);
      expect(first.fields).toEqual(usual);
      const others = Object.fromEntries(given.map((one) => [one.name, otherTexts(one)[0] ?? '']));
      const changed = await changedWithout(calculator, others, first);
      expect(changed.results).not.toEqual(first.results);
      expect(changed.caption === first.caption).toBe(first.caption === '');
      if (first.figure !== '') await calculator.figureOtherThan(first.figure);
      const back = await calculator.give(usual);
      expect(back).toEqual(first);
    }));

  test('follows every given in any unit', () =>
    visiting(calculatorPage(id), async ({ page }) => {
      const calculator = new CalculatorOnPage(page);
      const first = await calculator.shown();
      for (const { name, text } of given.flatMap((one) => otherTexts(one).map((text) => ({ name: one.name, text })))) {
        const shown = await calculator.give({ ...usual, [name]: text });
        if (!expectFollowed(shown, first)) continue;
        expect({ name, text, steps: shown.steps }).not.toEqual({ name, text, steps: first.steps });
      }
    }));

  test('a text that is no value leaves a sentence beside its field, and nothing else changes', () =>
    visiting(calculatorPage(id), async ({ page }) => {
      const calculator = new CalculatorOnPage(page);
      let good = await calculator.shown();
      for (const [k, { name, means, unit }] of typed.entries()) {
        for (const text of k === 0 ? [...nonsense, ...mostlyNonsense] : shortList) {
          const shown = await calculator.give({ [name]: text });
          if (!nonsense.includes(text) && expectFollowed(shown, good)) good = shown;
          if (shown === good) continue;
          expectRefused(shown, good);
          expect(shown.problems[name]).toContain(`(${means}): give `);
          expect(shown.problems[name]).toMatch(/ from .* to .*, such as /);
          expect(unit === '' || shown.problems[name]?.includes(usual[name] ?? '')).toBe(true);
        }
        good = await calculator.give({ [name]: usual[name] ?? '' });
        expectWorked(good);
      }
      expect(await page.locator('.problem *').count()).toBe(0);
      expect(await page.locator('crab-calculator').innerText()).not.toMatch(/NaN|undefined|Infinity/);
    }));

  test('where the model ends, it says what the core says', () =>
    visiting(calculatorPage(id), async ({ page }) => {
      const onPage = new CalculatorOnPage(page);
      let before = await onPage.shown();
      for (const { at } of calculator.limits) {
        const shown = await onPage.give({ ...usual, ...at });
        if (expectFollowed(shown, before)) before = shown;
      }
      expectWhole(await onPage.give(usual));
    }));

  test('a unit chosen for a result changes that result only', () =>
    visiting(calculatorPage(id), async ({ page }) => {
      const onPage = new CalculatorOnPage(page);
      const first = await onPage.shown();
      for (const [name, { unit }] of new Map(first.results.map((result) => [result.name, result]))) {
        if (unit === null) continue;
        const shown = await onPage.chooseUnit(name);
        expectWorked(shown);
        const changed = shown.results.filter(({ text }, k) => text !== first.results[k]?.text);
        expect([...new Set(changed.map((result) => result.name))]).toEqual([name]);
        await onPage.chooseUnit(name, unit);
      }
      expect(await onPage.shown()).toEqual(first);
    }));

  test('a ± typed with a number reaches the results', () =>
    visiting(calculatorPage(id), async ({ page }) => {
      const onPage = new CalculatorOnPage(page);
      for (const one of typed.filter(({ list, whole }) => !list && !whole)) {
        const texts = { ...usual, [one.name]: withSpread(usual[one.name] ?? '') };
        const working = judged(id, texts);
        if (!('steps' in working) || typeof working.steps === 'string') continue;
        const expected = working.steps.filter(
          ({ step, spread }) => !step.list && spread && calculator.results.includes(step.name),
        );
        await onPage.give(texts);
        for (const { step, text } of expected) {
          await expect.poll(async () => resultText(await onPage.shown(), step.name), { timeout: 10_000 }).toBe(text);
          expect(text).toContain('±');
        }
        if (expected.length > 0) expect(await onPage.root.locator('[data-shares]').innerText()).toContain('%');
      }
      const plain = await onPage.give(usual);
      expectWhole(plain);
      expect(await onPage.root.locator('[data-shares]').innerText()).toBe('');
    }));
});

const resultText = ({ results }: Shown, name: string): string | undefined =>
  results.find((result) => result.name === name)?.text;

/** `60 ± 1 mm` for `60 mm`. */
const withSpread = (text: string): string => text.replace(/^([−\d.]+)/, '$1 ± 0.01');

/** Gives all the texts that leave a result, all at once if they do, else as many as do. */
async function changedWithout(
  calculator: CalculatorOnPage,
  others: Readonly<Record<string, string>>,
  first: Shown,
): Promise<Shown> {
  let texts: Record<string, string> = { ...first.fields };
  for (const [name, text] of Object.entries(others)) {
    const next = { ...texts, [name]: text };
    if ('calculator' in judged(first.id, next)) texts = next;
  }
  const shown = await calculator.give(texts);
  expectWhole(shown);
  return shown;
}
