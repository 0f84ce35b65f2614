import { arrow, dot, element, figure, heading, label, line, move, path, polyline, type Point } from './svg.ts';
import { list, number, type FigureValues } from './values.ts';

const size = 286;
const outer = 108;
const centre: Point = { x: 0, y: 0 };

/**
 * Momentary top speed by heading, straight ahead up the page. `rose_at` and `rose` hold headings and speeds round the circle;
 * the inner circle is what it keeps on a straight line.
 */
export function speedRose(values: FigureValues): string {
  const headings = list(values, 'rose_at');
  const speeds = list(values, 'rose');
  const scale = outer / Math.max(number(values, 'v_best'), 1e-9);
  const theta = number(values, 'theta');
  const tip = move(centre, heading(theta), number(values, 'v_top') * scale);
  const curve = headings.map((angle, k) => move(centre, heading(angle), (speeds[k] ?? 0) * scale));
  const best = move(centre, heading(number(values, 'theta_best')), outer);
  return figure(
    size,
    size,
    path(`M0 ${-outer - 14}V${outer + 14}M${-outer - 14} 0H${outer + 14}`, { class: 'axis' }) +
      list(values, 'alpha_i').map(tick).join('') +
      path(polyline(curve, true), { class: 'velocity area' }) +
      element('circle', { class: 'geometry line keep', cx: 0, cy: 0, r: number(values, 'v_keep') * scale }) +
      dot(best, 'velocity') +
      arrow(centre, tip, 'velocity travel'),
  );
}

/** Where a wheel stands, marked outside the curve. */
function tick(angle: number, k: number): string {
  const from = move(centre, heading(angle), outer + 6);
  const to = move(centre, heading(angle), outer + 14);
  return line(from, to, 'geometry') + label(move(centre, heading(angle), outer + 24), String(k + 1));
}
