import { line, text, type Point } from './svg.ts';

const sample = 20;

/** What a kind of line means: a piece of it, and words. */
export const key = ({ x, y }: Point, kind: string, words: string): string =>
  line({ x, y: y - 4 }, { x: x + sample, y: y - 4 }, kind) + text({ x: x + sample + 5, y }, words, { class: 'label' });
