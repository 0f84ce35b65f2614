import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calculatorOf, catalogue } from '../../calculators/catalogue.ts';
import { fill } from '../../calculators/fill.ts';
import type { Values } from '../../calculators/formula/evaluate.ts';
import { figures } from '../../src/figures/catalogue.ts';
import { Drawing, drawnFrom, valuesOf } from './drawn.ts';
import { randomSolution } from './random-inputs.ts';

/** Half a unit for the width of a line, and a hair. */
const slack = 1;

const shapes =
  /^<svg [^<>]*>(<(path|circle|rect|g|text)( [a-zA-Z-]+="[^"<>&]*")+>|<\/(path|circle|rect|g|text)>|[^<>&]+)*<\/svg>$/;

/** Tags close in the order they open, and only known ones stand in a figure. */
function expectWellFormed(svg: string): void {
  expect(svg).toMatch(shapes);
  const open: string[] = [];
  for (const [, closing, name = ''] of svg.matchAll(/<(\/?)([a-z]+)/g)) {
    if (closing) expect(open.pop()).toBe(name);
    else open.push(name);
  }
  expect(open).toEqual([]);
  expect(svg).not.toMatch(/NaN|undefined|Infinity|null|∞/);
}

function expectInside(svg: string): void {
  const drawing = new Drawing(svg);
  const { left, top, right, bottom } = drawing.box();
  const outside = drawing
    .places()
    .filter(({ x, y }) => !(x >= left - slack && x <= right + slack && y >= top - slack && y <= bottom + slack));
  expect(outside).toEqual([]);
}

function expectSound(id: string, values: Values): void {
  const svg = drawnFrom(id, values);
  expectWellFormed(svg);
  expectInside(svg);
  expect(drawnFrom(id, values)).toBe(svg);
}

test('every calculator has a figure', () => {
  expect(Object.keys(figures).sort()).toEqual(catalogue.map(({ id }) => id).sort());
});

describe.each(Object.entries(figures))('%s', (id, spec) => {
  const calculator = calculatorOf(id);

  test('its figure is sound for the usual inputs', () => {
    expectSound(id, valuesOf(id));
  });

  test('its figure is sound for any inputs that have a result', () => {
    fc.assert(
      fc.property(randomSolution(calculator), (values) => {
        expectSound(id, values);
      }),
    );
  }, 30_000);

  test('its caption names values that are there', () => {
    const said = fill(spec.caption, [...calculator.given, ...calculator.steps], valuesOf(id));
    expect(said).not.toMatch(/[{}]/);
    expect(said).toMatch(/\d/);
  });
});

test.each(Object.entries(figures).flatMap(([id, { turn }]) => (turn ? [[id, turn.given]] : [])))(
  'what can be turned in the figure of %s is an angle among its givens: %s',
  (id, given) => {
    const turned = calculatorOf(id).given.find(({ name }) => name === given);
    expect(turned?.quantity).toBe('angle');
  },
);
