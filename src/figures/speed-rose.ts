import { outer, roseArea, roseFigure, towards } from './rose-frame.ts';
import { arrow, centre, dot, element } from './svg.ts';
import { number, type FigureValues } from './values.ts';

/** Momentary top speed by heading; the inner circle is what it keeps on a straight line. */
export function speedRose(values: FigureValues): string {
  const scale = outer / Math.max(number(values, 'v_best'), 1e-9);
  return roseFigure(
    values,
    roseArea(values, scale, 'velocity') +
      element('circle', { class: 'geometry line keep', cx: 0, cy: 0, r: number(values, 'v_keep') * scale }) +
      dot(towards(number(values, 'theta_best'), outer), 'velocity') +
      arrow(centre, towards(number(values, 'theta'), number(values, 'v_top') * scale), 'velocity travel'),
  );
}
