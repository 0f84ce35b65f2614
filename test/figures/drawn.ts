import { DOMParser } from 'linkedom';
import { calculatorOf } from '../../calculators/catalogue.ts';
import type { Values } from '../../calculators/formula/evaluate.ts';
import { readInputs } from '../../calculators/inputs.ts';
import { solve } from '../../calculators/solve.ts';
import { figures } from '../../src/figures/catalogue.ts';
import { drawings } from '../../src/figures/drawings.ts';
import { figureValues } from '../../src/live/figure-values.ts';

export interface Place {
  readonly x: number;
  readonly y: number;
}

export interface Arrow {
  readonly kind: string;
  readonly from: Place;
  readonly tip: Place;
}

/** The values of a calculator for inputs as a reader types them; the rest are usual. */
export function valuesOf(id: string, texts: Readonly<Record<string, string>> = {}): Values {
  const calculator = calculatorOf(id);
  const inputs = readInputs(calculator.given, texts);
  if (!inputs.ok) throw new Error(inputs.problems.map(({ message }) => message).join(' '));
  const { values, refusal } = solve(calculator, inputs.values);
  if (refusal) throw new Error(refusal.says);
  return values;
}

/** The figure of a calculator as text. */
export function drawnFrom(id: string, values: Values): string {
  const spec = figures[id];
  if (!spec) throw new Error(`no figure: ${id}`);
  return drawings[spec.name](figureValues(calculatorOf(id), spec, values));
}

export const drawn = (id: string, texts: Readonly<Record<string, string>> = {}): Drawing =>
  new Drawing(drawnFrom(id, valuesOf(id, texts)));

const numbersIn = (text: string): number[] => (text.match(/-?\d+(\.\d+)?(e[-+]\d+)?/g) ?? []).map(Number);

/** A figure to look things up in. */
export class Drawing {
  readonly root: Element;

  constructor(svg: string) {
    this.root = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement as unknown as Element;
  }

  all(selector: string): Element[] {
    return [...this.root.querySelectorAll(selector)];
  }

  /** Straight arrows of exactly these classes, in the order drawn. One that is drawn as a dot is none. */
  arrows(kind: string): Arrow[] {
    const heads = this.all('.head').filter((head) => head.getAttribute('class') === `${kind} head`);
    return heads.flatMap((head) => {
      const shaft = head.previousElementSibling;
      if (shaft?.getAttribute('class') !== `${kind} shaft`) return [];
      const [from] = placesOf(shaft);
      const [tip] = placesOf(head);
      return from && tip ? [{ kind, from, tip }] : [];
    });
  }

  /** Places of a line or curve: all that its path names. */
  path(selector: string): Place[] {
    const found = this.root.querySelector(selector);
    if (!found) throw new Error(`nothing drawn: ${selector}`);
    return placesOf(found);
  }

  words(): string[] {
    return this.all('text').map((text) => text.textContent);
  }

  box(): { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number } {
    const [left = NaN, top = NaN, width = NaN, height = NaN] = numbersIn(this.root.getAttribute('viewBox') ?? '');
    return { left, top, right: left + width, bottom: top + height };
  }

  /** Every place that something is drawn at, words at their middle. */
  places(): Place[] {
    return this.all('path, circle, rect, text').flatMap((element) =>
      element.hasAttribute('transform') ? [] : placesOf(element),
    );
  }
}

/** The places an element names, in the coordinates of the figure. */
export function placesOf(element: Element): Place[] {
  const shift = shiftOf(element.parentElement);
  return ownPlaces(element).map(({ x, y }) => ({ x: x + shift.x, y: y + shift.y }));
}

function shiftOf(element: Element | null): Place {
  if (!element) return { x: 0, y: 0 };
  const outer = shiftOf(element.parentElement);
  const [x = 0, y = 0] = numbersIn(element.getAttribute('transform') ?? '');
  return { x: outer.x + x, y: outer.y + y };
}

function ownPlaces(element: Element): Place[] {
  const of = (name: string): number => Number(element.getAttribute(name));
  if (element.tagName === 'text') return [{ x: of('x'), y: of('y') }];
  if (element.tagName === 'rect') {
    const [x, y] = [of('x'), of('y')];
    return [
      { x, y },
      { x: x + of('width'), y: y + of('height') },
    ];
  }
  if (element.tagName === 'circle') {
    const [x, y, r] = [of('cx'), of('cy'), of('r')];
    return [
      { x: x - r, y: y - r },
      { x: x + r, y: y + r },
    ];
  }
  return pathPlaces(element.getAttribute('d') ?? '');
}

/** Ends and control points of a path written with capital letters. */
function pathPlaces(d: string): Place[] {
  const places: Place[] = [];
  let last: Place = { x: 0, y: 0 };
  for (const [, letter = '', rest = ''] of d.matchAll(/([A-Z])([^A-Z]*)/g)) {
    const numbers = numbersIn(rest);
    const [first = NaN] = numbers;
    if (letter === 'H') last = { x: first, y: last.y };
    if (letter === 'V') last = { x: last.x, y: first };
    if (letter === 'A') last = { x: numbers[5] ?? NaN, y: numbers[6] ?? NaN };
    if (/[HVA]/.test(letter)) places.push(last);
    if (!/[MLQ]/.test(letter)) continue;
    for (let k = 0; k < numbers.length; k += 2) {
      last = { x: numbers[k] ?? NaN, y: numbers[k + 1] ?? NaN };
      places.push(last);
    }
  }
  return places;
}
