import { describe, expect, test } from 'vitest';
import { calculatorOf } from '../../calculators/catalogue.ts';
import { readInputs } from '../../calculators/inputs.ts';
import { toQuery } from '../../calculators/permalink.ts';
import { address, useVisits } from './browser.ts';
import { CalculatorOnPage, calculatorPage, expectRefused, expectWhole } from './calculator.ts';

const visiting = useVisits();

function queryOf(id: string, texts: Readonly<Record<string, string>>): string {
  const calculator = calculatorOf(id);
  const inputs = readInputs(calculator.given, texts);
  if (!inputs.ok) throw new Error(inputs.problems.map(({ message }) => message).join(' '));
  return toQuery(calculator, inputs.entries);
}

const id = 'wheel-speeds';
const broken = {
  'a text that is no value': { query: 'r=abc', field: 'r', text: 'abc', note: '' },
  'a value out of range': { query: 'r=-3mm', field: 'r', text: '-3mm', note: '' },
  'nothing at all': { query: 'r=', field: 'r', text: '', note: '' },
  'a tag': { query: 'r=%3Cimg%20src%3Dx%3E', field: 'r', text: '<img src=x>', note: '' },
};

describe('a broken address', () => {
  test.each(Object.entries(broken))('%s stays in its field, with a sentence beside it', (_, { query, field, text }) =>
    visiting(`${calculatorPage(id)}?${query}`, async ({ page }) => {
      const shown = await new CalculatorOnPage(page).shown();
      expect(shown.fields[field]).toBe(text);
      expectRefused(shown, shown);
      expect(await page.locator('.problem *').count()).toBe(0);
      expect(new URL(page.url()).search).toBe(`?${query}`);
    }),
  );

  test.each([
    ['edition=99', /edition “99”.*this is edition \d/],
    ['edition=', /edition “”/],
    ['foo=1', /“foo”, which this calculator does not take/],
    ['r=1mm&r=2mm', /gives r more than once; the first is used/],
    ['__proto__=1', /“__proto__”, which/],
    [`${'y'.repeat(300)}=1`, /which this calculator does not take/],
  ])('?%s is told above the calculator', (query, note) =>
    visiting(`${calculatorPage(id)}?${query}`, async ({ page }) => {
      const shown = await new CalculatorOnPage(page).shown();
      expectWhole(shown);
      if (query.startsWith('r=')) expect(shown.fields['r']).toBe('1 mm');
      const problems = page.locator('[data-link-problems]');
      expect(await problems.innerText()).toMatch(note);
      expect(await problems.isVisible()).toBe(true);
    }),
  );

  test('the unit chosen for a result is in the address, and a link opens with it', () =>
    visiting(calculatorPage('roll-ratio'), async ({ page }) => {
      const unit = page.locator('[data-unit-of="omega_roll"]');
      await unit.evaluate((select: HTMLSelectElement) => {
        select.value = 'rad/s';
        select.dispatchEvent(new Event('change', { bubbles: true }));
      });
      await expect.poll(() => new URL(page.url()).search, { timeout: 10_000 }).toContain('&omega_roll=rad/s');
      const shown = page.locator('[data-of="omega_roll"]').first();
      const before = await shown.innerText();
      expect(before).toMatch(/rad\/s$/);
      await page.reload();
      await expect.poll(() => unit.inputValue()).toBe('rad/s');
      await expect.poll(() => shown.innerText()).toBe(before);
    }));

  test('what the link left out has its usual value', () =>
    visiting(`${calculatorPage(id)}?r=2.36in`, async ({ page }) => {
      const shown = await new CalculatorOnPage(page).shown();
      expectWhole(shown);
      expect(shown.fields).toMatchObject({ r: '2.36 in', R: '200 mm', n: '3' });
      expect(await page.locator('[data-link-problems]').innerText()).toBe('');
    }));
});

test('the address of a working can be copied', () =>
  visiting(
    calculatorPage(id),
    async ({ page }) => {
      const calculator = new CalculatorOnPage(page);
      await calculator.give({ r: '2.36 in' });
      await page.getByRole('button', { name: 'Copy the address' }).click();
      const copied = await page.evaluate(() => navigator.clipboard.readText());
      expect(copied).toBe(new URL(`${calculatorPage(id)}?${queryOf(id, { r: '2.36 in' })}`, address).href);
      await page.getByText('Copied.').waitFor();
    },
    { permissions: ['clipboard-read', 'clipboard-write'] },
  ));
