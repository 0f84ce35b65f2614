import { arrow, degrees, element, heading, move, path, polyline, text, type Point } from './svg.ts';

const body = 84;
const wheelLength = 40;
const wheelWidth = 17;

export const centre: Point = { x: 0, y: 0 };

/** The robot from above: wheels at their angles round a body with its nose marked. */
export function robot(angles: readonly number[]): string {
  const nose = [
    move(centre, heading(0), 34),
    move({ x: -7, y: 0 }, heading(0), 20),
    move({ x: 7, y: 0 }, heading(0), 20),
  ];
  return (
    path(polyline(outline(angles), true), { class: 'body' }) +
    path(polyline(nose, true), { class: 'nose' }) +
    angles.map((angle, k) => wheel(angle, k + 1)).join('')
  );
}

/** Flat in front of each wheel, as a plate cut for it would be. */
function outline(angles: readonly number[]): Point[] {
  const half = Math.min(0.36, Math.PI / angles.length - 0.06);
  const corner = (body - wheelWidth / 2 - 1.5) / Math.cos(half);
  return angles.flatMap((angle) => [angle - half, angle + half].map((a) => move(centre, heading(a), corner)));
}

export const wheelCentre = (angle: number): Point => move(centre, heading(angle), body);

/** The way a wheel drives: square to the line from the centre, counter-clockwise. */
export const driveDirection = (angle: number): Point => heading(angle + Math.PI / 2);

function wheel(angle: number, number: number): string {
  const at = wheelCentre(angle);
  const label = move(at, heading(angle), -22);
  return (
    element('rect', {
      class: 'wheel',
      x: -wheelLength / 2,
      y: -wheelWidth / 2,
      width: wheelLength,
      height: wheelWidth,
      rx: wheelWidth / 2.2,
      transform: `translate(${at.x.toFixed(2)} ${at.y.toFixed(2)}) rotate(${(-degrees(angle)).toFixed(2)})`,
    }) + text({ x: label.x, y: label.y + 4 }, String(number), { class: 'label', 'text-anchor': 'middle' })
  );
}

/** Arrows at the wheels along their drive directions, lengths in the figure's units. */
export const rimArrows = (angles: readonly number[], lengths: readonly number[], kind: string): string =>
  angles.map((angle, k) => sideArrow(wheelCentre(angle), driveDirection(angle), angle, lengths[k] ?? 0, kind)).join('');

/** Beside the wheel on the outer side, so that the arrow does not hide it. */
function sideArrow(at: Point, along: Point, angle: number, length: number, kind: string): string {
  const from = move(at, heading(angle), 13);
  return arrow(from, move(from, along, length), kind);
}
