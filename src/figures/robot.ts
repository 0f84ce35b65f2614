import { arrow, centre, degrees, element, heading, label, move, path, polyline, type Point } from './svg.ts';

const body = 84;
const wheelLength = 40;
const wheelWidth = 17;

/**
 * The robot from above: wheels at their angles round a body with its nose marked.
 * @param size 1 for a figure of its own; its labels stay as large.
 */
export function robot(angles: readonly number[], size = 1): string {
  const nose = [
    move(centre, heading(0), 34 * size),
    move({ x: -7 * size, y: 0 }, heading(0), 20 * size),
    move({ x: 7 * size, y: 0 }, heading(0), 20 * size),
  ];
  return (
    path(polyline(outline(angles, size), true), { class: 'body' }) +
    path(polyline(nose, true), { class: 'nose' }) +
    angles.map((angle, k) => wheel(angle, k + 1, size)).join('')
  );
}

/** Flat in front of each wheel, as a plate cut for it would be. */
function outline(angles: readonly number[], size: number): Point[] {
  const half = Math.min(0.36, Math.PI / angles.length - 0.06);
  const corner = ((body - wheelWidth / 2 - 1.5) * size) / Math.cos(half);
  return angles.flatMap((angle) => [angle - half, angle + half].map((a) => move(centre, heading(a), corner)));
}

export const wheelCentre = (angle: number, size = 1): Point => move(centre, heading(angle), body * size);

/** The way a wheel drives: square to the line from the centre, counter-clockwise. */
export const driveDirection = (angle: number): Point => heading(angle + Math.PI / 2);

function wheel(angle: number, number: number, size: number): string {
  const at = wheelCentre(angle, size);
  return (
    element('rect', {
      class: 'wheel',
      x: (-wheelLength / 2) * size,
      y: (-wheelWidth / 2) * size,
      width: wheelLength * size,
      height: wheelWidth * size,
      rx: (wheelWidth / 2.2) * size,
      transform: `translate(${at.x.toFixed(2)} ${at.y.toFixed(2)}) rotate(${(-degrees(angle)).toFixed(2)})`,
    }) + label(move(at, heading(angle), -(wheelWidth / 2) * size - 13.5), String(number))
  );
}

/** A place beside a wheel on the outer side, so that what is drawn there does not hide it. */
export const besideWheel = (angle: number, size = 1, gap = 4.5): Point =>
  move(wheelCentre(angle, size), heading(angle), (wheelWidth / 2) * size + gap);

/** Arrows beside the wheels along their drive directions, lengths in the figure's units. */
export const rimArrows = (
  angles: readonly number[],
  lengths: readonly number[],
  kind: string,
  size = 1,
  gap?: number,
): string =>
  angles
    .map((angle, k) => {
      const from = besideWheel(angle, size, gap);
      return arrow(from, move(from, driveDirection(angle), lengths[k] ?? 0), kind);
    })
    .join('');
