import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { quantityOf } from '../../calculators/quantity/units.ts';
import type { QuestionData } from '../../src/live/question-data.ts';
import { phone, useBrowser, useVisit } from './browser.ts';
import { pages, pagesWith } from './built.ts';
import { CalculatorOnPage, expectRefused, expectWorked } from './calculator.ts';
import { layOut, layoutFaults } from './layout.ts';
import { QuestionOnPage, typed } from './question.ts';
import type { Shown } from './shown.ts';

const asking = pagesWith('<crab-question');
const answering = pagesWith('class="calculator embedded"');
const lessons = pages.filter((page) => asking.includes(page) || answering.includes(page));

const right = 'Yes, that is it.';

const visits = useBrowser();

test('there are calculators and questions to try', () => {
  expect(answering.length).toBeGreaterThan(0);
  expect(asking.length).toBeGreaterThan(0);
});

/** One visit to each lesson, in which its calculators and questions are tried. */
describe.each(lessons)('%s', (path) => {
  const visit = useVisit(visits, path);

  if (answering.includes(path)) {
    test('its calculators answer, each for itself', async () => {
      const { page } = visit();
      const count = await page.locator('crab-calculator').count();
      const calculators = Array.from({ length: count }, (_, k) => new CalculatorOnPage(page, k));
      const shownBut = (own: CalculatorOnPage): Promise<Shown[]> =>
        Promise.all(calculators.filter((one) => one !== own).map((one) => one.shown()));
      expect(count).toBeGreaterThan(0);
      for (const calculator of calculators) {
        const before = await calculator.shown();
        expectWorked(before);
        const others = await shownBut(calculator);
        const { name, changed: first } = await calculator.changeOne();
        const changed = await calculator.withSpreads(first);
        expectWorked(changed);
        expectRefused(await calculator.give({ [name]: 'abc' }), changed);
        const link = await calculator.root.locator('a[data-link]').getAttribute('href');
        expect(link).toContain(`/calculators/${before.id}/?edition=`);
        const after = await calculator.withSpreads(await calculator.give({ [name]: before.fields[name] ?? '' }));
        expect({ ...after, figure: '' }).toEqual({ ...before, figure: '' });
        expect(await shownBut(calculator)).toEqual(others);
      }
      expect(new URL(page.url()).search).toBe('');
    });
  }

  if (asking.includes(path)) tryQuestions(() => visit().page);

  test('through all of this nothing broke in the page', () => {
    expect(visit().complaints).toEqual([]);
  });
});

function tryQuestions(page: () => Page): void {
  const eachQuestion = async (look: (question: QuestionOnPage, data: QuestionData) => Promise<void>): Promise<void> => {
    const roots = await page().locator('crab-question').all();
    expect(roots.length).toBeGreaterThan(0);
    for (const root of roots) {
      const question = new QuestionOnPage(root);
      await look(question, await question.data());
    }
  };

  test('the printed answer is right, in any unit and by either way of asking', () =>
    eachQuestion(async (question, data) => {
      const printed = await question.printed();
      const units = quantityOf(data.quantity).units.filter(({ symbol }) => symbol !== '' || data.unit === '');
      const answers = [printed, ...units.map(({ symbol }) => typed(data.answer, { ...data, unit: symbol }))];
      expect(await question.verdicts(answers)).toEqual(answers.map(() => right));
      expect(await question.answerByKeys(printed.replace(/^(\S+).*$/, '$1'))).toBe(right);
    }));

  test('a usual mistake is told which it is', () =>
    eachQuestion(async (question, data) => {
      const verdicts = await question.verdicts(data.mistakes.map(({ value }) => typed(value, data)));
      expect(verdicts).toEqual(data.mistakes.map(({ says }) => `Not yet. ${says}`));
    }));

  test('another number, a wrong sign and nonsense are told apart', () =>
    eachQuestion(async (question, data) => {
      const mistaken = (value: number): boolean =>
        data.mistakes.some((one) => Math.abs(one.value - value) <= 0.05 * Math.abs(value));
      const far = [7.31, 13.7, 29.3].map((factor) => factor * (data.answer || 1)).find((value) => !mistaken(value));
      const expected: [string, unknown][] = [
        [typed(far ?? NaN, data), expect.stringMatching(/^Not yet, and not by one of the usual mistakes/)],
        ['abc', 'That cannot be read: “abc” is not a number.'],
        ['', 'That cannot be read: nothing is filled in.'],
        ['5 parsecs', expect.stringMatching(/^That cannot be read: “parsecs” is not a unit/)],
        [await question.printed(), right],
      ];
      if (data.answer !== 0 && !mistaken(-data.answer))
        expected.push([typed(-data.answer, data), 'The size is right; look at the sign.']);
      const verdicts = await question.verdicts(expected.map(([text]) => text));
      expect(verdicts).toEqual(expected.map(([, says]) => says));
    }));

  test('a long word in a verdict breaks', async () => {
    await page().setViewportSize(phone);
    await page().evaluate(layOut);
    const question = new QuestionOnPage(page().locator('crab-question').first());
    expect(await question.verdicts(['y'.repeat(150)])).toEqual([expect.stringContaining('yyy')]);
    const faults = await page().evaluate(layoutFaults, false);
    expect(faults.filter((fault) => !fault.startsWith('text wider than its field'))).toEqual([]);
  });
}
