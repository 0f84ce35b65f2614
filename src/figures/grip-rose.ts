import { arrow, figure, heading, label, line, move, path, polyline, type Point } from './svg.ts';
import { list, number, type FigureValues } from './values.ts';

const size = 286;
const outer = 108;
const centre: Point = { x: 0, y: 0 };

/** Speeding up to the first slip, by heading. */
export const gripRose = (values: FigureValues): string => rose(values, 'a_slip');

/** Push to keep rolling, by heading. */
export const lossRose = (values: FigureValues): string => rose(values, 'F_roll');

/** A result by heading, straight ahead up the page, with its value on the heading in hand as an arrow. */
function rose(values: FigureValues, of: string): string {
  const sizes = list(values, 'rose');
  const theta = number(values, 'theta');
  const scale = outer / Math.max(...sizes, number(values, of), 1e-12);
  const curve = list(values, 'rose_at').map((angle, k) => move(centre, heading(angle), (sizes[k] ?? 0) * scale));
  return figure(
    size,
    size,
    path(`M0 ${-outer - 14}V${outer + 14}M${-outer - 14} 0H${outer + 14}`, { class: 'axis' }) +
      list(values, 'alpha_i').map(tick).join('') +
      path(polyline(curve, true), { class: 'force area' }) +
      arrow(centre, move(centre, heading(theta), number(values, of) * scale), 'force travel'),
  );
}

/** Where a wheel stands, marked outside the curve. */
function tick(angle: number, k: number): string {
  const from = move(centre, heading(angle), outer + 6);
  const to = move(centre, heading(angle), outer + 14);
  return line(from, to, 'geometry') + label(move(centre, heading(angle), outer + 24), String(k + 1));
}
