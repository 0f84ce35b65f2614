import { fitInto } from './fit.ts';
import {
  arrow,
  arrowHead,
  centre,
  direction,
  figure,
  group,
  heading,
  label,
  line,
  move,
  path,
  polyline,
  text,
  type Point,
} from './svg.ts';
import { number, type FigureValues } from './values.ts';

const width = 336;
const height = 238;
const panel = 112;
const corners = 72;

/** Three times the true path, up the page, and beside it where the robot believes it went. */
export function reckonedPaths(values: FigureValues): string {
  const length = number(values, 's');
  const turned = number(values, 'dtheta_turn');
  const paths = [
    { words: 'turned first', points: [centre, move(centre, heading(turned), length)] },
    { words: 'turning all the way', points: arc(length, turned) },
    { words: 'one wheel wrong', points: arc(length, number(values, 'dtheta_one')) },
  ];
  const goal = move(centre, heading(0), length);
  const place = fitInto([goal, ...paths.flatMap(({ points }) => points)], panel - 24, height - 58);
  return figure(
    width,
    height,
    paths
      .map(
        ({ words, points }, k) =>
          group({ x: (k - 1) * panel, y: -9 }, comparison(points.map(place), place(centre), place(goal))) +
          label({ x: (k - 1) * panel, y: height / 2 - 12 }, words),
      )
      .join(''),
  );
}

function comparison(points: readonly Point[], start: Point, goal: Point): string {
  const end = points[points.length - 1] ?? start;
  const beside = { x: goal.x, y: end.y };
  return (
    arrow(start, goal, 'velocity travel') +
    path(polyline(points, false), { class: 'velocity line free' }) +
    headAt(points) +
    line(beside, end, 'geometry') +
    offName(beside, end)
  );
}

/** Only where there is room for it. */
const offName = (beside: Point, end: Point): string =>
  Math.abs(end.x - beside.x) < 22
    ? ''
    : text({ x: (beside.x + end.x) / 2, y: end.y - 6 }, 'y', { class: 'geometry symbol', 'text-anchor': 'middle' });

/** The head of an arrow at the end of a path. */
function headAt(points: readonly Point[]): string {
  const [before = centre, end = centre] = points.slice(-2);
  const stands = end.x === before.x && end.y === before.y;
  return stands ? '' : arrowHead(end, direction(before, end), 'velocity');
}

/** A path of some length, up the page at first, that turns evenly; of more than one round only the last is drawn. */
function arc(length: number, turn: number): Point[] {
  const drawn = Math.min(1, (2 * Math.PI) / Math.max(Math.abs(turn), 1e-12));
  return Array.from({ length: corners + 1 }, (_, k) => chord(length, turn, 1 - drawn * (1 - k / corners)));
}

/** The end of the first part of an arc: a chord at half its turn. */
function chord(length: number, turn: number, part: number): Point {
  const half = (turn * part) / 2;
  return move(centre, heading(half), length * part * (half === 0 ? 1 : Math.sin(half) / half));
}
