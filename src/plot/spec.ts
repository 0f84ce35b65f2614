import type { Given, Step } from '../../calculators/calculator.ts';
import { quantityOf, unitOf } from '../../calculators/quantity/units.ts';

/** Which result is plotted against which given. */
export interface PlotSpec {
  readonly of: string;
  readonly against: string;
}

/** The first plot of each calculator that should not be its first result against its first given. */
export const firstPlots: Readonly<Record<string, PlotSpec>> = {
  'roll-ratio': { of: 'omega_w', against: 'phi' },
  'wheel-speeds': { of: 'omega', against: 'theta' },
  'body-motion': { of: 'theta', against: 'alpha' },
  'speed-envelope': { of: 'v_top', against: 'theta' },
};

/** Givens a plot can run along: one number that varies smoothly. */
export const plottable = (given: Given): boolean => !given.list && !given.options && !given.whole;

/** The stretch of a given that a plot shows: a whole turn for an angle, else about the value in hand. */
export function plotRange(given: Given, si: number): readonly [from: number, to: number] {
  if (given.quantity === 'angle') return [Math.max(given.least, -Math.PI), Math.min(given.most, Math.PI)];
  const usual = Number(given.usual.value) * unitOf(quantityOf(given.quantity), given.usual.unit).factor;
  const reach = 2 * Math.max(Math.abs(si), Math.abs(usual)) || (given.most - given.least) / 20;
  return [Math.max(given.least, given.least < 0 ? -reach : 0), Math.min(given.most, reach)];
}

export interface Axis {
  readonly label: string;
  readonly factor: number;
}

export const axisOf = (one: Given | Step): Axis => ({
  label: `${one.means}${one.unit ? `, ${one.unit}` : ''}`,
  factor: unitOf(quantityOf(one.quantity), one.unit).factor,
});
