import fc from 'fast-check';
import type { Calculator, Given } from '../../calculators/calculator.ts';
import { siOf } from '../../calculators/si-of.ts';
import type { Value, Values } from '../../calculators/formula/evaluate.ts';
import { solve } from '../../calculators/solve.ts';

/** Solutions of a calculator over the whole ranges of its givens; half of the numbers lie about the usual ones. */
export const randomSolution = (calculator: Calculator): fc.Arbitrary<Values> =>
  fc
    .record(Object.fromEntries(calculator.given.map((given) => [given.name, randomValue(given)])))
    .map((inputs) => solve(calculator, inputs))
    .filter(({ refusal }) => refusal === undefined)
    .map(({ values }) => values);

function randomValue(given: Given): fc.Arbitrary<Value> {
  if (given.options) return fc.constantFrom(...Object.values(given.options));
  if (given.list) {
    const [minLength, maxLength] = given.list;
    return fc.array(randomNumber(given), { minLength, maxLength });
  }
  return randomNumber(given);
}

function randomNumber(given: Given): fc.Arbitrary<number> {
  const { least, most } = given;
  const within = (x: number): number => Math.min(most, Math.max(least, given.whole ? Math.round(x) : x));
  const usual = Math.max(...[siOf(given.usual, given.quantity)].flat().map(Math.abs)) || (most - least) / 100;
  const power = fc.double({ min: -1, max: 1, noNaN: true }).map((x) => Math.sign(x) * 10 ** (Math.abs(x) * 14 - 7));
  return fc
    .oneof(
      { weight: 4, arbitrary: fc.double({ min: -3, max: 3, noNaN: true }).map((x) => x * usual) },
      { weight: 2, arbitrary: fc.double({ min: least, max: most, noNaN: true }) },
      { weight: 1, arbitrary: power.map((x) => x * usual) },
      { weight: 1, arbitrary: fc.constantFrom(least, most, 0, usual) },
    )
    .map(within);
}
