import reference from 'js-quantities';
import { describe, expect, test } from 'vitest';
import { findUnit, quantities, quantityOf, unitOf, type QuantityName } from '../../../calculators/quantity/units.ts';

/** How the reference library spells our units, where it spells them differently. */
const spelling: Readonly<Record<string, string>> = {
  '': '1',
  turn: 'rotation',
  'turn/s': 'rotation/s',
  gn: 'gee',
  'N m': 'N*m',
  'mN m': 'mN*m',
  'N cm': 'N*cm',
  'lbf in': 'lbf*in',
  'lbf ft': 'lbf*ft',
  'W h': 'Wh',
  'lb ft^2': 'lb*ft^2',
  'lb in^2': 'lb*in^2',
  'kg m^2': 'kg*m^2',
  'kg cm^2': 'kg*cm^2',
  'g cm^2': 'g*cm^2',
  'N m/A': 'N*m/A',
  'mN m/A': 'mN*m/A',
  K: 'degK',
  '1/K': '1/degK',
  '%/K': '%/degK',
  'ppm/K': 'ppm/degK',
  'K/W': 'degK/W',
};

/** Units whose factor the reference library has rounded, and the unit of its last digit, in SI. */
const roundedThere: Readonly<Record<string, number>> = {
  oz: 1e-10,
  lbf: 1e-6,
  'lbf in': 1e-6 * 0.0254,
  'lbf ft': 1e-6 * 0.3048,
  psi: 0.01,
  'lbf/in': 1e-6 / 0.0254,
};

/**
 * Units the reference library lacks: it has no kilogram-force, gram-force or ounce-force. By hand, from the exact factors
 * 1 kgf = 9.80665 N, 1 lb = 0.45359237 kg = 16 oz and 1 in = 0.0254 m of A. Thompson and B. N. Taylor, Guide for the Use
 * of the International System of Units (SI), NIST Special Publication 811, 2008 edition, Appendix B.
 */
const unknownThere: Readonly<Record<string, number>> = {
  kgf: 9.80665,
  gf: 0.00980665,
  ozf: 0.27801385095378125,
  'kgf cm': 0.0980665,
  'gf cm': 0.0000980665,
  'ozf in': 0.00706155181422604375,
};

const units = quantities.flatMap(({ name, units: all }) =>
  all.map(({ symbol, factor }): [symbol: string, quantity: QuantityName, factor: number] => [symbol, name, factor]),
);
const there = (symbol: string) => reference(1, spelling[symbol] ?? symbol);
const hair = 4 * Number.EPSILON;

describe('factors beside those of a general reference library', () => {
  const known = units.filter(([symbol]) => !Object.hasOwn(unknownThere, symbol));

  test.each(known)('“%s” (%s)', (symbol, name, factor) => {
    const theirs = there(symbol);
    expect(theirs.isCompatible(there(quantityOf(name).units[0].symbol))).toBe(true);
    const { scalar } = theirs.toBase();
    expect(Math.abs(factor - scalar)).toBeLessThanOrEqual((roundedThere[symbol] ?? 0) / 2 + hair * scalar);
  });

  test('a unit called rounded there differs from ours in the last bits', () => {
    const same = Object.keys(roundedThere).filter((symbol) => there(symbol).toBase().scalar === factorOf(symbol));
    expect(same).toEqual([]);
  });
});

const factorOf = (symbol: string): number => units.find(([one]) => one === symbol)?.[2] ?? NaN;

describe('units the reference library lacks', () => {
  test.each(Object.entries(unknownThere))('%s', (symbol, exact) => {
    expect(() => there(symbol)).toThrow();
    expect(() => there(symbol.replace(' ', '*'))).toThrow();
    expect(Math.abs(factorOf(symbol) / exact - 1)).toBeLessThanOrEqual(hair);
  });
});

test('every name in the lists above is a unit of ours', () => {
  const symbols = new Set(units.map(([symbol]) => symbol));
  const named = [spelling, roundedThere, unknownThere].flatMap((list) => Object.keys(list));
  expect(named.filter((symbol) => !symbols.has(symbol))).toEqual([]);
});

/**
 * Factors as printed in NIST Special Publication 811, 2008 edition, Appendix B. `read`: in a transcription of its table
 * B.8. `memory`: remembered, to be looked up; those stand beside the comparison above and replace none of it.
 */
const printed: readonly [quantity: QuantityName, symbol: string, factor: string, known: 'read' | 'memory'][] = [
  ['length', 'in', '0.0254', 'read'],
  ['angular velocity', 'rpm', '0.1047198', 'read'],
  ['torque', 'kgf cm', '0.0980665', 'read'],
  ['angle', 'deg', '0.01745329', 'memory'],
  ['angle', 'turn', '6.283185', 'memory'],
  ['length', 'ft', '0.3048', 'memory'],
  ['area', 'in^2', '0.00064516', 'memory'],
  ['time', 'min', '60', 'memory'],
  ['time', 'h', '3600', 'memory'],
  ['velocity', 'km/h', '0.2777778', 'memory'],
  ['velocity', 'in/s', '0.0254', 'memory'],
  ['velocity', 'ft/s', '0.3048', 'memory'],
  ['velocity', 'mph', '0.44704', 'memory'],
  ['acceleration', 'ft/s^2', '0.3048', 'memory'],
  ['acceleration', 'gn', '9.80665', 'memory'],
  ['mass', 'lb', '0.4535924', 'memory'],
  ['mass', 'oz', '0.02834952', 'memory'],
  ['force', 'kgf', '9.80665', 'memory'],
  ['force', 'lbf', '4.448222', 'memory'],
  ['force', 'ozf', '0.2780139', 'memory'],
  ['torque', 'lbf in', '0.1129848', 'memory'],
  ['torque', 'lbf ft', '1.355818', 'memory'],
  ['torque', 'ozf in', '0.007061552', 'memory'],
  ['energy', 'W h', '3600', 'memory'],
  ['pressure', 'psi', '6894.757', 'memory'],
];

/** In bold in the table: all further digits are zero. */
const exact = new Set(['in', 'kgf cm', 'ft', 'in^2', 'min', 'h', 'in/s', 'ft/s', 'mph', 'ft/s^2', 'gn', 'kgf', 'W h']);

describe('factors beside those printed in NIST SP 811', () => {
  test.each(printed)('%s: %s = %s (%s)', (name, symbol, factor) => {
    const ours = unitOf(quantityOf(name), symbol).factor;
    const decimals = factor.split('.')[1]?.length ?? 0;
    const tolerance = exact.has(symbol) ? hair * ours : 0.5 * 10 ** -decimals;
    expect(Math.abs(ours - Number(factor))).toBeLessThanOrEqual(tolerance);
  });
});

describe('units typed in another case', () => {
  const found = (quantity: QuantityName, typed: string) => findUnit(quantityOf(quantity), typed)?.symbol;

  test.each([
    ['length', 'MM', 'mm'],
    ['angular velocity', 'RPM', 'rpm'],
    ['torque', 'nm', 'N m'],
    ['pressure', 'Mpa', 'MPa'],
    ['velocity', 'MPH', 'mph'],
    ['time', 'MIN', 'min'],
  ] as const)('%s: “%s” is %s', (quantity, typed, symbol) => {
    expect(found(quantity, typed)).toBe(symbol);
  });

  test.each([
    ['power', 'MW'],
    ['voltage', 'MV'],
    ['current', 'MA'],
    ['resistance', 'Mohm'],
    ['torque', 'MN m'],
    ['pressure', 'mPa'],
  ] as const)('%s: “%s” is never taken for a thousand million times as much or as little', (quantity, typed) => {
    expect(found(quantity, typed)).toBeUndefined();
  });
});
