import { frameOf, leaders, roundFactor, times } from './enlarge.ts';
import { arrow, element, figure, group, label, line, path, polyline, text, type Point } from './svg.ts';
import { number, type FigureValues } from './values.ts';

const width = 300;
const height = 322;
const rim = 74;
const rimWidth = 8;
const hub: Point = { x: 0, y: -height / 2 + 6 + rim };
const box = { half: 118, above: 30, below: 58, floor: 76 };

/** A wheel from the side, standing on a gap, and below it the gap enlarged, more in height than in width. */
export function rimGaps(values: FigureValues): string {
  const scale = rim / number(values, 'r');
  const level = hub.y + rim - number(values, 'drop') * scale;
  return figure(
    width,
    height,
    group(hub, wheel(number(values, 'gaps'), number(values, 'gap_share'))) +
      arrow(hub, { x: number(values, 'v') > 0 ? 44 : 0, y: hub.y }, 'velocity travel') +
      line({ x: -width / 2, y: level }, { x: width / 2, y: level }, 'axis') +
      leaders(
        { x: 0, y: level + 3 },
        (number(values, 'gap') / 2) * scale + 4,
        { x: 0, y: box.floor - box.above },
        box.half,
      ) +
      group({ x: 0, y: box.floor }, enlarged(values, scale)),
  );
}

/** The rim as a dashed circle that begins in the middle of the gap on the floor. */
function wheel(gaps: number, share: number): string {
  const radius = rim - rimWidth / 2;
  const half = `A${radius} ${radius} 0 0 1`;
  const dashes = `${((1 - share) * 100).toFixed(3)} ${(share * 100).toFixed(3)}`;
  return (
    path(`M0 ${radius}${half} 0 ${-radius}${half} 0 ${radius}`, {
      class: 'rim',
      pathLength: String(gaps * 100),
      'stroke-width': rimWidth,
      'stroke-dasharray': share > 0 ? dashes : undefined,
      'stroke-dashoffset': ((1 - share / 2) * 100).toFixed(3),
    }) + element('circle', { class: 'wheel outline', cx: 0, cy: 0, r: 7 })
  );
}

function enlarged(values: FigureValues, scale: number): string {
  const frame = frameOf(box);
  const floor = line({ x: -box.half, y: 0 }, { x: box.half, y: 0 }, 'axis');
  const below = { x: 0, y: box.below + 14 };
  const drop = number(values, 'drop') * scale;
  if (drop === 0) return frame + floor + label(below, 'no gap, no drop');
  const wide = roundFactor(150 / (number(values, 'gap') * scale));
  const high = roundFactor((box.below - 12) / drop);
  const bottom = drop * high;
  const place = (angle: number): Point => ({
    x: rim * Math.sin(angle) * wide,
    y: bottom - 2 * rim * Math.sin(angle / 2) ** 2 * high,
  });
  return (
    frame +
    floor +
    edges(values, place, lastInside(wide, high, bottom)) +
    line({ x: 0, y: 0 }, { x: 0, y: bottom }, 'geometry') +
    text({ x: 6, y: 13 }, 'drop', { class: 'label' }) +
    label(below, `widths ${times(wide)}, heights ${times(high)}`)
  );
}

/** The angle at which the rim leaves the frame, by its side or its top. */
const lastInside = (wide: number, high: number, bottom: number): number =>
  Math.min(
    Math.asin(Math.min(1, box.half / (rim * wide))),
    2 * Math.asin(Math.min(1, Math.sqrt((bottom + box.above) / (2 * rim * high)))),
  );

/** The rim on either side as far as the frame or the next gap, and dashed what is missing between. */
function edges(values: FigureValues, place: (angle: number) => Point, last: number): string {
  const pitch = (2 * Math.PI) / number(values, 'gaps');
  const half = (pitch * number(values, 'gap_share')) / 2;
  const run = (from: number, to: number): Point[] =>
    Array.from({ length: 41 }, (_, k) => place(from + ((to - from) * k) / 40));
  const solid = run(half, Math.min(pitch - half, last));
  const mirrored = solid.map(({ x, y }) => ({ x: -x, y }));
  return (
    path(polyline(run(-half, half), false), { class: 'rim free' }) +
    [solid, mirrored].map((points) => path(polyline(points, false), { class: 'rim', 'stroke-width': 4 })).join('')
  );
}
