import { namedBar } from './named-bar.ts';
import { arrow, at, element, figure, heading, line, move, path, polyline, text, type Point } from './svg.ts';
import { number, type FigureValues } from './values.ts';

const width = 332;
const height = 272;
const middle: Point = { x: 0, y: -74 };
const radius = 56;
const rows = { first: 12, step: 24 };
const barLeft = -34;
const barLongest = 180;

interface Hub {
  /** Radius of the shaft, as drawn. */
  readonly shaft: number;
  readonly scale: number;
}

/** Hub and shaft cut across, held the way chosen; under them the torque that each way would hold, and the one to be held. */
export function hubSection(values: FigureValues): string {
  const scale = (2 * radius) / number(values, 'd_o');
  const hub: Hub = { scale, shaft: (number(values, 'd') / 2) * scale };
  const ways = ['', screwed, flattened, pressed];
  const draw = ways[number(values, 'hold')];
  return figure(
    width,
    height,
    element('circle', { class: 'wheel outline', cx: middle.x, cy: middle.y, r: radius }) +
      (typeof draw === 'function' ? draw(values, hub) : '') +
      torques(values),
  );
}

const disc = ({ shaft }: Hub): string =>
  ['pile', 'axis line']
    .map((kind) => element('circle', { class: kind, cx: middle.x, cy: middle.y, r: shaft }))
    .join('');

/** Where a ray from the middle lies, straight up for 0, clockwise. */
const ray = (angle: number): Point => heading(-angle);

/** Screws a quarter turn apart, from the rim of the hub to the shaft. */
function screwed(values: FigureValues, hub: Hub): string {
  const half = Math.min((number(values, 'd_s') / 2) * hub.scale, radius / 3);
  const screw = (_: unknown, k: number): string => {
    const along = ray((k * Math.PI) / 2);
    const aside = ray(((k + 1) * Math.PI) / 2);
    const corner = (far: number, way: number): Point => move(move(middle, along, far), aside, way * half);
    const shape = [corner(radius, -1), corner(radius, 1), corner(hub.shaft, 1), corner(hub.shaft, -1)];
    return path(polyline(shape, true), { class: 'force area' });
  };
  return disc(hub) + Array.from({ length: number(values, 'screws') }, screw).join('');
}

/** The flat on top, with the pressure that rises towards one of its edges. */
function flattened(values: FigureValues, hub: Hub): string {
  const half = (number(values, 'w_f') / 2) * hub.scale;
  const level = middle.y - hub.shaft + number(values, 'h_f') * hub.scale;
  const large = number(values, 'h_f') < number(values, 'd') / 2 ? 1 : 0;
  const [from, to] = [
    { x: middle.x + half, y: level },
    { x: middle.x - half, y: level },
  ];
  const r = hub.shaft.toFixed(2);
  const shape = `M${at(from)}A${r} ${r} 0 ${large} 1 ${at(to)}Z`;
  const room = Math.min(level - (middle.y - radius), 26);
  const push = [1, 2, 3, 4].map((k) => {
    const x = middle.x + (k / 4) * half;
    return arrow({ x, y: level - (k / 4) * room }, { x, y: level }, 'force');
  });
  return path(shape, { class: 'pile' }) + path(shape, { class: 'axis line' }) + push.join('');
}

/** Pressure all round. */
function pressed(_: FigureValues, hub: Hub): string {
  const reach = Math.min(radius - hub.shaft, 20);
  const push = Array.from({ length: 12 }, (_unused, k) => {
    const along = ray((k * Math.PI) / 6);
    return arrow(move(middle, along, hub.shaft + reach), move(middle, along, hub.shaft), 'force');
  });
  return disc(hub) + push.join('');
}

function torques(values: FigureValues): string {
  const ways = [
    { words: 'set screws', name: 'T_screws', way: 1 },
    { words: 'a flat', name: 'T_flat', way: 2 },
    { words: 'a press fit', name: 'T_press', way: 3 },
    { words: 'the same, warm', name: 'T_warm', way: 3 },
  ];
  const wanted = number(values, 'T');
  const scale = barLongest / Math.max(wanted, ...ways.map(({ name }) => number(values, name)));
  const bars = ways.map(({ words, name, way }, k) => {
    const y = rows.first + k * rows.step;
    const kind = way === number(values, 'hold') ? 'force travel' : 'force';
    return namedBar({ x: barLeft, y }, words, kind, number(values, name) * scale);
  });
  const x = barLeft + wanted * scale;
  const [top, bottom] = [rows.first - 12, rows.first + ways.length * rows.step - 8];
  const anchor = x > 20 ? 'end' : 'start';
  return (
    bars.join('') +
    line({ x, y: top }, { x, y: bottom }, 'geometry') +
    text({ x: x + (anchor === 'end' ? 4 : -4), y: bottom + 14 }, 'torque on the shaft', {
      class: 'label',
      'text-anchor': anchor,
    })
  );
}
