import { held, printRows, printValue, type Line, type Row } from '../../calculators/line.ts';
import type { Step } from '../../calculators/calculator.ts';
import type { Value, Values } from '../../calculators/formula/evaluate.ts';

/** Changes a text only where it differs, so that the browser lays out no more than it must. */
export function setText(element: Element, text: string): void {
  if (element.textContent !== text) element.textContent = text;
}

/** Makes a list of rows as long as the wheels are many, by copying its last one. */
export function fitRows(rows: HTMLElement[], wanted: number): void {
  while (rows.length > wanted && rows.length > 1) rows.pop()?.remove();
  let last = rows[rows.length - 1];
  while (last && rows.length < wanted) {
    const copy = last.cloneNode(true) as HTMLElement;
    last.after(copy);
    rows.push(copy);
    for (const label of copy.querySelectorAll('[data-wheel]')) label.textContent = String(rows.length);
    last = copy;
  }
}

export const wheelOf = (value: Value | undefined, i: number): Value =>
  typeof value === 'object' ? (value[i] ?? NaN) : (value ?? NaN);

/** The printed lines of one step in the page. */
export class StepView {
  readonly #step: Step;
  readonly #line: Line | undefined;
  readonly #rows: HTMLElement[];
  readonly #brief: Element | null;

  constructor(block: HTMLElement, step: Step, line: Line | undefined) {
    this.#step = step;
    this.#line = line;
    this.#rows = [...block.querySelectorAll<HTMLElement>('[data-row]')];
    this.#brief = block.querySelector('[data-value]');
  }

  show(values: Values): void {
    const { name, quantity, unit } = this.#step;
    if (this.#brief) setText(this.#brief, printValue(values[name] ?? NaN, quantity, unit));
    if (!this.#line || this.#rows.length === 0) return;
    const printed = printRows(this.#line, values);
    fitRows(this.#rows, printed.length);
    printed.forEach((row, i) => {
      const element = this.#rows[i];
      if (element) showRow(element, row);
    });
  }
}

function showRow(element: HTMLElement, row: Row): void {
  for (const slot of element.querySelectorAll<HTMLElement>('[data-n]')) {
    const text = row.numbers[slot.dataset['n'] ?? ''] ?? '';
    setText(slot, slot.hasAttribute('data-held') ? held(text) : text);
  }
  const result = element.querySelector('[data-result]');
  if (result) setText(result, row.result);
  const converted = element.querySelector('[data-converted]');
  if (converted) setText(converted, row.converted ?? '');
}
