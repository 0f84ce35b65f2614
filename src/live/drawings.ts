import type { FigureName } from '../figures/catalogue.ts';
import type { FigureValues } from '../figures/values.ts';

export type Draw = (values: FigureValues) => string;

/** Fetches the one figure a page needs. */
export const loadDrawing: Readonly<Record<FigureName, () => Promise<Draw>>> = {
  'wheel-angle': async () => (await import('../figures/wheel-angle.ts')).wheelAngle,
  'top-view': async () => (await import('../figures/top-view.ts')).topView,
  'speed-rose': async () => (await import('../figures/speed-rose.ts')).speedRose,
  'stick-pads': async () => (await import('../figures/stick-pads.ts')).stickPads,
  'count-ruler': async () => (await import('../figures/count-ruler.ts')).countRuler,
  'reckoned-paths': async () => (await import('../figures/reckoned-paths.ts')).reckonedPaths,
  'bent-path': async () => (await import('../figures/bent-path.ts')).bentPath,
  'roller-slants': async () => (await import('../figures/roller-slants.ts')).rollerSlants,
  'rim-gaps': async () => (await import('../figures/rim-gaps.ts')).rimGaps,
  'pole-zones': async () => (await import('../figures/pole-zones.ts')).poleZones,
};
