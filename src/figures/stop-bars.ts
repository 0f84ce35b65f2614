import { key } from './key.ts';
import { barName } from './named-bar.ts';
import { arrow, element, figure, line, text } from './svg.ts';
import { number, type FigureValues } from './values.ts';

const width = 330;
const height = 210;
const left = -68;
const longest = 216;
const first = -62;
const step = 36;

/** Three ways to a stop, each after the way before the brakes act, all to one scale. */
export function stopBars(values: FigureValues): string {
  const ways = [
    { words: 'floor', name: 's_grip' },
    { words: 'motors', name: 's_motor' },
    { words: 'power lost', name: 's_coast' },
  ].map((one) => ({ ...one, way: number(values, one.name) }));
  const before = number(values, 's_react');
  const most = Math.max(...ways.map(({ way }) => way));
  const scale = longest / Math.max(before + most, 1e-12);
  const end = left + (before + most) * scale;
  const foot = first + 2 * step + 22;
  return figure(
    width,
    height,
    element('rect', { class: 'body', x: left, y: first - 22, width: longest, height: foot - first + 22 }) +
      ways
        .map(({ words, way }, k) => bar(first + k * step, words, [before * scale, way * scale], way === most))
        .join('') +
      line({ x: end, y: first - 22 }, { x: end, y: foot }, 'velocity free') +
      text({ x: end, y: first - 29 }, 'keep clear', { class: 'label', 'text-anchor': 'end' }) +
      key({ x: -150, y: foot + 30 }, 'geometry band', 'before the brakes act') +
      key({ x: 48, y: foot + 30 }, 'velocity travel', 'slowing down'),
  );
}

function bar(y: number, words: string, [before, way]: readonly [number, number], longestWay: boolean): string {
  const brakes = left + before;
  return (
    barName({ x: left, y }, words) +
    line({ x: left, y }, { x: brakes, y }, 'geometry band') +
    arrow({ x: brakes, y }, { x: brakes + way, y }, longestWay ? 'velocity travel' : 'velocity')
  );
}
