import { expect, test } from 'vitest';
import { calculatorOf } from '../../calculators/catalogue.ts';
import { useVisits } from './browser.ts';
import { pagesWith } from './built.ts';
import { CalculatorOnPage, calculatorPage, expectRefused, expectWorked } from './calculator.ts';
import { fetchedLibrary, library, plotOf } from './plotted.ts';

const visiting = useVisits();
const soon = { timeout: 10_000, interval: 20 };

test('the plotting library is one file, by itself', () => {
  expect(library).toHaveLength(1);
});

test('a choice alone fetches the library and plots again', () =>
  visiting(calculatorPage('wheel-speeds'), async ({ page, requests }) => {
    const first = await plotOf(page);
    await page.waitForTimeout(600);
    expect(fetchedLibrary(requests)).toEqual([]);
    await page.getByRole('combobox', { name: 'Given to plot against' }).selectOption({ index: 0 });
    await expect.poll(() => plotOf(page), soon).not.toBe(first);
    expect(fetchedLibrary(requests)).toEqual(library);
    const second = await plotOf(page);
    await page.getByRole('combobox', { name: 'Result to plot' }).selectOption({ index: 1 });
    await expect.poll(() => plotOf(page), soon).not.toBe(second);
  }));

test('every result can be plotted, and against every given', () =>
  visiting(calculatorPage('speed-envelope'), async ({ page }) => {
    const calculator = new CalculatorOnPage(page);
    await calculator.give({ Omega: '60 deg/s' });
    const choices = {
      of: calculatorOf('speed-envelope').results,
      against: ['alpha', 'R', 'r', 'omega_max', 'Omega', 'theta'],
    };
    for (const [name, values] of Object.entries(choices)) {
      const select = page.locator(`[data-plot-${name}]`);
      for (const value of values) {
        await select.selectOption(value);
        const label = await select.locator('option:checked').textContent();
        await expect.poll(() => page.locator('[data-plot] svg').textContent(), soon).toContain(label);
        expect(await plotOf(page)).not.toMatch(/NaN|undefined|Infinity/);
      }
    }
    expectWorked(await calculator.shown());
  }));

test('an input redraws it; one that cannot be used does not', () =>
  visiting(calculatorPage('wheel-speeds'), async ({ page, requests }) => {
    const calculator = new CalculatorOnPage(page);
    const first = await plotOf(page);
    const shown = await calculator.shown();
    await page.waitForTimeout(600);
    expect(fetchedLibrary(requests)).toEqual([]);
    expectRefused(await calculator.give({ v: 'abc' }), shown);
    await page.waitForTimeout(600);
    expect(fetchedLibrary(requests)).toEqual([]);
    expect(await plotOf(page)).toBe(first);
    await calculator.give({ v: '1 m/s' });
    await expect.poll(() => plotOf(page), soon).not.toBe(first);
    expect(fetchedLibrary(requests)).toEqual(library);
  }));

test.each(pagesWith('class="calculator embedded"').slice(0, 1))('a lesson never fetches the library: %s', (path) =>
  visiting(path, async ({ page, requests }) => {
    const calculator = new CalculatorOnPage(page);
    const { changed } = await calculator.changeOne();
    expectWorked(changed);
    await expect.poll(() => page.locator('[data-status]').first().textContent()).not.toBe('');
    await page.waitForTimeout(300);
    expect(fetchedLibrary(requests)).toEqual([]);
  }),
);
