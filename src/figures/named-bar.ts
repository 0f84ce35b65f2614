import { arrow, text, type Point } from './svg.ts';

/** Words at the left end of a bar. */
export const barName = ({ x, y }: Point, words: string): string =>
  text({ x: x - 10, y: y + 4 }, words, { class: 'label', 'text-anchor': 'end' });

/** A size as an arrow to the right, with its name before it. */
export const namedBar = (from: Point, words: string, kind: string, length: number): string =>
  barName(from, words) + arrow(from, { x: from.x + length, y: from.y }, kind);
