import type { Locator, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { calculatorOf } from '../../calculators/catalogue.ts';
import { useVisits } from './browser.ts';
import { onePageOfEachKind, pagesWith } from './built.ts';
import { CalculatorOnPage, expectWorked } from './calculator.ts';

const visiting = useVisits();
const turning = pagesWith('data-turn').filter((page) => page.startsWith('/calculators/'));

const everyKey: readonly (readonly [string, number])[] = [
  ['Home', 0],
  ['ArrowLeft', 1],
  ['ArrowUp', 2],
  ['ArrowRight', 1],
  ['ArrowDown', 0],
  ['ArrowRight', -1],
  ['Shift+ArrowRight', -16],
  ['PageUp', 14],
  ['PageDown', -16],
  ['End', 180],
  ['ArrowLeft', -179],
  ['ArrowRight', -180],
];

/** Marks what should take the focus, in the order of the page, and gives how many there are. */
const numberStops = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const can = 'a[href], button, input, select, summary, [tabindex="0"]';
    const radios = new Set<string>();
    const stops = [...document.querySelectorAll<HTMLElement>(can)].filter((one) => {
      if (one.matches(':disabled') || !one.checkVisibility()) return false;
      if (!(one instanceof HTMLInputElement) || one.type !== 'radio') return true;
      return !radios.has(one.name) && radios.add(one.name);
    });
    stops.forEach((one, k) => one.setAttribute('data-stop', String(k)));
    return stops.length;
  });

/** Where the focus is: the number of the stop, and whether it can be seen. */
const focus = (page: Page): Promise<{ stop: number; seen: boolean }> =>
  page.evaluate(() => {
    const one = document.activeElement;
    const box = one?.getBoundingClientRect();
    const { outlineStyle, outlineWidth } = getComputedStyle(one ?? document.body);
    const onScreen =
      box !== undefined && box.right > 0 && box.left < innerWidth && box.bottom > 0 && box.top < innerHeight;
    return {
      stop: Number(one?.getAttribute('data-stop') ?? NaN),
      seen: onScreen && outlineStyle !== 'none' && parseFloat(outlineWidth) >= 1,
    };
  });

/** The first stop leads past the masthead. */
async function expectSkipLink(page: Page): Promise<void> {
  await page.keyboard.press('Tab');
  const skip = page.getByRole('link', { name: 'To the content' });
  expect(await skip.evaluate((link) => link === document.activeElement)).toBe(true);
  expect((await skip.boundingBox())?.x).toBeGreaterThanOrEqual(0);
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  expect(await page.evaluate(() => document.activeElement?.closest('main, footer') !== null)).toBe(true);
}

test.each(onePageOfEachKind)(
  '%s: Tab reaches everything in order and shows where it is; the masthead can be skipped',
  (path) =>
    visiting(path, async ({ page }) => {
      const stops = await numberStops(page);
      const walk = async (from: number, to: number): Promise<void> => {
        const reached = [];
        for (let k = from; k < to; k++) {
          await page.keyboard.press('Tab');
          reached.push(await focus(page));
        }
        expect(reached).toEqual(reached.map((_, k) => ({ stop: from + k, seen: true })));
      };
      // Long tables repeat the same stops: there the middle is left out.
      const [start, end] = stops > 100 ? [60, stops - 20] : [stops, stops];
      await walk(0, start);
      await page.locator(`[data-stop="${end - 1}"]`).focus();
      await walk(end, stops);
      await page.reload();
      await expectSkipLink(page);
    }),
);

test('there are figures to turn', () => {
  expect(turning.length).toBeGreaterThan(0);
});

/** All figures turn by one script: the first is tried in every way, of the others whether they are tied to it. */
describe.each(turning)('the figure of %s', (path) => {
  const isFirst = path === turning[0];

  test(isFirst ? 'turns by the keys of a slider, by dragging and by its field' : 'turns by keys and by its field', () =>
    visiting(path, async ({ page }) => {
      const handle = await takeHold(page);
      await turnByKeys(handle, isFirst ? everyKey : everyKey.slice(0, 2));
      if (isFirst) await turnByDragging(handle);
      await turnByField(handle);
    }),
  );
});

/** The given that the figure turns is the one whose field follows its keys. */
async function takeHold(page: Page): Promise<Handle> {
  const calculator = new CalculatorOnPage(page);
  const before = await calculator.shown();
  await page.getByRole('slider').focus();
  await page.keyboard.press('Home');
  await page.keyboard.press('PageUp');
  const after = await calculator.shown();
  const turned = Object.keys(after.fields).filter((name) => after.fields[name] !== before.fields[name]);
  expect(turned).toHaveLength(1);
  const [given = ''] = turned;
  expect(calculatorOf(after.id).given.find(({ name }) => name === given)?.quantity).toBe('angle');
  return new Handle(page, calculator, given);
}

async function turnByKeys(handle: Handle, keys: typeof everyKey): Promise<void> {
  for (const [key, angle] of keys) {
    await handle.page.keyboard.press(key);
    await handle.expectAt(angle, key);
  }
}

async function turnByDragging(handle: Handle): Promise<void> {
  const { mouse } = handle.page;
  const box = await handle.slider.boundingBox();
  if (!box) throw new Error('The figure is not there.');
  const [x, y, reach] = [box.x + box.width / 2, box.y + box.height / 2, box.width / 3];
  const to = (left: number, up: number): Promise<void> => mouse.move(x - left * reach, y - up * reach, { steps: 3 });
  await to(1, 0);
  await mouse.down();
  await handle.expectAt(90, 'pressed on the left');
  await to(1, 1);
  await handle.expectAt(45, 'dragged to the upper left');
  await to(-1, 0);
  await handle.expectAt(-90, 'dragged to the right');
  await mouse.up();
  await to(0, 1);
  await handle.expectAt(-90, 'let go');
}

/** The ends of a slider are half a turn either way, whatever the field says. */
async function turnByField(handle: Handle): Promise<void> {
  for (const [text, angle] of [
    ['270 deg', -90],
    ['-200°', 160],
    ['1 turn', 0],
  ] as const) {
    await handle.calculator.give({ [handle.given]: text });
    expect({ text, angle: await handle.told() }).toEqual({ text, angle });
  }
}

class Handle {
  readonly page: Page;
  readonly calculator: CalculatorOnPage;
  readonly given: string;

  constructor(page: Page, calculator: CalculatorOnPage, given: string) {
    this.page = page;
    this.calculator = calculator;
    this.given = given;
  }

  get slider(): Locator {
    return this.page.getByRole('slider');
  }

  /** The angle a screen reader is told; it follows the drawing, which is fetched after the page wakes. */
  async told(): Promise<number> {
    return Number(await this.slider.getAttribute('aria-valuenow'));
  }

  async expectAt(angle: number, after: string): Promise<void> {
    await expect.poll(async () => ({ after, angle: await this.told() }), { timeout: 10_000 }).toEqual({ after, angle });
    const shown = await this.calculator.shown();
    expect(shown.fields[this.given]).toBe(`${String(angle).replace('-', '−')}°`);
    expectWorked(shown);
  }
}
