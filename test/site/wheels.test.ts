import { describe, expect, test } from 'vitest';
import { catalogue } from '../../calculators/catalogue.ts';
import { desk, phone, useVisits } from './browser.ts';
import { CalculatorOnPage, calculatorPage, expectWhole } from './calculator.ts';
import { layoutFaults } from './layout.ts';
import type { Shown } from './shown.ts';

const visiting = useVisits();

/** The steps with several rows, and how many each has; the same of the results. */
const rowCounts = ({ steps, results }: Shown): number[] => [
  ...steps.map(({ rows }) => rows.length).filter((rows) => rows > 1),
  ...new Set(results.filter(({ wheel }) => wheel !== '').map(({ wheel }) => Number(wheel))),
];

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
        expect(rowCounts(shown).filter((rows) => rows > wheels)).toEqual([]);
        expect(shown.steps.map(({ rows }) => rows.length > 1)).toEqual(three.steps.map(({ rows }) => rows.length > 1));
        expect(shown.steps.flatMap(({ rows }) => (rows.length > 1 ? [rows.length] : []))).toEqual(
          three.steps.flatMap(({ rows }) => (rows.length > 1 ? [wheels] : [])),
        );
      }
      await page.setViewportSize(phone);
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
        expect(new Set(rowCounts(shown).filter((rows) => rows > 3))).toEqual(new Set(wheels > 3 ? [wheels] : []));
      }
    }));
});
