import type { FigureName } from '../figures/catalogue.ts';
import type { FigureValues } from '../figures/values.ts';

export type Draw = (values: FigureValues) => string;

/** Fetches the one figure a page needs. */
export const loadDrawing: Readonly<Record<FigureName, () => Promise<Draw>>> = {
  'wheel-angle': async () => (await import('../figures/wheel-angle.ts')).wheelAngle,
  'top-view': async () => (await import('../figures/top-view.ts')).topView,
  'speed-rose': async () => (await import('../figures/speed-rose.ts')).speedRose,
};
