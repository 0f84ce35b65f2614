import { expect, test } from 'vitest';
import { catalogue } from '../../calculators/catalogue.ts';
import { toValues, usualEntries } from '../../calculators/inputs.ts';
import { solve } from '../../calculators/solve.ts';
import { sweep } from '../../calculators/sweep.ts';
import { plotRange, plottable } from '../../src/plot/spec.ts';

test.each(catalogue.map((calculator) => [calculator.id, calculator] as const))(
  '%s: along each given a result is what it is worked out afresh',
  (_, calculator) => {
    const usual = toValues(calculator.given, usualEntries(calculator.given));
    let compared = 0;
    calculator.given.filter(plottable).forEach((given, turn) => {
      const result = calculator.results[turn % calculator.results.length] ?? '';
      const stretch = plotRange(given, Number(usual[given.name]));
      const [{ at, values }] = sweep(calculator, usual, given.name, stretch, [result], 5);
      at.forEach((x, k) => {
        const { values: all, refusal } = solve(calculator, { ...usual, [given.name]: x });
        if (refusal) return;
        expect(values[k], `${result} along ${given.name}`).toEqual(all[result]);
        compared++;
      });
    });
    expect(compared).toBeGreaterThan(0);
  },
  30_000,
);
