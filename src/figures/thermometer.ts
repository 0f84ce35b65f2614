import { element, figure, label, line, text } from './svg.ts';
import { number, type FigureValues } from './values.ts';

const width = 320;
const height = 286;
const foot = 116;
const head = -108;
const tube = { x: -64, half: 9 };
const scaleOf = { left: 26, right: 146, y: -40 };

/** How warm the winding gets, from the air to its end, with its limit; and the current against what it may hold. */
export function thermometer(values: FigureValues): string {
  const air = number(values, 'Theta_a');
  const limit = number(values, 'Theta_max');
  const end = number(values, 'Theta_end');
  const most = Math.max(limit, end);
  const y = (temperature: number): number => foot - ((temperature - air) / (most - air)) * (foot - head);
  return figure(width, height, glass(y(end)) + marks(y(limit), y(end)) + currents(values));
}

function glass(end: number): string {
  const { x, half } = tube;
  return (
    element('rect', { class: 'body', x: x - half, y: head - 10, width: 2 * half, height: foot - head + 14 }) +
    element('rect', { class: 'force head', x: x - half + 4, y: end, width: 2 * half - 8, height: foot - end })
  );
}

/** What ends and what limits stand on either side, so that their names never meet. */
function marks(limit: number, end: number): string {
  const { x, half } = tube;
  return (
    line({ x: x - half - 6, y: limit }, { x: x + half + 6, y: limit }, 'geometry') +
    text({ x: x + half + 10, y: limit + 4 }, 'limit', { class: 'label' }) +
    text({ x: x - half - 10, y: end + 4 }, 'end', { class: 'label', 'text-anchor': 'end' }) +
    text({ x: x + half + 10, y: foot + 18 }, 'air', { class: 'label' })
  );
}

/** The current on a scale that ends where it runs away. */
function currents(values: FigureValues): string {
  const { left, right, y } = scaleOf;
  const away = number(values, 'I_away');
  const place = (name: string): number => left + Math.min(1, number(values, name) / away) * (right - left);
  const [here, hold] = [place('I_m'), place('I_hold')];
  return (
    label({ x: (left + right) / 2, y: y - 44 }, 'current') +
    line({ x: left, y }, { x: right, y }, 'axis') +
    line({ x: left, y }, { x: here, y }, 'force keep') +
    tick(hold, y) +
    tick(right, y) +
    element('circle', { class: 'force dot', cx: here, cy: y, r: 3.5 }) +
    label({ x: here, y: y - 20 }, 'now') +
    label({ x: Math.min(hold, right - 48), y: y + 24 }, 'for ever') +
    text({ x: right + 8, y: y + 46 }, 'runs away', { class: 'label', 'text-anchor': 'end' })
  );
}

const tick = (x: number, y: number): string => line({ x, y: y - 8 }, { x, y: y + 12 }, 'geometry');
