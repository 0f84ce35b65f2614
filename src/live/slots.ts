import { held, printRows, printValue, type Line, type Row } from '../../calculators/line.ts';
import type { Step } from '../../calculators/calculator.ts';
import type { Value, Values } from '../../calculators/formula/evaluate.ts';

/** Changes a text only where it differs, and in its place, so that the browser lays out no more than it must. */
export function setText(element: Element, text: string): void {
  const { firstChild } = element;
  if (firstChild instanceof Text && firstChild === element.lastChild) {
    if (firstChild.data !== text) firstChild.data = text;
  } else if (element.textContent !== text) element.textContent = text;
}

/**
 * Makes a list of rows as long as the wheels are many, by copying its last one.
 * @returns whether it had another length.
 */
export function fitRows(rows: HTMLElement[], wanted: number): boolean {
  const before = rows.length;
  while (rows.length > wanted && rows.length > 1) rows.pop()?.remove();
  let last = rows[rows.length - 1];
  while (last && rows.length < wanted) {
    const copy = last.cloneNode(true) as HTMLElement;
    last.after(copy);
    rows.push(copy);
    for (const label of copy.querySelectorAll('[data-wheel]')) label.textContent = String(rows.length);
    last = copy;
  }
  return rows.length !== before;
}

export const wheelOf = (value: Value | undefined, i: number): Value =>
  typeof value === 'object' ? (value[i] ?? NaN) : (value ?? NaN);

/** The printed lines of one step in the page. */
export class StepView {
  readonly #step: Step;
  readonly #line: Line | undefined;
  readonly #rows: HTMLElement[];
  readonly #brief: Element | null;
  /** The values that the rows show. */
  #shown: string | undefined;

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
    const now = [name, ...this.#line.names.map((one) => one.name)].map((one) => String(values[one])).join(';');
    if (now === this.#shown) return;
    this.#shown = now;
    const printed = printRows(this.#line, values);
    fitRows(this.#rows, printed.length);
    printed.forEach((row, i) => {
      const element = this.#rows[i];
      if (element) showRow(element, row);
    });
  }
}

interface Slot {
  readonly element: Element;
  readonly textOf: (row: Row) => string;
  /** The text in the page: to ask the page takes longer. */
  shown?: string;
}

const slots = new WeakMap<HTMLElement, readonly Slot[]>();

function showRow(element: HTMLElement, row: Row): void {
  const known = slots.get(element) ?? slotsIn(element);
  slots.set(element, known);
  for (const slot of known) {
    const text = slot.textOf(row);
    if (text !== slot.shown) setText(slot.element, text);
    slot.shown = text;
  }
}

/** The places of a row that change; looking for them takes longer than filling them. */
function slotsIn(element: HTMLElement): readonly Slot[] {
  const numbers = [...element.querySelectorAll<HTMLElement>('[data-n]')].map((slot): Slot => {
    const { n = '' } = slot.dataset;
    const isHeld = slot.hasAttribute('data-held');
    const textOf = ({ numbers: { [n]: text = '' } }: Row): string => (isHeld ? held(text) : text);
    return { element: slot, textOf };
  });
  const result = element.querySelector('[data-result]');
  const converted = element.querySelector('[data-converted]');
  return [
    ...numbers,
    ...(result ? [{ element: result, textOf: (row: Row) => row.result }] : []),
    ...(converted ? [{ element: converted, textOf: (row: Row) => row.converted ?? '' }] : []),
  ];
}
