import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { calculatorOf, catalogue } from '../../calculators/catalogue.ts';
import { useVisits } from './browser.ts';
import { folder, pagesWith } from './built.ts';
import { CalculatorOnPage, calculatorPage, expectRefused, expectWorked } from './calculator.ts';

const visiting = useVisits();
const soon = { timeout: 10_000, interval: 20 };

/** The scripts that hold the plotting library, told by the name it gives its own drawings. */
const library = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.js') && /plot-[0-9a-f]{6}/.test(readFileSync(join(folder, file), 'utf8')))
  .map((file) => `/${file}`);

const fetched = (requests: readonly string[]): string[] => requests.filter((path) => library.includes(path));

const plot = (page: Page): Promise<string> => page.locator('[data-plot]').innerHTML();

/** How often each line of the plot changes its way: a drawn curve has many points. */
const lines = (page: Page): Promise<number[]> =>
  page
    .locator('[data-plot] svg g[aria-hidden] path, [data-plot] svg path')
    .evaluateAll((paths) => paths.map((path) => (path.getAttribute('d') ?? '').split(/[LC]/).length));

test('the plotting library is one file, by itself', () => {
  expect(library).toHaveLength(1);
});

// These wait more than they work, so several run at a time.
test.concurrent.for(catalogue)(
  '$id is plotted by the server, and again when something is chosen; only then comes the library',
  ({ id, given }, { expect }) =>
    visiting(calculatorPage(id), async ({ page, requests }) => {
      const first = await plot(page);
      expect(Math.max(...(await lines(page)))).toBeGreaterThan(30);
      expect(fetched(requests)).toEqual([]);
      const of = page.getByRole('combobox', { name: 'Result to plot' });
      await of.selectOption({ index: 1 });
      await expect.poll(() => plot(page), soon).not.toBe(first);
      expect(fetched(requests)).toEqual(library);
      const chosen = await of.evaluate((select: HTMLSelectElement) => select.selectedOptions[0]?.text ?? '');
      expect(await page.locator('[data-plot] svg').textContent()).toContain(chosen);

      const against = page.getByRole('combobox', { name: 'Given to plot against' });
      const second = await plot(page);
      const other = await against.locator('option:not(:checked)').first().textContent();
      await against.selectOption({ label: other ?? '' });
      await expect.poll(() => plot(page), soon).not.toBe(second);
      expect(await page.locator('[data-plot] svg').textContent()).toContain(other);
      expect(given.map(({ means }) => means)).toContain(other);
      expect(await page.locator('[data-plot] svg').innerHTML()).not.toMatch(/NaN|undefined|Infinity/);
    }),
);

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
        expect(await plot(page)).not.toMatch(/NaN|undefined|Infinity/);
      }
    }
    expectWorked(await calculator.shown());
  }));

test('an input redraws it; one that cannot be used does not', () =>
  visiting(calculatorPage('wheel-speeds'), async ({ page, requests }) => {
    const calculator = new CalculatorOnPage(page);
    const first = await plot(page);
    const shown = await calculator.shown();
    await page.waitForTimeout(600);
    expect(fetched(requests)).toEqual([]);
    expectRefused(await calculator.give({ v: 'abc' }), shown);
    await page.waitForTimeout(600);
    expect(fetched(requests)).toEqual([]);
    expect(await plot(page)).toBe(first);
    await calculator.give({ v: '1 m/s' });
    await expect.poll(() => plot(page), soon).not.toBe(first);
    expect(fetched(requests)).toEqual(library);
  }));

test.each(pagesWith('class="calculator embedded"').slice(0, 1))('a lesson never fetches the library: %s', (path) =>
  visiting(path, async ({ page, requests }) => {
    const calculator = new CalculatorOnPage(page);
    const { changed } = await calculator.changeOne();
    expectWorked(changed);
    await expect.poll(() => page.locator('[data-status]').first().textContent()).not.toBe('');
    await page.waitForTimeout(300);
    expect(fetched(requests)).toEqual([]);
  }),
);
