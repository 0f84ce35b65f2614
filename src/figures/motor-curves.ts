import { key } from './key.ts';
import { at, dot, element, figure, label, line, path, text } from './svg.ts';
import { number, type FigureValues } from './values.ts';

const width = 320;
const height = 300;
const left = -138;
const right = 138;
const top = -118;
const floor = 82;
/** The hill of power is a little lower than the ends of the lines, so that it is not taken for one of them. */
const hill = 0.8 * (floor - top);

interface Motor {
  /** Torque of the load, as a share of the stall torque. */
  readonly load: number;
  /** No-load current, as a share of the stall current, if known. */
  readonly noLoad?: number;
}

/** Speed, current and power over torque, each as a share of its most, and the load on them. */
export const motorCurves = (values: FigureValues): string =>
  draw({
    load: number(values, 'T_m') / number(values, 'T_stall'),
    noLoad: number(values, 'I_0') / number(values, 'I_stall'),
  });

/** The same of a motor to look for, whose current is not known yet. */
export const motorWanted = (values: FigureValues): string =>
  draw({ load: number(values, 'T_work') / number(values, 'T_w') });

function draw({ load, noLoad }: Motor): string {
  const here = Math.min(1, load);
  const x = left + here * (right - left);
  const y = (share: number): number => floor - share * (floor - top);
  const shown = noLoad !== undefined;
  return figure(
    width,
    height,
    frame() +
      line({ x, y: top }, { x, y: floor }, 'axis') +
      line({ x: left, y: top }, { x: right, y: floor }, 'velocity') +
      (shown ? line({ x: left, y: y(noLoad) }, { x: right, y: top }, 'force keep') : '') +
      powerHill() +
      dot({ x, y: y(1 - here) }, 'velocity') +
      (shown ? dot({ x, y: y(noLoad + here * (1 - noLoad)) }, 'force') : '') +
      dot({ x, y: floor - 4 * here * (1 - here) * hill }, 'geometry') +
      label({ x, y: top - 12 }, load < 1 ? 'load' : 'stalls') +
      keys(shown),
  );
}

/** A parabola in two halves, each a curve of the second degree that ends level at the top. */
function powerHill(): string {
  const quarter = (right - left) / 4;
  const y = floor - hill;
  const half = (side: number): string => `Q${at({ x: side * quarter, y })}`;
  const d = `M${at({ x: left, y: floor })}${half(-1)} ${at({ x: 0, y })}${half(1)} ${at({ x: right, y: floor })}`;
  return path(d, { class: 'geometry line free' });
}

const frame = (): string =>
  element('rect', { class: 'body', x: left, y: top, width: right - left, height: floor - top }) +
  text({ x: left, y: floor + 16 }, 'no load', { class: 'label' }) +
  label({ x: 0, y: floor + 12 }, 'torque') +
  text({ x: right, y: floor + 16 }, 'stall', { class: 'label', 'text-anchor': 'end' });

function keys(withCurrent: boolean): string {
  const y = floor + 46;
  return (
    key({ x: left, y }, 'velocity', 'speed') +
    (withCurrent ? key({ x: left + 92, y }, 'force keep', 'current') : '') +
    key({ x: left + 196, y }, 'geometry free', 'power')
  );
}
