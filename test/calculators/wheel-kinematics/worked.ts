import type { Calculator } from '../../../calculators/calculator.ts';
import type { Values } from '../../../calculators/formula/evaluate.ts';
import { toValues, usualEntries } from '../../../calculators/inputs.ts';
import { solve } from '../../../calculators/solve.ts';

export const degree = Math.PI / 180;

export interface Results {
  readonly number: (name: string) => number;
  readonly list: (name: string) => readonly number[];
}

/**
 * The values of a calculator in SI, for inputs in SI; what is not given has its usual value.
 * @throws Error for an input it does not take, or inputs it refuses.
 */
export function worked(calculator: Calculator, inputs: Values): Results {
  const stray = Object.keys(inputs).filter((name) => !calculator.given.some((given) => given.name === name));
  if (stray.length > 0) throw new Error(`unknown input: ${stray.join(', ')}`);
  const usual = toValues(calculator.given, usualEntries(calculator.given));
  const { values, refusal } = solve(calculator, { ...usual, ...inputs });
  if (refusal) throw new Error(refusal.says);
  return {
    number: (name) => {
      const value = values[name];
      if (typeof value !== 'number') throw new Error(`no number: ${name}`);
      return value;
    },
    list: (name) => {
      const value = values[name];
      if (typeof value !== 'object') throw new Error(`no list: ${name}`);
      return value;
    },
  };
}
