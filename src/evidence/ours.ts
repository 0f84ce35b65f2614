import type { Calculator } from '../../calculators/calculator.ts';
import { dimensionOf } from '../../calculators/formula/dimension.ts';
import { evaluate, type Value, type Values } from '../../calculators/formula/evaluate.ts';
import { parse } from '../../calculators/formula/parse.ts';
import type { Tree } from '../../calculators/formula/tree.ts';
import { readInputs } from '../../calculators/inputs.ts';
import { sameDimension, type Dimension } from '../../calculators/quantity/dimension.ts';
import { quantities, quantityOf, type Quantity } from '../../calculators/quantity/units.ts';
import { work } from '../../calculators/work.ts';
import type { Comparison } from './check.ts';
import { givensBehind } from './reliance.ts';

type Given = Readonly<Record<string, string>>;

/**
 * All values of a calculator for givens as typed.
 * @throws Error for a given it does not take, or inputs it refuses.
 */
export function workOut(calculator: Calculator, given: Given): Values {
  const stray = Object.keys(given).filter((name) => !calculator.given.some((one) => one.name === name));
  if (stray.length > 0) throw new Error(`unknown given: ${stray.join(', ')}`);
  const read = readInputs(calculator.given, given);
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join(' '));
  const worked = work(calculator, read.entries);
  if (!worked.ok) throw new Error(worked.refused.message);
  return worked.working.values;
}

/**
 * Our side of a comparison, in its unit.
 * @throws Error where the formula depends on a given left at its usual value: such a check would change with the demo robot.
 */
export function oursOf(calculator: Calculator, given: Given, { of, unit }: Comparison, values: Values): Value {
  const named = [...calculator.given, ...calculator.steps];
  const tree = parse(of, new Set(named.map((one) => one.name)));
  const unsaid = givensBehind(calculator, tree).filter((name) => !Object.hasOwn(given, name));
  if (unsaid.length > 0) throw new Error(`${of} depends on ${unsaid.join(', ')}: give it`);
  const dimensions = Object.fromEntries(named.map((one) => [one.name, quantityOf(one.quantity).dimension]));
  const factor = factorOf(unit, tree, dimensions);
  const value = evaluate(tree, values);
  return typeof value === 'number' ? value / factor : value.map((x) => x / factor);
}

/** The factor of the unit, which must be one of what the formula gives. */
function factorOf(symbol: string, tree: Tree, dimensions: Readonly<Record<string, Dimension>>): number {
  const all: readonly Quantity[] = quantities;
  const found = all.flatMap(({ dimension, units }) => units.map((one) => ({ ...one, dimension })));
  const unit = found.find((one) => one.symbol === symbol);
  if (!unit) throw new Error(`unknown unit: ${symbol}`);
  if (!sameDimension(unit.dimension, dimensionOf(tree, dimensions))) throw new Error(`${symbol} is no unit for it`);
  return unit.factor;
}
