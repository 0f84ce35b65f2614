import type { Calculator, Step } from './calculator.ts';
import { namesBehind } from './dependencies.ts';
import { dimensionOf } from './formula/dimension.ts';
import { evaluate } from './formula/evaluate.ts';
import { namesIn, type Tree } from './formula/tree.ts';
import { usualEntries } from './inputs.ts';
import { editionKey } from './permalink.ts';
import { dimensionless, sameDimension, showDimension, type Dimension } from './quantity/dimension.ts';
import { quantityOf } from './quantity/units.ts';
import { work } from './work.ts';

/**
 * What a calculator's author got wrong, a sentence each; empty when all is well. Names and formulas were checked when it
 * was defined; this checks what the formulas mean: dimensions, conditions, sentences with values, usual inputs, limits.
 */
export function faultsOf(calculator: Calculator): string[] {
  const named = [...calculator.given, ...calculator.steps];
  const dimensions = Object.fromEntries(named.map((one) => [one.name, quantityOf(one.quantity).dimension]));
  return [
    ...(named.some((one) => one.name === editionKey) ? [`invalid name: ${editionKey} is kept for links`] : []),
    ...calculator.steps.flatMap((step) => stepFaults(step, dimensions)),
    ...conditions(calculator).flatMap((tree) => attempt(() => dimensionOf(tree, dimensions), 'a condition')),
    ...sentenceFaults(calculator),
    ...unusedGivens(calculator),
    ...usualFaults(calculator),
  ];
}

function stepFaults(step: Step, dimensions: Readonly<Record<string, Dimension>>): string[] {
  const want = quantityOf(step.quantity).dimension;
  if (step.kind === 'look-up') return attempt(() => dimensionOf(step.at, dimensions), step.name);
  const reach = step.kind === 'root' ? (dimensions[step.target] ?? dimensionless) : want;
  return attempt(() => {
    const got = dimensionOf(step.tree, dimensions);
    if (!sameDimension(got, reach))
      throw new Error(`the formula gives ${showDimension(got)}, not ${showDimension(reach)}`);
  }, step.name);
}

const conditions = (calculator: Calculator): Tree[] => [
  ...calculator.requires.map((one) => one.holds),
  ...calculator.cautions.flatMap(({ when }) => (when ? [when] : [])),
];

function sentenceFaults(calculator: Calculator): string[] {
  const known = new Set([...calculator.given, ...calculator.steps].map((one) => one.name));
  const texts = [...calculator.requires, ...calculator.cautions].map(({ says }) => says);
  const used = texts.flatMap((text) => [...text.matchAll(/\{(\w+)/g)].map(([, name = '']) => name));
  return used.filter((name) => !known.has(name)).map((name) => `unknown value in a sentence: ${name}`);
}

/** A given that no formula uses would be asked of the reader for nothing. */
function unusedGivens(calculator: Calculator): string[] {
  const used = new Set([...calculator.steps.flatMap(namesBehind), ...conditions(calculator).flatMap(namesIn)]);
  return calculator.given.filter((one) => !used.has(one.name)).map((one) => `unused given: ${one.name}`);
}

function usualFaults(calculator: Calculator): string[] {
  return attempt(() => {
    const worked = work(calculator, usualEntries(calculator.given));
    if (!worked.ok) throw new Error(worked.refused.message);
    for (const tree of conditions(calculator)) evaluate(tree, worked.working.values);
  }, 'usual values');
}

function attempt(what: () => unknown, where: string): string[] {
  try {
    what();
    return [];
  } catch (error) {
    return [`${where}: ${error instanceof Error ? error.message : String(error)}`];
  }
}
