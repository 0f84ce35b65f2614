import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { useVisits } from './browser.ts';
import { pagesWithEveryClass, threePagesOfEachKind } from './built.ts';
import { CalculatorOnPage } from './calculator.ts';

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

async function expectSeen(calculator: CalculatorOnPage): Promise<void> {
  for (const part of ['[data-row]', '[data-of]', '.katex-html', 'noscript code']) {
    const box = await calculator.root.locator(part).first().boundingBox();
    expect({ part, wide: (box?.width ?? 0) > 3 }).toEqual({ part, wide: true });
  }
  for (const { width } of await picture(calculator, '[data-drawing] svg')) expect(width).toBeGreaterThan(150);
  for (const { width, paths } of await picture(calculator, '[data-plot] svg')) {
    expect(width).toBeGreaterThan(300);
    expect(paths).toBeGreaterThan(3);
  }
}

/** What the numbers are, and that they are there on every page, html.test.ts checks. */
const looked = new Set([...threePagesOfEachKind, ...pagesWithEveryClass()]);

describe.each([...looked])('%s without JavaScript', (path) => {
  test('shows its prose, working, results, figure and plot, and nothing that does not answer', () =>
    visiting(
      path,
      async ({ page, requests }) => {
        expect(requests.filter((request) => request.endsWith('.js'))).toEqual([]);
        expect((await page.locator('main').innerText()).length).toBeGreaterThan(100);
        expect(await deadControls(page)).toEqual([]);
        const calculators = await page.locator('crab-calculator').count();
        for (let k = 0; k < calculators; k++) await expectSeen(new CalculatorOnPage(page, k));
        for (const question of await page.locator('crab-question').all()) {
          await question.getByText('The answer', { exact: true }).click();
          expect(await question.getByText('Its working, line by line').isVisible()).toBe(true);
        }
      },
      { javaScriptEnabled: false },
    ));
});
