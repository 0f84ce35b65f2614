import { arrow, element, label, line, move, type Point } from './svg.ts';

export interface AngledWheel {
  readonly number: number;
  readonly at: Point;
  /** Which way its rollers slant: 1 or −1. */
  readonly slant: number;
  /** Rim speed, forwards positive. */
  readonly rim: number;
}

const length = 40;
const width = 18;
const apart = 6;
const rollers = [-3, -2, -1, 0, 1, 2, 3];

/** A wheel facing up the page with the rollers on its top, which slant against those on the floor. */
export function angledWheel({ at, slant, number }: AngledWheel, gamma: number): string {
  const along = { x: slant * Math.cos(gamma), y: -Math.sin(gamma) };
  return (
    element('rect', {
      class: 'wheel outline',
      x: at.x - width / 2,
      y: at.y - length / 2,
      width,
      height: length,
      rx: 4,
    }) +
    rollers.map((k) => roller(at, along, k * apart)).join('') +
    label({ x: at.x, y: at.y + Math.sign(at.y) * (length / 2 + 10) }, String(number))
  );
}

/** A roller some way from the wheel's middle, as long as the wheel's outline lets it be. */
function roller(at: Point, along: Point, by: number): string {
  const middle = { x: -along.y * by, y: along.x * by };
  const [right, down] = [reach(middle.x, along.x, width / 2 - 2), reach(middle.y, along.y, length / 2 - 2)];
  const [from, to] = [Math.max(right[0], down[0]), Math.min(right[1], down[1])];
  if (to - from < apart) return '';
  const place = move(at, middle, 1);
  return line(move(place, along, from), move(place, along, to), 'roller');
}

/** How far one may go backwards and forwards before one coordinate leaves ± half. */
function reach(start: number, rate: number, half: number): readonly [number, number] {
  const ends = [-half, half].map((end) => (end - start) / rate);
  return [Math.min(...ends), Math.max(...ends)];
}

/** The rim speed of a wheel, on its outer side. */
export function rimBeside({ at }: AngledWheel, forwards: number): string {
  const from = { x: at.x + Math.sign(at.x) * (width / 2 + 8), y: at.y };
  return arrow(from, { x: from.x, y: from.y - forwards }, 'velocity');
}
