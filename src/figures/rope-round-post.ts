import {
  arrow,
  dot,
  down,
  element,
  figure,
  heading,
  label,
  line,
  move,
  path,
  polyline,
  text,
  type Point,
} from './svg.ts';
import { number, type FigureValues } from './values.ts';

const width = 336;
const height = 288;
const middle: Point = { x: 0, y: -16 };
const post = 38;
const longest = 96;
const outermost = 24;
const bottom = height / 2 - 12;

/** A rope round a post, seen along the post, and the pulls at its ends, to scale. */
export function ropeRoundPost(values: FigureValues): string {
  const wrap = number(values, 'wrap');
  const [slack, held, wanted] = [number(values, 'F_s'), number(values, 'F_held'), number(values, 'F_t')];
  const scale = longest / Math.max(slack, held, wanted);
  const start = Math.PI / 2 + wrap / 2;
  const { points, thick } = coil(start, wrap);
  const [from = middle] = points;
  const end = points[points.length - 1] ?? middle;
  const slackWay = heading(start);
  const tightWay = down(start - wrap);
  const rope = [move(from, slackWay, longest), ...points, move(end, tightWay, longest)];
  return figure(
    width,
    height,
    element('circle', { class: 'wheel outline', cx: middle.x, cy: middle.y, r: post }) +
      label(middle, 'post') +
      path(polyline(rope, false), { class: 'rim', 'stroke-width': thick }) +
      line(end, move(end, tightWay, wanted * scale), 'geometry') +
      arrow(end, move(end, tightWay, held * scale), 'force travel') +
      arrow(from, move(from, slackWay, slack * scale), 'force') +
      dot(move(end, tightWay, wanted * scale), 'geometry') +
      legend(),
  );
}

/** From the slack end clockwise to the tight end, each turn a little further out, and how thick the rope can be for that. */
function coil(start: number, wrap: number): { readonly points: readonly Point[]; readonly thick: number } {
  const turns = wrap / (2 * Math.PI);
  const step = Math.min(5, outermost / turns);
  const corners = Math.max(24, Math.ceil(turns * 48));
  const points = Array.from({ length: corners + 1 }, (_, k) => {
    const angle = start - (wrap * k) / corners;
    const radius = post + 2 + (turns > 1 ? (step * turns * k) / corners : 0);
    return move(middle, { x: Math.cos(angle), y: -Math.sin(angle) }, radius);
  });
  return { points, thick: Math.min(2, step / 2.5) };
}

const legend = (): string =>
  arrow({ x: -158, y: bottom - 4 }, { x: -138, y: bottom - 4 }, 'force') +
  text({ x: -133, y: bottom }, 'slack side', { class: 'label' }) +
  arrow({ x: -58, y: bottom - 4 }, { x: -36, y: bottom - 4 }, 'force travel') +
  text({ x: -31, y: bottom }, 'most held', { class: 'label' }) +
  line({ x: 44, y: bottom - 4 }, { x: 64, y: bottom - 4 }, 'geometry') +
  dot({ x: 64, y: bottom - 4 }, 'geometry') +
  text({ x: 72, y: bottom }, 'pull wanted', { class: 'label' });
