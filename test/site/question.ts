import type { Locator } from 'playwright-core';
import { quantityOf, unitOf } from '../../calculators/quantity/units.ts';
import type { QuestionData } from '../../src/live/question-data.ts';

/** A question of a lesson, as a test handles it. */
export class QuestionOnPage {
  readonly #root: Locator;

  constructor(root: Locator) {
    this.#root = root;
  }

  async data(): Promise<QuestionData> {
    return JSON.parse((await this.#root.locator('script').textContent()) ?? '') as QuestionData;
  }

  /** The answer as the page prints it, `47.75 rpm`. */
  async printed(): Promise<string> {
    const text = await this.#root.locator('details p').textContent();
    return (text ?? '').trim().replace(/\. Its working.*$/s, '');
  }

  /** Puts in answers, has each checked, and gives the verdicts. */
  verdicts(texts: readonly string[]): Promise<string[]> {
    return this.#root.evaluate((root, all) => {
      const [field] = root.getElementsByTagName('input');
      const [button] = root.getElementsByTagName('button');
      return all.map((text) => {
        if (!field || !button || field.disabled || button.disabled) throw new Error('The question does not answer.');
        field.value = text;
        button.click();
        return root.querySelector('[role="status"]')?.textContent ?? '';
      });
    }, texts);
  }

  async answerByKeys(text: string): Promise<string> {
    const field = this.#root.getByRole('textbox', { name: 'Your answer' });
    await field.fill(text);
    await field.press('Enter');
    return this.#root.getByRole('status').innerText();
  }
}

/** A value in SI as a reader would type it. */
export const typed = (si: number, { quantity, unit }: QuestionData): string =>
  `${Number((si / unitOf(quantityOf(quantity), unit).factor).toPrecision(6))} ${unit}`;
