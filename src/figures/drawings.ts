import type { FigureName } from './catalogue.ts';
import { bentPath } from './bent-path.ts';
import { countRuler } from './count-ruler.ts';
import { poleZones } from './pole-zones.ts';
import { reckonedPaths } from './reckoned-paths.ts';
import { rimGaps } from './rim-gaps.ts';
import { rollerSlants } from './roller-slants.ts';
import { speedRose } from './speed-rose.ts';
import { stickPads } from './stick-pads.ts';
import { topView } from './top-view.ts';
import type { FigureValues } from './values.ts';
import { wheelAngle } from './wheel-angle.ts';

/** Every figure at hand, for the server. */
export const drawings: Readonly<Record<FigureName, (values: FigureValues) => string>> = {
  'wheel-angle': wheelAngle,
  'top-view': topView,
  'speed-rose': speedRose,
  'stick-pads': stickPads,
  'count-ruler': countRuler,
  'reckoned-paths': reckonedPaths,
  'bent-path': bentPath,
  'roller-slants': rollerSlants,
  'rim-gaps': rimGaps,
  'pole-zones': poleZones,
};
