import { centre, figure, heading, label, line, move, path, polyline, type Point } from './svg.ts';
import { list, type FigureValues } from './values.ts';

const size = 286;
export const outer = 108;

/** A figure of something by heading, straight ahead up the page: cross hairs, the wheels outside, and what is drawn inside. */
export const roseFigure = (values: FigureValues, inside: string): string =>
  figure(
    size,
    size,
    path(`M0 ${-outer - 14}V${outer + 14}M${-outer - 14} 0H${outer + 14}`, { class: 'axis' }) +
      list(values, 'alpha_i').map(tick).join('') +
      inside,
  );

export const towards = (angle: number, far: number): Point => move(centre, heading(angle), far);

/** `rose_at` holds headings round the circle, and `rose` and maybe `rose_beside` sizes. */
export const roseCurve = (values: FigureValues, of: 'rose' | 'rose_beside', scale: number, kind: string): string => {
  const sizes = list(values, of);
  const curve = list(values, 'rose_at').map((angle, k) => towards(angle, (sizes[k] ?? 0) * scale));
  return path(polyline(curve, true), { class: kind });
};

export const roseArea = (values: FigureValues, scale: number, kind: string): string =>
  roseCurve(values, 'rose', scale, `${kind} area`);

/** Where a wheel stands, marked outside the curve. */
const tick = (angle: number, k: number): string =>
  line(towards(angle, outer + 6), towards(angle, outer + 14), 'geometry') +
  label(towards(angle, outer + 24), String(k + 1));
