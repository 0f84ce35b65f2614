import * as Plot from '@observablehq/plot';
import { parseHTML } from 'linkedom';
import type { Calculator } from '../../calculators/calculator.ts';
import type { Values } from '../../calculators/formula/evaluate.ts';
import { plotOf } from './plot-of.ts';
import type { PlotSpec } from './spec.ts';

/** The plot of a calculator as SVG text, drawn without a browser. */
export function renderPlot(calculator: Calculator, spec: PlotSpec, values: Values): string {
  const { document } = parseHTML('<!doctype html><html><body></body></html>');
  return plotOf(Plot, document, calculator, spec, values).outerHTML;
}
