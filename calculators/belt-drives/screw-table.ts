import type { Table } from '../calculator.ts';

const inch = 0.0254;
const poundForce = 0.45359237 * 9.80665;

/** Inch-series set screws: diameter in inches, force in pounds. */
const printed: readonly (readonly [diameter: number, force: number])[] = [
  [0.06, 50],
  [0.073, 65],
  [0.086, 85],
  [0.099, 120],
  [0.112, 160],
  [0.125, 200],
  [0.138, 250],
  [0.164, 385],
  [0.19, 540],
  [0.25, 1000],
  [0.3125, 1500],
  [0.375, 2000],
  [0.4375, 2500],
  [0.5, 3000],
];

export const holdingForce: Table = {
  title: 'Holding force of a cup-point set screw',
  source: 'budynas-nisbett-2011',
  place: 'Budynas and Nisbett (2011), table 7-4, p. 389, mostly from memory',
  of: 'diameter of the screw',
  rows: printed.map(([diameter, force]) => [diameter * inch, force * poundForce]),
  between: 'straight lines',
};
