import { describe, expect, test } from 'vitest';
import { useVisits, type Visit } from './browser.ts';
import { pages, pagesWith } from './built.ts';
import { CalculatorOnPage, expectWhole, expectWorked } from './calculator.ts';

const visiting = useVisits();
const without = (path: string, look: (visit: Visit) => Promise<void>): Promise<void> =>
  visiting(path, look, { javaScriptEnabled: false });

test.each(pages)('%s can be read without JavaScript', (path) =>
  without(path, async ({ page, requests }) => {
    expect(requests.filter((request) => request.endsWith('.js'))).toEqual([]);
    expect((await page.locator('main').innerText()).length).toBeGreaterThan(100);
    const formulas = page.locator('.katex-html').filter({ visible: true });
    if (await formulas.count()) expect((await formulas.first().boundingBox())?.width).toBeGreaterThan(0);
    for (const control of await page.locator('main :is(input[type=text], select, button)').all()) {
      expect((await control.isDisabled()) || !(await control.isVisible())).toBe(true);
    }
  }),
);

describe.each(pagesWith('crab-calculator'))('%s without JavaScript', (path) => {
  test('its working and results stand there, as the core gives them, with figure and plot', () =>
    without(path, async ({ page }) => {
      const count = await page.locator('crab-calculator').count();
      for (let k = 0; k < count; k++) {
        const calculator = new CalculatorOnPage(page, k);
        const shown = await calculator.shown();
        const { full } = await calculator.root.evaluate((root) => ({ full: root.classList.contains('full') }));
        if (full) expectWhole(shown);
        else expectWorked(shown);
        expect(shown.results.length).toBeGreaterThan(0);
        expect(shown.steps.flatMap(({ rows }) => rows).length).toBeGreaterThan(0);
        expect(await calculator.root.locator('[data-row]').first().isVisible()).toBe(true);
        expect(await calculator.root.locator('[data-of]').first().isVisible()).toBe(true);
        const figure = calculator.root.locator('[data-drawing] svg');
        for (const svg of await figure.all()) expect((await svg.boundingBox())?.width).toBeGreaterThan(150);
        if (full) expect(await calculator.root.locator('[data-plot] svg path').count()).toBeGreaterThan(3);
        expect(await calculator.root.getByText('npm run --silent example').isVisible()).toBe(true);
      }
    }));
});

test.each(pagesWith('crab-question'))('%s answers its questions without JavaScript too', (path) =>
  without(path, async ({ page }) => {
    for (const question of await page.locator('crab-question').all()) {
      expect(await question.getByRole('button', { name: 'Check' }).isVisible()).toBe(false);
      await question.getByText('The answer', { exact: true }).click();
      expect(await question.getByText('Its working, line by line').isVisible()).toBe(true);
    }
  }),
);
