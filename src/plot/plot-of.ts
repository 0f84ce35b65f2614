import type * as PlotLibrary from '@observablehq/plot';
import type { Calculator } from '../../calculators/calculator.ts';
import type { Values } from '../../calculators/formula/evaluate.ts';
import type { Solvable } from '../../calculators/solve.ts';
import { sweep } from '../../calculators/sweep.ts';
import { drawPlot } from './draw.ts';
import { axisOf, plotRange, type PlotSpec } from './spec.ts';

/** Enough that a curve looks smooth and its corners sharp. */
const points = 241;

/** Plots a result of a calculator against one of its givens, all others held. */
export function plotOf(
  library: typeof PlotLibrary,
  document: Document,
  calculator: Solvable & Pick<Calculator, 'given'>,
  { of, against }: PlotSpec,
  values: Values,
): Element {
  const given = calculator.given.find((one) => one.name === against);
  const step = calculator.steps.find((one) => one.name === of);
  if (!given || !step) throw new Error(`unknown plot: ${of} against ${against}`);
  const here = Number(values[against]);
  const [swept] = sweep(calculator, values, against, plotRange(given, here), [of], points);
  return drawPlot(library, document, swept, [axisOf(given), axisOf(step)], here);
}
