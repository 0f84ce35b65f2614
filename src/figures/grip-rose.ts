import { outer, roseArea, roseCurve, roseFigure, towards } from './rose-frame.ts';
import { arrow, centre } from './svg.ts';
import { list, number, type FigureValues } from './values.ts';

/** Speeding up to the first slip by heading and, where it is there, dashed the most any control could get. */
export function gripRose(values: FigureValues): string {
  const most = values.rose_beside ? 'rose_beside' : 'rose';
  const scale = outer / Math.max(...list(values, most), number(values, 'a_slip'), 1e-12);
  return roseFigure(
    values,
    roseArea(values, scale, 'force') +
      (values.rose_beside ? roseCurve(values, most, scale, 'geometry line keep') : '') +
      onHeading(values, 'a_slip', scale),
  );
}

/** Push to keep rolling, by heading. */
export function lossRose(values: FigureValues): string {
  const scale = outer / Math.max(...list(values, 'rose'), number(values, 'F_roll'), 1e-12);
  return roseFigure(values, roseArea(values, scale, 'force') + onHeading(values, 'F_roll', scale));
}

/** The value on the heading in hand, as an arrow. */
const onHeading = (values: FigureValues, of: string, scale: number): string =>
  arrow(centre, towards(number(values, 'theta'), number(values, of) * scale), 'force travel');
