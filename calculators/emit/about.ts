import type { Given, Step } from '../calculator.ts';
import { infix, plainDialect } from '../formula/infix.ts';
import type { Tree } from '../formula/tree.ts';
import type { Entry } from '../quantity/parse.ts';
import { quantityOf, type QuantityName } from '../quantity/units.ts';
import type { Emittable } from './emittable.ts';

/** What every written text says of itself first. */
export const originOf = ({ id, edition }: Emittable, address: string, language: string): readonly string[] => [
  `${id}, edition ${edition}, written by Crabwise as ${language}.`,
  `The working it comes from: ${address}`,
];

export const siUnit = (quantity: QuantityName): string => quantityOf(quantity).units[0].symbol;

/** "wheel radius; m, 0.001 to 10" */
export function describeGiven(given: Given): string {
  const words = Object.entries(given.options ?? {}).map(([word, value]) => `${value} = ${word}`);
  const range = `${shortNumber(given.least)} to ${shortNumber(given.most)}`;
  const lengths = given.list ? [`${given.list[0]} to ${given.list[1]} numbers`] : [];
  const takes =
    words.length > 0 ? words : [...unit(given.quantity), ...(given.whole ? ['whole'] : []), range, ...lengths];
  return `${given.means}; ${takes.join(', ')}`;
}

/** "rim speed of each wheel, m/s" */
export const describeStep = ({ means, quantity }: Step): string => [means, ...unit(quantity)].join(', ');

const unit = (quantity: QuantityName): string[] => [siUnit(quantity)].filter(Boolean);

export const shortNumber = (value: number): string => String(Number(value.toPrecision(6)));

/** The formula as authors write it. */
export const plainFormula = (tree: Tree): string =>
  infix(tree, { ...plainDialect((name) => name), number: (value, degrees) => `${value}${degrees ?? ''}` });

/** Why inputs are refused: "R * abs(Omega) < u_max must hold". */
export const mustHold = (holds: Tree): string => `${plainFormula(holds)} must hold`;

/** An entry as a person types it: `60 mm`, `10, -5, -5 rad/s`, or the word of a choice. */
export function typedText(given: Given, { value, unit: symbol }: Entry): string {
  const [word] = Object.entries(given.options ?? {}).find(([, number]) => number === value) ?? [];
  const numbers = [value].flat().map((x) => String(Number(x.toPrecision(12))));
  return word ?? `${numbers.join(', ')} ${symbol}`.trim();
}
