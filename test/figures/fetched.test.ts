import { expect, test } from 'vitest';
import { calculatorOf } from '../../calculators/catalogue.ts';
import { programOf } from '../../calculators/program.ts';
import { figures } from '../../src/figures/catalogue.ts';
import { drawingOf } from '../../src/live/drawings.ts';
import { drawnFrom, valuesOf } from './drawn.ts';

test.each(Object.entries(figures))('a page fetches the figure of %s that the server draws', async (id, spec) => {
  const values = valuesOf(id);
  const draw = await drawingOf(programOf(calculatorOf(id)), spec);
  expect(draw(values)).toBe(drawnFrom(id, values));
});
