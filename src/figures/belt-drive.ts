import { key } from './key.ts';
import { arrow, at, dot, element, figure, label, line, move, path, type Point } from './svg.ts';
import {
  arcLengths,
  beltPath,
  feetOf,
  placeOnBelt,
  placePulleys,
  spanLength,
  type OnBelt,
  type TwoPulleys,
} from './two-pulleys.ts';
import { number, type FigureValues } from './values.ts';

const width = 332;
const height = 262;
const room = { width: 300, height: 146, middle: -34 };
const tooth = 6;
/** Teeth closer than this run together. */
const closest = 2.6;
const below = 20;

/** Two pulleys from the side with their belt of whole teeth, to scale: spans, wraps, and which teeth are in mesh. */
export function beltDrive(values: FigureValues): string {
  const apart = number(values, 'C_b' in values ? 'C_b' : 'C');
  const pulleys = placePulleys(number(values, 'D1') / 2, number(values, 'D2') / 2, apart, room);
  const smaller = pulleys.radii[0] <= pulleys.radii[1] ? 1 : 2;
  return figure(
    width,
    height,
    pulleys.shafts.map((shaft, k) => pulley(shaft, pulleys.radii[k] ?? 0)).join('') +
      wraps(pulleys) +
      path(beltPath(pulleys), { class: 'rim', 'stroke-width': 1.6 }) +
      teeth(pulleys, smaller, number(values, 'z_b')) +
      pulleys.shafts.map((shaft) => dot(shaft, 'geometry')).join('') +
      distance(pulleys) +
      key({ x: -150, y: height / 2 - 10 }, 'velocity', 'in mesh, smaller pulley') +
      key({ x: 42, y: height / 2 - 10 }, 'axis', 'ends of wrap'),
  );
}

const pulley = ({ x, y }: Point, r: number): string => element('circle', { class: 'wheel outline', cx: x, cy: y, r });

/** From each shaft to where the spans touch its pulley. */
const wraps = (pulleys: TwoPulleys): string =>
  [1, -1]
    .flatMap((side) => feetOf(pulleys, side).map((foot, k) => line(pulleys.shafts[k] ?? foot, foot, 'axis')))
    .join('');

function teeth(pulleys: TwoPulleys, smaller: 1 | 2, count: number): string {
  const arcs = arcLengths(pulleys);
  const whole = arcs[0] + arcs[1] + 2 * spanLength(pulleys);
  const pitch = whole / count;
  const start = smaller === 1 ? 0 : arcs[0] + spanLength(pulleys);
  if (pitch < closest) return path(arcOf(pulleys, smaller), { class: 'velocity line' });
  const offset = start + firstTooth(arcs[smaller - 1] ?? 0, pitch);
  const all = Array.from({ length: count }, (_, k) => placeOnBelt(pulleys, (offset + k * pitch) % whole));
  const marks = (some: readonly OnBelt[], kind: string): string =>
    some.length === 0 ? '' : path(some.map(mark).join(''), { class: `${kind} line` });
  return (
    marks(
      all.filter((one) => one.pulley !== smaller),
      'geometry',
    ) +
    marks(
      all.filter((one) => one.pulley === smaller),
      'velocity',
    )
  );
}

/** As tables count them: only the whole teeth are in mesh, and they lie evenly in the wrap. */
function firstTooth(arc: number, pitch: number): number {
  const part = arc / pitch - Math.floor(arc / pitch + 1e-9);
  return (pitch * (1 + part)) / 2;
}

const mark = ({ place, inward }: OnBelt): string => `M${at(place)}L${at(move(place, inward, tooth))}`;

function arcOf(pulleys: TwoPulleys, smaller: 1 | 2): string {
  const k = smaller - 1;
  const [from, to] = [feetOf(pulleys, smaller === 1 ? -1 : 1)[k], feetOf(pulleys, smaller === 1 ? 1 : -1)[k]];
  const radius = (pulleys.radii[k] ?? 0).toFixed(2);
  return from && to ? `M${at(from)}A${radius} ${radius} 0 0 1 ${at(to)}` : '';
}

/** The centre distance below the drive. */
function distance({ shafts, radii }: TwoPulleys): string {
  const y = room.middle + Math.max(...radii) + below;
  const [from, to] = shafts.map(({ x }) => ({ x, y })) as [Point, Point];
  const middle = { x: (from.x + to.x) / 2, y };
  return (
    shafts.map(({ x, y: shaft }) => line({ x, y: shaft }, { x, y: y + 5 }, 'geometry free')).join('') +
    arrow(middle, from, 'geometry') +
    arrow(middle, to, 'geometry') +
    label({ x: middle.x, y: y + 16 }, 'centre distance')
  );
}
