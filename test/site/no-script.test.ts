import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { useVisits } from './browser.ts';
import { documentOf, fewExamples, onePageOfEachKind, pagesWith } from './built.ts';
import { CalculatorOnPage, expectWhole, expectWorked } from './calculator.ts';

const visiting = useVisits();

/** What the reader could press or fill and get no answer from. */
const deadControls = (page: Page): Promise<string[]> =>
  page
    .locator('main :is(input[type=text], select, button):enabled')
    .evaluateAll((all) => all.filter((one) => one.checkVisibility()).map((one) => one.outerHTML));

/** How wide the picture that the selector finds is, and how many lines it has. */
const picture = (calculator: CalculatorOnPage, selector: string): Promise<{ width: number; paths: number }[]> =>
  calculator.root
    .locator(selector)
    .evaluateAll((all) =>
      all.map((svg) => ({ width: svg.getBoundingClientRect().width, paths: svg.querySelectorAll('path').length })),
    );

async function expectServed(calculator: CalculatorOnPage): Promise<void> {
  const shown = await calculator.shown();
  const whole = (await calculator.root.locator('[data-plot]').count()) > 0;
  if (whole) expectWhole(shown);
  else expectWorked(shown);
  expect(shown.results.length).toBeGreaterThan(0);
  expect(shown.steps.flatMap(({ rows }) => rows).length).toBeGreaterThan(0);
  for (const part of ['[data-row]', '[data-of]', '.katex-html', 'noscript code']) {
    const box = await calculator.root.locator(part).first().boundingBox();
    expect({ part, wide: (box?.width ?? 0) > 3 }).toEqual({ part, wide: true });
  }
  for (const { width } of await picture(calculator, '[data-drawing] svg')) expect(width).toBeGreaterThan(150);
  if (!whole) return;
  const [plot] = await picture(calculator, '[data-plot] svg');
  expect(plot?.width).toBeGreaterThan(300);
  expect(plot?.paths).toBeGreaterThan(3);
}

/** A page without elements of ours has no script at all, as html.test.ts checks; one of each kind stands for the rest. */
const readable = [...new Set([...onePageOfEachKind, ...pagesWith('<crab-')])];

describe.each(fewExamples(readable))('%s without JavaScript', (path) => {
  test('has its prose, and working and results as the core gives them, with figure and plot', () =>
    visiting(
      path,
      async ({ page, requests }) => {
        expect(requests.filter((request) => request.endsWith('.js'))).toEqual([]);
        expect((await page.locator('main').innerText()).length).toBeGreaterThan(100);
        expect(await deadControls(page)).toEqual([]);
        const calculators = documentOf(path).querySelectorAll('crab-calculator').length;
        for (let k = 0; k < calculators; k++) await expectServed(new CalculatorOnPage(page, k));
        for (const question of await page.locator('crab-question').all()) {
          await question.getByText('The answer', { exact: true }).click();
          expect(await question.getByText('Its working, line by line').isVisible()).toBe(true);
        }
      },
      { javaScriptEnabled: false },
    ));
});
