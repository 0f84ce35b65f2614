import { key } from './key.ts';
import { arrow, at, dot, element, figure, label, move, path, type Point } from './svg.ts';
import { number, type FigureValues } from './values.ts';

const width = 332;
const height = 240;
const room = { width: 304, height: 144 };
const middle = -20;
const sag = 9;

interface Drive {
  readonly shafts: readonly [Point, Point];
  readonly radii: readonly [number, number];
  readonly lean: number;
  readonly apart: number;
}

/** Two pulleys from the side with their belt, to scale, and the pulls on pulley 1 with the load on its shaft, to scale too. */
export function beltPulls(values: FigureValues): string {
  const drive = driveOf(values);
  const [first, second] = drive.shafts;
  const deep = Math.max(...drive.radii);
  return figure(
    width,
    height,
    pulley(first, drive.radii[0], number(values, 'z1')) +
      pulley(second, drive.radii[1], number(values, 'z2')) +
      belt(drive, number(values, 'F_s') === 0) +
      dot(second, 'geometry') +
      pulls(drive, values) +
      label({ x: 0, y: middle - deep - 12 }, 'tight side') +
      label({ x: 0, y: middle + deep + 17 }, 'slack side') +
      key({ x: -138, y: height / 2 - 10 }, 'force', 'pulls of the belt') +
      key({ x: 14, y: height / 2 - 10 }, 'force travel', 'load on shaft 1'),
  );
}

function driveOf(values: FigureValues): Drive {
  const [r1, r2, apart] = [number(values, 'D1') / 2, number(values, 'D2') / 2, number(values, 'C')];
  const scale = Math.min(room.width / (apart + r1 + r2), room.height / (2 * Math.max(r1, r2)));
  const left = (-(apart + r1 + r2) / 2) * scale;
  const first = { x: left + r1 * scale, y: middle };
  return {
    shafts: [first, { x: first.x + apart * scale, y: middle }],
    radii: [r1 * scale, r2 * scale],
    lean: number(values, 'phi_b'),
    apart: apart * scale,
  };
}

/** The direction square to a span, away from the line of shafts: the upper one for 1, the lower one for -1. */
const outward = ({ lean }: Drive, side: number): Point => ({ x: -Math.sin(lean), y: -side * Math.cos(lean) });

/** The direction of a span, from pulley 1 to pulley 2. */
const along = ({ lean }: Drive, side: number): Point => ({ x: Math.cos(lean), y: -side * Math.sin(lean) });

const feet = (drive: Drive, side: number): readonly [Point, Point] => [
  move(drive.shafts[0], outward(drive, side), drive.radii[0]),
  move(drive.shafts[1], outward(drive, side), drive.radii[1]),
];

function belt(drive: Drive, loose: boolean): string {
  const [upper, upperFar] = feet(drive, 1);
  const [lower, lowerFar] = feet(drive, -1);
  const large = drive.lean > 0 ? 1 : 0;
  const round = (radius: number, more: number, end: Point): string =>
    `A${radius.toFixed(2)} ${radius.toFixed(2)} 0 ${more} 1 ${at(end)}`;
  const hung = { x: (lower.x + lowerFar.x) / 2, y: (lower.y + lowerFar.y) / 2 + sag };
  const back = loose ? `Q${at(hung)} ${at(lower)}` : `L${at(lower)}`;
  const [near, far] = drive.radii;
  return path(`M${at(upper)}L${at(upperFar)}${round(far, large, lowerFar)}${back}${round(near, 1 - large, upper)}`, {
    class: 'rim',
    'stroke-width': 1.6,
  });
}

/** A pulley with its teeth, where there is room to see them. */
function pulley(shaft: Point, radius: number, teeth: number): string {
  const circle = (r: number, more: Readonly<Record<string, string | number>>): string =>
    element('circle', { cx: shaft.x, cy: shaft.y, r, ...more });
  const toothed = (2 * Math.PI * radius) / teeth > 2.5 && radius > 6;
  return (
    circle(radius, { class: 'wheel outline' }) +
    (toothed
      ? circle(radius - 3, {
          class: 'rim',
          'stroke-width': 2.4,
          pathLength: 2 * teeth,
          'stroke-dasharray': '1 1',
        })
      : '')
  );
}

/** From where the spans leave pulley 1 and from its shaft, all to one scale. */
function pulls(drive: Drive, values: FigureValues): string {
  const [shaft] = drive.shafts;
  const load = { x: number(values, 'F_along'), y: -number(values, 'F_across') };
  const scale = (0.9 * drive.apart) / Math.max(number(values, 'F_t'), number(values, 'F_shaft'));
  const pull = (side: number, name: string): string => {
    const [foot] = feet(drive, side);
    return arrow(foot, move(foot, along(drive, side), number(values, name) * scale), 'force');
  };
  return (
    pull(1, 'F_t') + pull(-1, 'F_s') + arrow(shaft, move(shaft, load, scale), 'force travel') + dot(shaft, 'force')
  );
}
