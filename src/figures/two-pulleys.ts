import { at, move, type Point } from './svg.ts';

/** Two pulleys on a level line, pulley 1 on the left, in the units of the figure. */
export interface TwoPulleys {
  readonly shafts: readonly [Point, Point];
  readonly radii: readonly [number, number];
  /** Angle of a span to the line of shafts; the spans part towards the larger pulley. */
  readonly lean: number;
  readonly apart: number;
  /** Figure units for each metre. */
  readonly scale: number;
}

interface Room {
  readonly width: number;
  readonly height: number;
  readonly middle: number;
}

/** As large as the room allows, in its middle. */
export function placePulleys(r1: number, r2: number, apart: number, room: Room): TwoPulleys {
  const scale = Math.min(room.width / (apart + r1 + r2), room.height / (2 * Math.max(r1, r2)));
  const first = { x: (-(apart + r1 + r2) / 2 + r1) * scale, y: room.middle };
  return {
    shafts: [first, { x: first.x + apart * scale, y: room.middle }],
    radii: [r1 * scale, r2 * scale],
    lean: Math.asin((r2 - r1) / apart),
    apart: apart * scale,
    scale,
  };
}

/** The direction square to a span, away from the line of shafts: the upper one for 1, the lower one for -1. */
const outward = ({ lean }: TwoPulleys, side: number): Point => ({ x: -Math.sin(lean), y: -side * Math.cos(lean) });

/** The direction of a span, from pulley 1 to pulley 2. */
export const alongSpan = ({ lean }: TwoPulleys, side: number): Point => ({
  x: Math.cos(lean),
  y: -side * Math.sin(lean),
});

/** Where a span leaves pulley 1 and meets pulley 2. */
export const feetOf = (pulleys: TwoPulleys, side: number): readonly [Point, Point] => [
  move(pulleys.shafts[0], outward(pulleys, side), pulleys.radii[0]),
  move(pulleys.shafts[1], outward(pulleys, side), pulleys.radii[1]),
];

/** The whole belt; a slack lower span hangs by `sag`. */
export function beltPath(pulleys: TwoPulleys, sag = 0): string {
  const [upper, upperFar] = feetOf(pulleys, 1);
  const [lower, lowerFar] = feetOf(pulleys, -1);
  const [near, far] = pulleys.radii;
  const large = pulleys.lean > 0 ? 1 : 0;
  const round = (radius: number, more: number, end: Point): string =>
    `A${radius.toFixed(2)} ${radius.toFixed(2)} 0 ${more} 1 ${at(end)}`;
  const hung = { x: (lower.x + lowerFar.x) / 2, y: (lower.y + lowerFar.y) / 2 + sag };
  const back = sag > 0 ? `Q${at(hung)} ${at(lower)}` : `L${at(lower)}`;
  return `M${at(upper)}L${at(upperFar)}${round(far, large, lowerFar)}${back}${round(near, 1 - large, upper)}Z`;
}

/** A place on the belt, and the direction towards the inside of the loop. */
export interface OnBelt {
  readonly place: Point;
  readonly inward: Point;
  /** The pulley it lies on, or none for a place on a span. */
  readonly pulley?: 1 | 2;
}

export const arcLengths = ({ lean, radii }: TwoPulleys): readonly [number, number] => [
  (Math.PI - 2 * lean) * radii[0],
  (Math.PI + 2 * lean) * radii[1],
];

export const spanLength = ({ apart, lean }: TwoPulleys): number => apart * Math.cos(lean);

/** The place at a distance along the belt, from where the lower span meets pulley 1 and round that pulley first. */
export function placeOnBelt(pulleys: TwoPulleys, distance: number): OnBelt {
  const [arc1, arc2] = arcLengths(pulleys);
  const span = spanLength(pulleys);
  const { lean } = pulleys;
  if (distance < arc1) return onPulley(pulleys, 1, Math.PI / 2 + lean + distance / pulleys.radii[0]);
  if (distance < arc1 + span) return onSpan(pulleys, 1, distance - arc1);
  const beyond = distance - arc1 - span;
  if (beyond < arc2) return onPulley(pulleys, 2, -Math.PI / 2 - lean + beyond / pulleys.radii[1]);
  return onSpan(pulleys, -1, span - (beyond - arc2));
}

/** The angle runs clockwise on the page, from the right. */
function onPulley({ shafts, radii }: TwoPulleys, pulley: 1 | 2, angle: number): OnBelt {
  const out = { x: Math.cos(angle), y: Math.sin(angle) };
  const place = move(shafts[pulley - 1] ?? shafts[0], out, radii[pulley - 1] ?? radii[0]);
  return { place, inward: { x: -out.x, y: -out.y }, pulley };
}

function onSpan(pulleys: TwoPulleys, side: number, distance: number): OnBelt {
  const out = outward(pulleys, side);
  return {
    place: move(feetOf(pulleys, side)[0], alongSpan(pulleys, side), distance),
    inward: { x: -out.x, y: -out.y },
  };
}
