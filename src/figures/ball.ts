import { down, move, path, polyline, type Point } from './svg.ts';

const pieces = 48;

export const arcOf = (middle: Point, radius: number, from: number, to: number): Point[] =>
  Array.from({ length: pieces + 1 }, (_, k) => move(middle, down(from + ((to - from) * k) / pieces), radius));

/** The crown of a pole roller as far as the zone is wide, its lowest place `foot` below the middle. */
export function roller(crown: number, half: number, foot: number): Point[] {
  const angle = Math.asin(Math.min(1, half / crown));
  return arcOf({ x: 0, y: foot - crown }, crown, -angle, angle);
}

export const rollerShape = (points: readonly Point[]): string => path(polyline(points, true), { class: 'force area' });

/** The shell of the ball from an edge on. */
export const shellShape = (points: readonly Point[], thick: number): string =>
  path(polyline(points, false), { class: 'rim', 'stroke-width': thick });
