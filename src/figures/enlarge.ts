import { formatNumber } from '../../calculators/quantity/format.ts';
import { element, line, type Point } from './svg.ts';

/** The largest of …, 0.5, 1, 2, 5, 10, … that is not above a factor: an enlargement that can be said in a word. */
export function roundFactor(most: number): number {
  const power = 10 ** Math.floor(Math.log10(most));
  const [largest = 1] = [5, 2, 1].filter((digit) => digit * power <= most);
  return largest * power;
}

export const times = (factor: number): string => `× ${formatNumber(factor, 3)}`;

/** The frame of what is enlarged, about a place on the floor. */
export interface Box {
  readonly half: number;
  readonly above: number;
  readonly below: number;
}

export const frameOf = ({ half, above, below }: Box): string =>
  element('rect', { class: 'body', x: -half, y: -above, width: 2 * half, height: above + below });

/** From both sides of a small place to the corners of its enlargement. */
export const leaders = (from: Point, half: number, to: Point, toHalf: number): string =>
  [-1, 1]
    .map((side) => line({ x: from.x + side * half, y: from.y }, { x: to.x + side * toHalf, y: to.y }, 'axis'))
    .join('');
