import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calculatorOf, catalogue } from '../../calculators/catalogue.ts';
import { siOf } from '../../calculators/si-of.ts';
import { toValues, usualEntries } from '../../calculators/inputs.ts';
import { sweep } from '../../calculators/sweep.ts';
import { firstPlots, plotRange, plottable } from '../../src/plot/spec.ts';

const plotted = catalogue.flatMap(({ id, given }) => given.filter(plottable).map((one) => ({ id, given: one })));

test.each(plotted)(
  '$id against $given.name: the stretch holds the value in hand and keeps to the range',
  ({ given }) => {
    const whole = given.quantity === 'angle' ? 2 * Math.PI : Infinity;
    fc.assert(
      fc.property(fc.double({ min: given.least, max: given.most, noNaN: true }), (here) => {
        const [from, to] = plotRange(given, here);
        expect(from).toBeLessThan(to);
        expect(from).toBeGreaterThanOrEqual(given.least);
        expect(to).toBeLessThanOrEqual(given.most);
        if (whole === Infinity) {
          expect(here).toBeGreaterThanOrEqual(from);
          expect(here).toBeLessThanOrEqual(to);
        } else expect(to - from).toBeLessThanOrEqual(whole);
      }),
    );
  },
);

describe('first plots', () => {
  test.each(Object.entries(firstPlots))(
    '%s: a curve that varies, unbroken, over most of the range',
    (id, { of, against }) => {
      const calculator = calculatorOf(id);
      const given = calculator.given.find(({ name }) => name === against);
      if (!given) throw new Error(`no given: ${against}`);
      expect(plottable(given)).toBe(true);
      const usual = toValues(calculator.given, usualEntries(calculator.given));
      const range = plotRange(given, Number(siOf(given.usual, given.quantity)));
      const [{ values }] = sweep(calculator, usual, against, range, [of], 101);
      // At an end there may be no result: pulleys that would overlap, say.
      const there = values.map((value) => [value].flat().every(Number.isFinite));
      const first = there.indexOf(true);
      const last = there.lastIndexOf(true);
      expect(there.slice(first, last + 1)).not.toContain(false);
      expect(last - first).toBeGreaterThan(60);
      const numbers = values.slice(first, last + 1).flat();
      expect(Math.max(...numbers)).toBeGreaterThan(Math.min(...numbers));
    },
  );
});
