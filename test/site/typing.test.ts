import { expect, test } from 'vitest';
import { phone, useVisits } from './browser.ts';
import { CalculatorOnPage, calculatorPage, expectRefused, expectWhole, expectWorked } from './calculator.ts';
import { layOut, layoutFaults } from './layout.ts';

const visiting = useVisits();

test('typing key by key: what stands there at each moment is answered', () =>
  visiting(calculatorPage('wheel-speeds'), async ({ page }) => {
    const calculator = new CalculatorOnPage(page);
    const before = await calculator.shown();
    await calculator.field('r').fill('');
    expectRefused(await calculator.shown(), before);
    await calculator.field('r').pressSequentially('2.36 in');
    const shown = await calculator.shown();
    expectWhole(shown);
    // 0.6 m/s over the floor along the drive direction of wheel 1, by hand.
    const rpm = (0.6 / (2.36 * 0.0254)) * (60 / (2 * Math.PI));
    expect(shown.results.find(({ name, wheel }) => name === 'omega' && wheel === '1')?.text).toBe(
      `${rpm.toFixed(2)} rpm`,
    );
    const [wheel1] = shown.steps.find(({ name }) => name === 'omega')?.rows ?? [];
    expect(wheel1?.heard.find(({ name }) => name === 'r')?.text).toMatch(/^0\.059944/);
  }));

test('a decimal comma and a unit of another size', () =>
  visiting(calculatorPage('roll-ratio'), async ({ page }) => {
    const calculator = new CalculatorOnPage(page);
    const shown = await calculator.give({ v: '2,5', phi: '0°', r: '50 cm' });
    expectWhole(shown);
    expect(shown.results.find(({ name }) => name === 'omega_roll')?.text).toBe('47.75 rpm');
  }));

test('arrow keys move the number in a field and leave its unit', () =>
  visiting(calculatorPage('wheel-speeds'), async ({ page }) => {
    const calculator = new CalculatorOnPage(page);
    const press = async (name: string, ...keys: string[]): Promise<string> => {
      for (const key of keys) await calculator.field(name).press(key);
      const shown = await calculator.shown();
      expectWorked(shown);
      return shown.fields[name] ?? '';
    };
    expect(await press('r', 'ArrowUp')).toBe('61 mm');
    expect(await press('r', 'ArrowDown', 'ArrowDown')).toBe('59 mm');
    expect(await press('r', 'Shift+ArrowUp')).toBe('69 mm');
    expect(await press('v', 'ArrowUp')).toBe('0.61 m/s');
    expect(await press('n', 'ArrowUp')).toBe('4');
    await calculator.give({ theta: '0°' });
    expect(await press('theta', 'ArrowDown')).toBe('−1°');
  }));

test('inputs that fit no result together: the yaw rate takes all the wheel speed', () =>
  visiting(calculatorPage('speed-envelope'), async ({ page }) => {
    const calculator = new CalculatorOnPage(page);
    const before = await calculator.shown();
    const refused = await calculator.give({ Omega: '300 rpm' });
    expectRefused(refused, before);
    expect(refused.problems['Omega']).toMatch(/^Yaw rate Ω is too high: .* Give less than [\d.]+°\/s either way\.$/);
    await page.getByText('The results stand for the last numbers that could be used.').waitFor();
    expectWhole(await calculator.give({ Omega: '30 deg/s' }));
    expect(await page.getByText('The results stand for the last').isVisible()).toBe(false);
  }));

test('the sentence stands right below its field, and a long word in it breaks', () =>
  visiting(
    calculatorPage('wheel-speeds'),
    async ({ page }) => {
      const calculator = new CalculatorOnPage(page);
      await calculator.give({ r: 'y'.repeat(150) });
      await page.evaluate(layOut);
      const field = await calculator.field('r').boundingBox();
      const id = (await calculator.field('r').getAttribute('aria-describedby')) ?? '';
      const sentence = await page.locator(`[id="${id}"]`).boundingBox();
      expect((sentence?.y ?? 0) - (field?.y ?? 0) - (field?.height ?? 0)).toBeLessThan(20);
      expect(
        (await page.evaluate(layoutFaults, false)).filter((fault) => !fault.startsWith('text wider than its field')),
      ).toEqual([]);
    },
    { viewport: phone },
  ));

test('cautions come and go', () =>
  visiting(calculatorPage('roll-ratio'), async ({ page }) => {
    const calculator = new CalculatorOnPage(page);
    expect((await calculator.shown()).cautions).toEqual([]);
    expect((await calculator.give({ phi: '88°' })).cautions).toEqual([expect.stringContaining('hardly turns')]);
    expect((await calculator.give({ q: '2 m' })).cautions).toHaveLength(2);
    expect((await calculator.give({ phi: '10°', q: '6 mm' })).cautions).toEqual([]);
  }));

test('a screen reader is told the results a moment later', () =>
  visiting(calculatorPage('wheel-speeds'), async ({ page }) => {
    const calculator = new CalculatorOnPage(page);
    await calculator.give({ v: '1.2 m/s' });
    await expect.poll(() => page.locator('crab-calculator [data-status]').textContent()).toContain('191 rpm');
  }));
