import { angledWheel, rimBeside, type AngledWheel } from './angled-wheel.ts';
import { key } from './key.ts';
import { arrow, centre, dot, figure, line, move, path, polyline, type Point } from './svg.ts';
import { turnArrow } from './turn-arrow.ts';
import { list, number, type FigureValues } from './values.ts';

const width = 320;
const height = 296;
const reach = 66;
/** Closer to the middle, the wheels would overlap. */
const nearest = 22;
const longest = 54;
const edge = 152;

/** Four wheels from above with their rollers as seen on top, rim speeds and travel to one scale, and the lever. */
export function rollerSlants(values: FigureValues): string {
  const scale = reach / Math.max(number(values, 'half_base'), number(values, 'half_track'));
  const wheels = wheelsOf(values, scale);
  const travel = { x: -number(values, 'v_y'), y: -number(values, 'v_x') };
  const fastest = Math.max(Math.hypot(travel.x, travel.y), ...wheels.map(({ rim }) => Math.abs(rim)));
  const speed = longest / Math.max(fastest, 1e-9);
  const lever = wheels.some(({ moved }) => moved) ? '' : leverOf(wheels, number(values, 'lever') * scale);
  return figure(
    width,
    height,
    body(wheels) +
      lever +
      wheels.map((wheel) => angledWheel(wheel, number(values, 'gamma'))).join('') +
      turnArrow(number(values, 'Omega')) +
      arrow(centre, move(centre, travel, speed), 'velocity travel') +
      wheels.map((wheel) => rimBeside(wheel, wheel.rim * speed)).join(''),
  );
}

interface Placed extends AngledWheel {
  /** Not to scale: a robot so long or so wide that its wheels would overlap. */
  readonly moved: boolean;
}

function wheelsOf(values: FigureValues, scale: number): Placed[] {
  const ahead = list(values, 'x_i');
  const left = list(values, 'y_i');
  const rims = list(values, 'u');
  const apart = (x: number): number => Math.sign(x) * Math.max(Math.abs(x) * scale, nearest);
  return list(values, 'k_i').map((slant, k) => {
    const [x, y] = [ahead[k] ?? 0, left[k] ?? 0];
    const moved = Math.min(Math.abs(x), Math.abs(y)) * scale < nearest;
    return { number: k + 1, slant, at: { x: -apart(y), y: -apart(x) }, rim: rims[k] ?? 0, moved };
  });
}

function body(wheels: readonly AngledWheel[]): string {
  const across = Math.max(...wheels.map(({ at }) => at.x)) - 12;
  const along = Math.max(...wheels.map(({ at }) => at.y)) + 10;
  const corners = [
    { x: -across, y: -along },
    { x: across, y: -along },
    { x: across, y: along },
    { x: -across, y: along },
  ];
  const nose = [
    { x: 0, y: 8 - along },
    { x: -7, y: 20 - along },
    { x: 7, y: 20 - along },
  ];
  return path(polyline(corners, true), { class: 'body' }) + path(polyline(nose, true), { class: 'nose' });
}

/** From the middle to where the axes of the right wheels' rollers on the floor meet, as far as the figure shows. */
function leverOf(wheels: readonly AngledWheel[], lever: number): string {
  const foot: Point = { x: lever, y: 0 };
  const seen: Point = { x: Math.max(-edge, Math.min(edge, lever)), y: 0 };
  const axes = wheels.filter(({ at }) => at.x > 0).map(({ at }) => line(at, towards(at, foot), 'geometry free'));
  return (
    axes.join('') +
    line(centre, seen, 'geometry') +
    (seen.x === foot.x ? dot(foot, 'geometry') : '') +
    key({ x: -150, y: height / 2 - 8 }, 'geometry', 'lever') +
    key({ x: -62, y: height / 2 - 8 }, 'geometry free', 'axes of rollers on the floor')
  );
}

/** The whole way, or to the edge of the figure. */
function towards(from: Point, to: Point): Point {
  const out = Math.abs(to.x) > edge ? (Math.sign(to.x) * edge - from.x) / (to.x - from.x) : 1;
  return { x: from.x + (to.x - from.x) * out, y: from.y + (to.y - from.y) * out };
}
