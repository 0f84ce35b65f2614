import { arrow, dot, element, figure, label, line, path, text, type Point } from './svg.ts';
import { number, type FigureValues } from './values.ts';

const width = 320;
const height = 286;
const shown = 7;
const left = -130;
const perCount = 31;
const right = left + shown * perCount;
const ruler = -98;
const floor = 104;
const perStep = 22;
/** Longer numbers do not fit between two marks. */
const longest = 99999;

/** Rim travel between two readings on a ruler of counts, and below it the measured speed against the true one. */
export function countRuler(values: FigureValues): string {
  const counted = number(values, 'n_dt');
  const below = Math.floor(counted);
  const first = Math.max(0, below - 3);
  const x = (count: number): number => left + (count - first) * perCount;
  const y = (count: number): number => floor - (count - first) * perStep;
  const here = x(counted);
  const marks = Array.from({ length: shown + 1 }, (_, k) => first + k);
  const step: Point = { x: here, y: y(below) };
  return figure(
    width,
    height,
    label({ x: (left + right) / 2, y: ruler - 34 }, 'rim travel between two readings, in counts') +
      marks.map((count) => mark(x(count), count)).join('') +
      (first > 0 ? line({ x: left - 24, y: ruler - 14 }, { x: left, y: ruler - 14 }, 'velocity free') : '') +
      arrow({ x: left, y: ruler - 14 }, { x: here, y: ruler - 14 }, 'velocity travel') +
      frame(y(first + shown)) +
      line({ x: here, y: ruler - 14 }, { x: here, y: ruler + 6 }, 'geometry free') +
      line({ x: here, y: ruler + 24 }, { x: here, y: floor }, 'geometry free') +
      stairs(marks.slice(0, -1), x, y) +
      dot(step, 'velocity') +
      dot({ x: here, y: y(Math.ceil(counted)) }, 'velocity') +
      bracket(y(below), y(below + 1)),
  );
}

function mark(x: number, count: number): string {
  const name = count > longest ? '' : label({ x, y: ruler + 18 }, String(count));
  return line({ x, y: ruler - 8 }, { x, y: ruler + 6 }, 'geometry') + name;
}

function frame(top: number): string {
  return (
    element('rect', { class: 'body', x: left, y: top, width: right - left, height: floor - top }) +
    line({ x: left, y: floor }, { x: right, y: top }, 'geometry keep') +
    label({ x: (left + right) / 2, y: floor + 14 }, 'true speed') +
    text({ x: right + 6, y: top + 11 }, 'measured', { class: 'label' }) +
    text({ x: right + 6, y: top + 25 }, 'speed', { class: 'label' })
  );
}

/** The whole number of counts below each speed. */
const stairs = (counts: readonly number[], x: (count: number) => number, y: (count: number) => number): string => {
  const corners = counts.map((count) => `${x(count)} ${y(count)}H${x(count + 1)}`);
  return path(`M${corners.join('L')}`, { class: 'velocity line' });
};

/** The height of one step, beside the frame. */
function bracket(low: number, high: number): string {
  const x = right + 6;
  return (
    path(`M${x} ${low}H${x + 5}V${high}H${x}`, { class: 'geometry line' }) +
    text({ x: x + 10, y: (low + high) / 2 + 4 }, 'a step', { class: 'label' })
  );
}
