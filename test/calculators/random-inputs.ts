import fc from 'fast-check';
import type { Given } from '../../calculators/calculator.ts';
import { quantityOf, type Unit } from '../../calculators/quantity/units.ts';

/** What a reader might type into the fields of a calculator, by name of the given. */
export type Texts = Readonly<Record<string, string>>;

type Numbers = (given: Given, unit: Unit) => fc.Arbitrary<number>;

/** Texts near the usual values: ordinary machines, and the special values that people try first. */
export const ordinaryTexts = (givens: readonly Given[]): fc.Arbitrary<Texts> => texts(givens, ordinary);

/** Texts anywhere in the declared ranges, with as many digits as there are. */
export const wildTexts = (givens: readonly Given[]): fc.Arbitrary<Texts> => texts(givens, wild);

/** The units a reader can type: a number without one has the usual unit, so a plain share of a percentage cannot be. */
export const unitsOf = (given: Given): readonly Unit[] =>
  quantityOf(given.quantity).units.filter(({ symbol }) => symbol !== '' || given.unit === '');

function texts(givens: readonly Given[], numbers: Numbers): fc.Arbitrary<Texts> {
  return fc.record(Object.fromEntries(givens.map((given) => [given.name, textOf(given, numbers)])));
}

function textOf(given: Given, numbers: Numbers): fc.Arbitrary<string> {
  if (given.options) return fc.constantFrom(...Object.keys(given.options));
  const usualUnit = unitsOf(given).filter(({ symbol }) => symbol === given.unit);
  return fc.constantFrom(...usualUnit, ...usualUnit, ...unitsOf(given)).chain((unit) => {
    const number = numbers(given, unit).map((x) => clip(given, unit, x));
    const [minLength, maxLength] = given.list ?? [1, 1];
    return fc
      .array(number, { minLength, maxLength })
      .map((all) => `${all.map(String).join(', ')} ${unit.symbol}`.trim());
  });
}

/** Back into the range, and whole where only whole numbers are taken. */
function clip(given: Given, unit: Unit, x: number): number {
  const inside = Math.min(given.most / unit.factor, Math.max(given.least / unit.factor, x));
  return given.whole ? Math.round(inside) : inside;
}

const rounded = (x: number): number => Number(x.toPrecision(3)) + 0;

const ordinary: Numbers = (given, unit) => {
  const usual = [given.usual.value].flat();
  const usualFactor = factorOf(given, given.usual.unit) / unit.factor;
  const size = (Math.max(...usual.map(Math.abs)) || 1) * usualFactor;
  const scaled = fc
    .tuple(fc.double({ min: -0.6, max: 0.6, noNaN: true }), fc.constantFrom(1, 1, 1, -1))
    .map(([decade, sign]) => rounded(sign * size * 10 ** decade));
  const angle = fc.integer({ min: -24, max: 24 }).map((k) => (k * 15 * Math.PI) / 180 / unit.factor);
  const special = fc.constantFrom(0, given.least / unit.factor, ...usual.map((x) => x * usualFactor));
  if (given.quantity === 'angle') return fc.oneof(scaled, angle, angle, special);
  return fc.oneof({ weight: 7, arbitrary: scaled }, { weight: 1, arbitrary: special });
};

/** Nearer to 0 than this share of the largest number allowed, wild numbers are 0: a tenth of a nanometre in a metre. */
const smallest = 1e-10;

const wild: Numbers = (given, unit) => {
  const [least, most] = [given.least / unit.factor, given.most / unit.factor];
  const even = fc
    .double({ min: least, max: most, noNaN: true })
    .map((x) => (Math.abs(x) < smallest * most ? Math.max(least, 0) : x));
  if (least < 0) {
    const small = fc.double({ min: Math.log10(smallest), max: 0, noNaN: true }).map((decade) => most * 10 ** decade);
    return fc.oneof(
      even,
      small,
      small.map((x) => -x),
      fc.constantFrom(least, 0, most),
    );
  }
  const from = Math.log10(Math.max(least, most * smallest));
  const decades = fc.double({ min: from, max: Math.log10(most), noNaN: true }).map((decade) => 10 ** decade);
  return fc.oneof(even, decades, decades, fc.constantFrom(least, most));
};

const factorOf = (given: Given, symbol: string): number =>
  unitsOf(given).find((unit) => unit.symbol === symbol)?.factor ?? NaN;
