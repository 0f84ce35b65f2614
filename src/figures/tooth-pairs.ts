import { dot, element, figure, label, line, text } from './svg.ts';
import { list, number, type FigureValues } from './values.ts';

const width = 320;
const height = 290;
const left = -104;
const right = 146;
const top = -104;
const floor = 84;
const middle = (top + floor) / 2;

/** The speed that each pair of wheels gives, over the teeth of the small one; the line is the speed wanted. */
export function toothPairs(values: FigureValues): string {
  const speeds = list(values, 'v_i');
  const wanted = number(values, 'v');
  const most = Math.max(...speeds.map((speed) => Math.abs(speed - wanted)), wanted * 0.01);
  const y = (speed: number): number => middle - ((speed - wanted) / most) * ((floor - top) / 2 - 10);
  const x = (k: number): number => left + 12 + (k * (right - left - 24)) / (speeds.length - 1);
  const best = number(values, 'i_best') - 1;
  return figure(
    width,
    height,
    element('rect', { class: 'body', x: left, y: top, width: right - left, height: floor - top }) +
      line({ x: left, y: middle }, { x: right, y: middle }, 'velocity') +
      speeds.map((speed, k) => stem(x(k), y(speed), k === best)).join('') +
      teeth(list(values, 'z_small'), x) +
      text({ x: left - 6, y: middle + 4 }, 'wanted', { class: 'label', 'text-anchor': 'end' }) +
      text({ x: left - 6, y: top + 12 }, 'faster', { class: 'label', 'text-anchor': 'end' }) +
      text({ x: left - 6, y: floor - 4 }, 'slower', { class: 'label', 'text-anchor': 'end' }) +
      label({ x: (left + right) / 2, y: floor + 36 }, 'teeth of the small one'),
  );
}

const stem = (x: number, y: number, best: boolean): string =>
  line({ x, y: middle }, { x, y }, 'velocity free') +
  dot({ x, y }, 'velocity') +
  (best ? element('circle', { class: 'geometry line', cx: x, cy: y, r: 8 }) : '');

/** The first, the middle and the last: more would not fit when they have four digits. */
const teeth = (small: readonly number[], x: (k: number) => number): string =>
  small
    .map((z, k) => (k === 0 || k === 5 || k === small.length - 1 ? label({ x: x(k), y: floor + 14 }, String(z)) : ''))
    .join('');
