import { key } from './key.ts';
import { rimArrows, robot, wheelCentre } from './robot.ts';
import {
  arrowHead,
  at,
  centre,
  direction,
  dot,
  element,
  figure,
  heading,
  line,
  move,
  path,
  type Point,
} from './svg.ts';
import { list, number, type FigureValues } from './values.ts';

const size = 300;
const reach = 134;
const robotSize = 0.45;
const wheelTravel = 30;

/** The robot where it starts, the line it was to follow, the path it takes, and the path with its heading held. */
export function bentPath(values: FigureValues): string {
  const s = number(values, 's');
  const left = number(values, 'y_left');
  const held = number(values, 'y_sensor');
  const scale = reach / Math.max(Math.hypot(s, left), Math.hypot(s, held));
  const place = placeAlong(number(values, 'theta'), scale);
  const [goal, end, heldEnd] = [place(s, 0), place(s, left), place(s, held)];
  const angles = list(values, 'alpha_i');
  return figure(
    size,
    size,
    line(centre, goal, 'geometry') +
      line(goal, end, 'geometry') +
      line(centre, heldEnd, 'velocity free') +
      dot(heldEnd, 'velocity') +
      bend(place(s / 2, held / 2), end) +
      robot(angles, robotSize) +
      mattering(angles, list(values, 'i_kappa')) +
      rimArrows(
        angles,
        list(values, 's_i').map((share) => share * wheelTravel),
        'velocity',
        robotSize,
      ) +
      key({ x: -146, y: 142 }, 'geometry', 'meant') +
      key({ x: 76, y: 142 }, 'velocity travel', 'driven') +
      key({ x: -146, y: -134 }, 'velocity free', 'heading held'),
  );
}

/** Where a place along the line and to its left lies in the figure. */
const placeAlong =
  (theta: number, scale: number) =>
  (along: number, left: number): Point =>
    move(move(centre, heading(theta), along * scale), heading(theta + Math.PI / 2), left * scale);

/** It starts towards where holding its heading would lead, and ends where it ends: one curve of the second degree. */
function bend(towards: Point, end: Point): string {
  return (
    path(`M${at(centre)}Q${at(towards)} ${at(end)}`, { class: 'velocity shaft travel' }) +
    arrowHead(end, direction(towards, end), 'velocity')
  );
}

/** A ring about each wheel that matters most. */
const mattering = (angles: readonly number[], most: readonly number[]): string =>
  angles
    .filter((_, k) => (most[k] ?? 0) > 0)
    .map((angle) => wheelCentre(angle, robotSize))
    .map(({ x, y }) => element('circle', { class: 'geometry line', cx: x, cy: y, r: 12 }))
    .join('');
