import type { Locator } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { quantityOf, unitOf } from '../../calculators/quantity/units.ts';
import type { QuestionData } from '../../src/live/question-data.ts';
import { phone, useBrowser, useVisit } from './browser.ts';
import { pagesWith } from './built.ts';
import { layOut, layoutFaults } from './layout.ts';

const visits = useBrowser();
const asking = pagesWith('<crab-question');

class QuestionOnPage {
  readonly #root: Locator;

  constructor(root: Locator) {
    this.#root = root;
  }

  async data(): Promise<QuestionData> {
    return JSON.parse((await this.#root.locator('script').textContent()) ?? '') as QuestionData;
  }

  /** The answer as the page prints it, `47.75 rpm`. */
  async printed(): Promise<string> {
    const text = await this.#root.locator('details p').textContent();
    return (text ?? '').trim().replace(/\. Its working.*$/s, '');
  }

  /** Puts in an answer, has it checked, and gives the verdict. */
  answer(text: string): Promise<string> {
    return this.#root.evaluate((root, put) => {
      const [field] = root.getElementsByTagName('input');
      const [button] = root.getElementsByTagName('button');
      if (!field || !button || field.disabled || button.disabled) throw new Error('The question does not answer.');
      field.value = put;
      button.click();
      return root.querySelector('[role="status"]')?.textContent ?? '';
    }, text);
  }

  async answerByKeys(text: string): Promise<string> {
    const field = this.#root.getByRole('textbox', { name: 'Your answer' });
    await field.fill(text);
    await field.press('Enter');
    return this.#root.getByRole('status').innerText();
  }
}

/** A value in SI as a reader would type it. */
const typed = (si: number, { quantity, unit }: QuestionData): string =>
  `${Number((si / unitOf(quantityOf(quantity), unit).factor).toPrecision(6))} ${unit}`;

test('there are questions to test', () => {
  expect(asking.length).toBeGreaterThan(0);
});

describe.each(asking)('%s', (path) => {
  const visit = useVisit(visits, path);
  const eachQuestion = async (look: (question: QuestionOnPage, data: QuestionData) => Promise<void>): Promise<void> => {
    for (const root of await visit().page.locator('crab-question').all()) {
      const question = new QuestionOnPage(root);
      await look(question, await question.data());
    }
    expect(visit().complaints).toEqual([]);
  };

  test('the printed answer is right, in any unit and by either way of asking', () =>
    eachQuestion(async (question, data) => {
      const printed = await question.printed();
      expect(await question.answer(printed)).toBe('Yes, that is it.');
      expect(await question.answerByKeys(printed.replace(/^(\S+).*$/, '$1'))).toBe('Yes, that is it.');
      const units = quantityOf(data.quantity).units.filter(({ symbol }) => symbol !== '' || data.unit === '');
      for (const { symbol } of units) {
        expect(await question.answer(typed(data.answer, { ...data, unit: symbol }))).toBe('Yes, that is it.');
      }
    }));

  test('a usual mistake is told which it is', () =>
    eachQuestion(async (question, data) => {
      for (const { value, says } of data.mistakes) {
        expect(await question.answer(typed(value, data))).toBe(`Not yet. ${says}`);
      }
    }));

  test('another number, a wrong sign and nonsense are told apart', () =>
    eachQuestion(async (question, data) => {
      const mistaken = (value: number): boolean =>
        data.mistakes.some((one) => Math.abs(one.value - value) <= 0.05 * Math.abs(value));
      const far = [7.31, 13.7, 29.3].map((factor) => factor * (data.answer || 1)).find((value) => !mistaken(value));
      expect(await question.answer(typed(far ?? NaN, data))).toMatch(/^Not yet, and not by one of the usual mistakes/);
      if (data.answer !== 0 && !mistaken(-data.answer)) {
        expect(await question.answer(typed(-data.answer, data))).toBe('The size is right; look at the sign.');
      }
      expect(await question.answer('abc')).toBe('That cannot be read: “abc” is not a number.');
      expect(await question.answer('')).toBe('That cannot be read: nothing is filled in.');
      expect(await question.answer('5 parsecs')).toMatch(/^That cannot be read: “parsecs” is not a unit/);
      expect(await question.answer(await question.printed())).toBe('Yes, that is it.');
    }));

  test('a long word in a verdict breaks', async () => {
    const { page } = visit();
    await page.setViewportSize(phone);
    await page.evaluate(layOut);
    const question = new QuestionOnPage(page.locator('crab-question').first());
    expect(await question.answer('y'.repeat(150))).toContain('yyy');
    const faults = await page.evaluate(layoutFaults, false);
    expect(faults.filter((fault) => !fault.startsWith('text wider than its field'))).toEqual([]);
  });
});
