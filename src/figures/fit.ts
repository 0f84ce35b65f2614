import type { Point } from './svg.ts';

/** Puts points of any scale into a box about the middle, all by one scale: hands back where each then lies. */
export function fitInto(points: readonly Point[], width: number, height: number): (point: Point) => Point {
  const [left, right] = ends(points.map(({ x }) => x));
  const [top, bottom] = ends(points.map(({ y }) => y));
  const scale = Math.min(width / Math.max(right - left, 1e-12), height / Math.max(bottom - top, 1e-12));
  return ({ x, y }) => ({ x: (x - (left + right) / 2) * scale, y: (y - (top + bottom) / 2) * scale });
}

const ends = (numbers: readonly number[]): readonly [number, number] => [Math.min(...numbers), Math.max(...numbers)];
