import { listNames, type Calculator, type Step } from '../../calculators/calculator.ts';
import { symbolTex } from '../../calculators/formula/symbols.ts';
import { typeset, type Names } from '../../calculators/formula/typeset.ts';
import type { Tree } from '../../calculators/formula/tree.ts';
import { renderTex } from './tex.ts';

/** Names as symbols; a list has the index i. */
export const symbols = (calculator: Calculator): Names => {
  const lists = listNames(calculator);
  return { name: (name) => symbolTex(name, lists.has(name)), factors: 'side by side' };
};

export function stepOf(calculator: Calculator, name: string): Step {
  const step = calculator.steps.find((one) => one.name === name);
  if (!step) throw new Error(`unknown step: ${name} (${calculator.id})`);
  return step;
}

const left = (step: Step): string => symbolTex(step.name, step.list);

/** The TeX of a step as an equation: `u_i = v \, s_i + R \, \Omega`. */
export function equationTex(calculator: Calculator, step: Step): string {
  const write = (tree: Tree): string => typeset(tree, symbols(calculator));
  switch (step.kind) {
    case 'formula':
      return `${left(step)} = ${write(step.tree)}`;
    case 'root':
      return `${write(step.tree)} = ${symbolTex(step.target)}`;
    case 'look-up':
      return `${left(step)} = \\text{table}\\left(${write(step.at)}\\right)`;
  }
}

export const renderSymbol = (name: string, list = false): string => renderTex(symbolTex(name, list));
