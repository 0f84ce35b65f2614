import type { Values } from '../../calculators/formula/evaluate.ts';
import type { Calculator } from '../../calculators/calculator.ts';
import type { Solvable } from '../../calculators/solve.ts';
import { sweep } from '../../calculators/sweep.ts';
import { rosePoints, type FigureSpec } from '../figures/catalogue.ts';
import type { FigureValues } from '../figures/values.ts';

/** What a figure is handed: the values of the calculation and, for a rose, one result over the whole circle. */
export function figureValues(
  calculator: Solvable & Pick<Calculator, 'given'>,
  spec: FigureSpec,
  values: Values,
): FigureValues {
  if (!spec.rose) return values;
  const { at, values: rose } = sweep(calculator, values, spec.rose.against, [0, 2 * Math.PI], spec.rose.of, rosePoints);
  return { ...values, rose_at: at, rose: rose.map(Number) };
}
