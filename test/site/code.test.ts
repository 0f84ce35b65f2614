import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { catalogue } from '../../calculators/catalogue.ts';
import type { LanguageName } from '../../src/report/code.ts';
import { address, useVisits } from './browser.ts';
import { CalculatorOnPage, calculatorPage } from './calculator.ts';
import { lines, written } from './served-calculators.ts';

const visiting = useVisits();

const block = (page: Page, name: LanguageName): Locator => page.locator(`[data-language=${name}]`);
const code = (page: Page, name: LanguageName): Promise<string | null> =>
  block(page, name).locator('[data-code]').textContent();
test.each(catalogue.slice(0, 3))(
  '$id: code follows the inputs, and what writes it comes only when it is opened',
  (one) =>
    visiting(calculatorPage(one.id), async ({ page, requests }) => {
      const site = new URL(address).origin;
      await page.context().grantPermissions(['clipboard-read', 'clipboard-write'], { origin: site });
      const { name } = await new CalculatorOnPage(page).changeOne();
      const text = await page.locator(`[name="${name}"]`).inputValue();
      await page.waitForTimeout(500);
      expect(requests.filter((path) => path.includes('code-blocks'))).toEqual([]);

      const wanted = (language: LanguageName): string => written(one, language, { [name]: text }, site);
      await block(page, 'c').locator('summary').click();
      await expect.poll(() => code(page, 'c'), { timeout: 10_000 }).toBe(wanted('c'));
      expect(wanted('c')).not.toBe(written(one, 'c', {}, site));
      expect(await code(page, 'python')).toBe(wanted('python'));
      expect(lines(await code(page, 'csv'))).toBe(wanted('csv'));

      await block(page, 'c').getByRole('button', { name: 'Copy' }).click();
      await expect.poll(() => block(page, 'c').getByRole('status').textContent()).toBe('Copied.');
      expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(wanted('c'));

      await page.locator(`[name="${name}"]`).fill('nothing that can be read');
      await page.waitForTimeout(500);
      expect(await code(page, 'c')).toBe(wanted('c'));
    }),
);
