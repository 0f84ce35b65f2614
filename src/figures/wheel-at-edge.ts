import { arrow, at, down, element, figure, group, heading, line, move, path, short, text, type Point } from './svg.ts';
import { number, type FigureValues } from './values.ts';

const width = 330;
const height = 228;
const longest = 82;
const spread = 74;
const stepFloor = 84;
/** Higher up, for a wheel that sinks in. */
const gapFloor = 30;

const optional = (values: FigureValues, name: string): number | undefined =>
  Object.hasOwn(values, name) ? number(values, name) : undefined;

/** A wheel from the side as it leaves the floor at a step, a cable or the far edge of a gap, with the forces on it to scale. */
export function wheelAtEdge(values: FigureValues): string {
  const bump = optional(values, 'd_c');
  const psi = number(values, 'psi');
  const radius = bump === undefined ? 66 : Math.min(66, 60 / (bump / 2 / number(values, 'r')));
  const gap = optional(values, 'width') !== undefined;
  const floor = gap ? gapFloor : stepFloor;
  const axle: Point = { x: -20, y: floor - radius * (gap ? Math.cos(psi) : 1) };
  const inward = heading(psi);
  const contact = move(axle, inward, -radius);
  return figure(
    width,
    height,
    ground(values, floor, axle, contact, radius) +
      wheel(axle, radius) +
      cone(contact, inward, optional(values, 'mu')) +
      contactAngle(axle, contact, psi, radius) +
      forces(values, axle, contact),
  );
}

function ground(values: FigureValues, floor: number, axle: Point, contact: Point, radius: number): string {
  const left = -width / 2 + 4;
  const right = width / 2 - 4;
  const gap = optional(values, 'width');
  const bump = optional(values, 'd_c');
  if (gap !== undefined) {
    const near = 2 * axle.x - contact.x;
    const bottom = Math.max(floor + 36, axle.y + radius + 8);
    return path(`M${left} ${floor}H${short(near)}V${short(bottom)}H${short(contact.x)}V${floor}H${right}`, {
      class: 'rim',
      'stroke-width': 2,
    });
  }
  if (bump !== undefined) {
    const size = (bump / 2 / number(values, 'r')) * radius;
    const middle = move(contact, { x: contact.x - axle.x, y: contact.y - axle.y }, size / radius);
    return (
      line({ x: left, y: floor }, { x: right, y: floor }, 'axis') +
      element('circle', { class: 'roller', cx: middle.x, cy: middle.y, r: size })
    );
  }
  return path(`M${left} ${floor}H${short(contact.x)}V${short(contact.y)}H${right}`, {
    class: 'rim',
    'stroke-width': 2,
  });
}

const wheel = (axle: Point, radius: number): string =>
  element('circle', { class: 'wheel outline', cx: axle.x, cy: axle.y, r: radius }) +
  element('circle', { class: 'axle', cx: axle.x, cy: axle.y, r: 3 });

/** The edge can push only within the cone of friction about the line to the axle. */
function cone(contact: Point, inward: Point, mu: number | undefined): string {
  if (mu === undefined) return '';
  const across = { x: -inward.y, y: inward.x };
  const half = Math.atan(mu);
  const side = (sign: number): Point =>
    move(move(contact, inward, spread * Math.cos(half)), across, sign * spread * Math.sin(half));
  return path(`M${at(side(1))}L${at(contact)}L${at(side(-1))}`, { class: 'geometry line' });
}

function contactAngle(axle: Point, contact: Point, psi: number, radius: number): string {
  // Between the two lines, or beside them where they leave no room.
  const name =
    psi > 0.4
      ? move(axle, down(psi / 2), radius * 0.62)
      : { x: axle.x + Math.sin(psi) * radius * 0.45 + 12, y: axle.y + radius * 0.45 };
  return (
    line(axle, contact, 'geometry') +
    line(axle, { x: axle.x, y: axle.y + radius }, 'geometry') +
    text({ x: name.x, y: name.y + 4 }, 'ψ', { class: 'geometry symbol', 'text-anchor': 'middle' })
  );
}

/** Weight and push at the axle, and at the edge the force that balances both. */
function forces(values: FigureValues, axle: Point, contact: Point): string {
  const weight = optional(values, 'W');
  if (weight === undefined) {
    const reach = number(values, 'v') > 0 ? longest : 0;
    return group(axle, arrow({ x: 0, y: 0 }, { x: reach, y: 0 }, 'velocity travel'));
  }
  const push = optional(values, 'H') ?? number(values, 'push');
  const scale = longest / Math.hypot(weight, push);
  const down = weight * scale;
  const along = push * scale;
  const from = { x: axle.x - along, y: axle.y };
  const name = (p: Point, words: string): string => text(p, words, { class: 'force symbol', 'text-anchor': 'middle' });
  return (
    arrow(axle, { x: axle.x, y: axle.y + down }, 'force') +
    arrow(from, axle, 'force') +
    arrow(contact, { x: contact.x - along, y: contact.y - down }, 'force') +
    name({ x: axle.x - 12, y: axle.y + 0.6 * down }, 'W') +
    (along > 6 ? name({ x: from.x + 4, y: axle.y - 8 }, optional(values, 'H') === undefined ? 'push' : 'H') : '')
  );
}
