import fc from 'fast-check';
import type { Calculator, Given } from '../../../calculators/calculator.ts';
import type { Value, Values } from '../../../calculators/formula/evaluate.ts';
import { readInputs, toValues, usualEntries, type Entries } from '../../../calculators/inputs.ts';
import { quantityOf } from '../../../calculators/quantity/units.ts';

/** Inputs in SI to try a calculator at. */
export type Point = Values;

const clamp = ({ least, most }: Given, x: number): number => Math.min(most, Math.max(least, x));
const fraction = fc.integer({ min: 0, max: 1_000_000 }).map((k) => k / 1_000_000);

/** Anywhere in the range; over magnitudes where all are positive. */
const wide = (given: Given): fc.Arbitrary<number> =>
  fraction.map((t) =>
    given.least > 0 ? given.least * (given.most / given.least) ** t : given.least + (given.most - given.least) * t,
  );

/** From a quarter to four times the usual value, of either sign where it may be negative; a usual 0 stands for a hundredth of the range. */
const near = (given: Given, usual: number): fc.Arbitrary<number> => {
  const size = Math.abs(usual) || (given.most - given.least) / 100;
  return fc
    .tuple(fraction, fc.boolean())
    .map(([t, minus]) => size * 4 ** (2 * t - 1) * (minus && given.least < 0 ? -1 : 1));
};

/** Values at which terms cancel and comparisons tip. */
const special = (given: Given, usual: number): fc.Arbitrary<number> => {
  const angles = Array.from({ length: 49 }, (_, k) => ((k - 24) * Math.PI) / 12);
  const plain = [usual, -usual, 0, usual / 2, given.least, given.most].filter((x) => Math.abs(x) < 1e3);
  const values = given.quantity === 'angle' ? angles : plain;
  return fc.constantFrom(...values.filter((x) => x >= given.least && x <= given.most), usual);
};

type Draw = (given: Given, usual: number) => fc.Arbitrary<number>;

function drawGiven(given: Given, usual: Value, draw: Draw): fc.Arbitrary<Value> {
  const [first = 0] = [usual].flat();
  if (given.options) return fc.constantFrom(...Object.values(given.options));
  const one = draw(given, first).map((x) => clamp(given, given.whole ? Math.round(x) : x));
  return given.list ? fc.array(one, { minLength: given.list[0], maxLength: given.list[1] }) : one;
}

function drawPoint({ given }: Calculator, draw: Draw): fc.Arbitrary<Point> {
  const usual = toValues(given, usualEntries(given));
  return fc.noBias(
    fc.record(Object.fromEntries(given.map((one) => [one.name, drawGiven(one, usual[one.name] ?? 0, draw)]))),
  );
}

/** Random inputs as a workbench has them. */
export const nearPoints = (calculator: Calculator, count: number): Point[] =>
  fc.sample(drawPoint(calculator, near), count);

/** Random inputs anywhere in the ranges, which are wide. */
export const widePoints = (calculator: Calculator, count: number): Point[] =>
  fc.sample(drawPoint(calculator, wide), count);

/** The usual inputs, those of the limits, and others where terms cancel. */
export const specialPoints = (calculator: Calculator, count: number): Point[] => [
  ...[{}, ...calculator.limits.map((limit) => limit.at ?? {})].map((texts) => {
    const inputs = readInputs(calculator.given, texts);
    if (!inputs.ok) throw new Error(inputs.problems.map(({ message }) => message).join(' '));
    return inputs.values;
  }),
  ...fc.sample(drawPoint(calculator, special), count),
];

/** A point as the entries that give it. */
export const entriesOf = ({ given }: Calculator, point: Point): Entries =>
  Object.fromEntries(
    given.map(({ name, quantity }) => [
      name,
      { value: point[name] ?? NaN, unit: quantityOf(quantity).units[0].symbol },
    ]),
  );
