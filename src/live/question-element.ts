import { parseEntry } from '../../calculators/quantity/parse.ts';
import { siOf } from '../../calculators/si-of.ts';
import type { QuestionData } from './question-data.ts';

const tolerance = 0.02;

const near = (a: number, b: number): boolean => Math.abs(a - b) <= tolerance * Math.abs(b) + 1e-9;

/** What to say to an answer; a wrong one that a usual mistake gives is told which. */
export function verdict(data: QuestionData, text: string): string {
  const parsed = parseEntry(text, data.quantity, data.unit);
  if (!parsed.ok) return `That cannot be read: ${parsed.problem}.`;
  const value = Number(siOf(parsed.entry, data.quantity));
  if (near(value, data.answer)) return 'Yes, that is it.';
  const mistake = data.mistakes.find((one) => near(value, one.value));
  if (mistake) return `Not yet. ${mistake.says}`;
  if (near(-value, data.answer)) return 'The size is right; look at the sign.';
  return 'Not yet, and not by one of the usual mistakes. Work it through, or open the answer.';
}

/** A question whose answer the reader types. */
class QuestionElement extends HTMLElement {
  #listening: AbortController | undefined;

  connectedCallback(): void {
    const json = this.querySelector('script[type="application/json"]')?.textContent;
    const input = this.querySelector('input');
    const button = this.querySelector('button');
    const out = this.querySelector('.verdict');
    if (!json || !input || !button || !out) return;
    const data = JSON.parse(json) as QuestionData;
    this.#listening = new AbortController();
    const { signal } = this.#listening;
    const judge = (): void => {
      out.textContent = verdict(data, input.value);
    };
    button.addEventListener('click', judge, { signal });
    input.addEventListener(
      'keydown',
      (event) => {
        if (event.key === 'Enter') judge();
      },
      { signal },
    );
    input.disabled = false;
    button.disabled = false;
    this.dataset['awake'] = '';
  }

  disconnectedCallback(): void {
    this.#listening?.abort();
  }
}

customElements.define('crab-question', QuestionElement);
