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

/** A text that changes often: to ask the page what it shows takes longer than to remember. */
export class TextPlace {
  readonly #element: Element;
  /** The text alone, where there is nothing else in the element. */
  readonly #only: Text | undefined;
  #shown: string | undefined;

  constructor(element: Element) {
    const { firstChild } = element;
    this.#element = element;
    this.#only = firstChild instanceof Text && firstChild === element.lastChild ? firstChild : undefined;
    this.#shown = this.#only?.data;
  }

  show(text: string): void {
    if (text === this.#shown) return;
    this.#shown = text;
    if (this.#only) this.#only.data = text;
    else setText(this.#element, text);
  }
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

const alike = (a: Value, b: Value | undefined): boolean =>
  a === b || (typeof a === 'object' && typeof b === 'object' && a.length === b.length && a.every((x, i) => x === b[i]));

/** The printed lines of one step in the page. */
export class StepView {
  readonly #step: Step;
  readonly #line: Line | undefined;
  readonly #rows: HTMLElement[];
  readonly #brief: Element | null;
  /** The values that the rows show. */
  #shown: readonly Value[] = [];

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
    const now = [name, ...this.#line.names.map((one) => one.name)].map((one) => values[one] ?? NaN);
    if (now.every((value, k) => alike(value, this.#shown[k]))) return;
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
  readonly place: TextPlace;
  readonly textOf: (row: Row) => string;
}

const slots = new WeakMap<HTMLElement, readonly Slot[]>();

function showRow(element: HTMLElement, row: Row): void {
  const known = slots.get(element) ?? slotsIn(element);
  slots.set(element, known);
  for (const { place, textOf } of known) place.show(textOf(row));
}

/** The places of a row that change; looking for them takes longer than filling them. */
function slotsIn(element: HTMLElement): readonly Slot[] {
  const numbers = [...element.querySelectorAll<HTMLElement>('[data-n]')].map((slot): Slot => {
    const { n = '' } = slot.dataset;
    const isHeld = slot.hasAttribute('data-held');
    const textOf = ({ numbers: { [n]: text = '' } }: Row): string => (isHeld ? held(text) : text);
    return { place: new TextPlace(slot), textOf };
  });
  const result = element.querySelector('[data-result]');
  const converted = element.querySelector('[data-converted]');
  return [
    ...numbers,
    ...(result ? [{ place: new TextPlace(result), textOf: (row: Row) => row.result }] : []),
    ...(converted ? [{ place: new TextPlace(converted), textOf: (row: Row) => row.converted ?? '' }] : []),
  ];
}
