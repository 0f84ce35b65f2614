import type { FigureName } from './catalogue.ts';
import { speedRose } from './speed-rose.ts';
import { topView } from './top-view.ts';
import type { FigureValues } from './values.ts';
import { wheelAngle } from './wheel-angle.ts';

/** Every figure at hand, for the server. */
export const drawings: Readonly<Record<FigureName, (values: FigureValues) => string>> = {
  'wheel-angle': wheelAngle,
  'top-view': topView,
  'speed-rose': speedRose,
};
