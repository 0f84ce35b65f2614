import { fitInto } from './fit.ts';
import { arrow, direction, figure, label, line, move, path, polyline, type Point } from './svg.ts';
import { number, type FigureValues } from './values.ts';

const width = 332;
const height = 250;
const weight = 58;
const sled = { long: 46, high: 20 };

/** A board on the floor with one end raised and a sled on it, from the side and to scale, with the three forces on the sled. */
export function tiltedBoard(values: FigureValues): string {
  const [rise, floor] = [number(values, 'rise'), number(values, 'l_floor')];
  const place = fitInto(
    [
      { x: 0, y: 0 },
      { x: floor, y: -rise },
    ],
    190,
    120,
  );
  const [low, corner, high] = [place({ x: 0, y: 0 }), place({ x: floor, y: 0 }), place({ x: floor, y: -rise })];
  const along = direction(low, high);
  const out: Point = { x: along.y, y: -along.x };
  const middle: Point = { x: (low.x + high.x) / 2, y: (low.y + high.y) / 2 };
  return figure(
    width,
    height,
    path(`M${(-width / 2 + 6).toFixed(2)} ${low.y.toFixed(2)}H${(width / 2 - 6).toFixed(2)}`, { class: 'axis' }) +
      path(polyline([low, high], false), { class: 'axle' }) +
      line(high, corner, 'geometry keep') +
      path(polyline(box(middle, along, out), true), { class: 'wheel outline' }) +
      forces(move(middle, out, sled.high / 2), along, out, number(values, 'angle_slip')) +
      label({ x: high.x + 22, y: (high.y + corner.y) / 2 }, 'rise') +
      label({ x: (low.x + corner.x) / 2, y: Math.max(low.y + 16, middle.y + weight - 2) }, 'length on the floor'),
  );
}

function box(middle: Point, along: Point, out: Point): Point[] {
  const foot = move(middle, out, 3);
  const corner = (way: number, up: number): Point => move(move(foot, along, (way * sled.long) / 2), out, up);
  return [corner(-1, 0), corner(1, 0), corner(1, sled.high), corner(-1, sled.high)];
}

/** Weight straight down; the board answers with one force square to it and one along it. */
function forces(at: Point, along: Point, out: Point, angle: number): string {
  return (
    arrow(at, move(at, { x: 0, y: 1 }, weight), 'force travel') +
    arrow(at, move(at, out, weight * Math.cos(angle)), 'force') +
    arrow(at, move(at, along, weight * Math.sin(angle)), 'force')
  );
}
