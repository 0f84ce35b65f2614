import { describe, expect, test } from 'vitest';
import { catalogue } from '../../calculators/catalogue.ts';
import { desk, phone, useVisits } from './browser.ts';
import { CalculatorOnPage, calculatorPage, expectWhole } from './calculator.ts';
import { layOut, layoutFaults } from './layout.ts';
import type { Shown } from './shown.ts';

const visiting = useVisits();

/** How many rows the steps with several rows have. */
const rowCounts = ({ steps }: Shown): number[] => steps.map(({ rows }) => rows.length).filter((rows) => rows > 1);

const byCount = catalogue.filter(({ given }) => given.some(({ name }) => name === 'n'));
const byList = catalogue.flatMap(({ id, given }) => given.filter(({ list }) => list).map(({ name }) => ({ id, name })));

test('there are calculators of both kinds to test', () => {
  expect(byCount.length).toBeGreaterThan(0);
  expect(byList.length).toBeGreaterThan(0);
});

describe.each(byCount)('$id', ({ id }) => {
  test('a row for each wheel: three, five, three again, eight', () =>
    visiting(calculatorPage(id), async ({ page }) => {
      const calculator = new CalculatorOnPage(page);
      const three = await calculator.give({ n: '3' });
      expectWhole(three);
      for (const wheels of [5, 3, 8]) {
        const shown = await calculator.give({ n: String(wheels) });
        expectWhole(shown);
        expect(rowCounts(shown)).toEqual(rowCounts(three).map(() => wheels));
      }
      await page.setViewportSize(phone);
      await page.evaluate(layOut);
      expect(await page.evaluate(layoutFaults, false)).toEqual([]);
      await page.setViewportSize(desk);
      expect(await calculator.give({ n: '3' })).toEqual(three);
    }));
});

describe.each(byList)('$id', ({ id, name }) => {
  test('a row for each number given', () =>
    visiting(calculatorPage(id), async ({ page }) => {
      const calculator = new CalculatorOnPage(page);
      for (const wheels of [5, 3, 4]) {
        const shown = await calculator.give({ [name]: Array.from({ length: wheels }, (_, k) => k / 2).join(', ') });
        expectWhole(shown);
        expect(rowCounts(shown).length).toBeGreaterThan(0);
        expect(new Set(rowCounts(shown))).toEqual(new Set([wheels]));
      }
    }));
});
