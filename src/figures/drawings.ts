import type { FigureName } from './catalogue.ts';
import { beltDrive } from './belt-drive.ts';
import { axleLoads } from './axle-loads.ts';
import { bodyClearance } from './body-clearance.ts';
import { beltPulls } from './belt-pulls.ts';
import { beltSpan } from './belt-span.ts';
import { bentPath } from './bent-path.ts';
import { contactEllipse } from './contact-ellipse.ts';
import { countRuler } from './count-ruler.ts';
import { motorCurves, motorWanted } from './motor-curves.ts';
import { gripRose, lossRose } from './grip-rose.ts';
import { hubSection } from './hub-section.ts';
import { loadDiscs, loadPlace } from './load-place.ts';
import { poleZones } from './pole-zones.ts';
import { reckonedPaths } from './reckoned-paths.ts';
import { rimGaps } from './rim-gaps.ts';
import { rollerSlants } from './roller-slants.ts';
import { ropeRoundPost } from './rope-round-post.ts';
import { speedClimb } from './speed-climb.ts';
import { speedRose } from './speed-rose.ts';
import { stickPads } from './stick-pads.ts';
import { stopBars } from './stop-bars.ts';
import { thermometer } from './thermometer.ts';
import { tiltedBoard } from './tilted-board.ts';
import { toothPairs } from './tooth-pairs.ts';
import { topView } from './top-view.ts';
import type { FigureValues } from './values.ts';
import { wheelAngle } from './wheel-angle.ts';
import { wheelHolds, wheelPushes } from './wheel-pushes.ts';
import { stepRose } from './step-rose.ts';
import { wheelAtEdge } from './wheel-at-edge.ts';

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
  'motor-curves': motorCurves,
  'motor-wanted': motorWanted,
  thermometer,
  'tooth-pairs': toothPairs,
  'wheel-pushes': wheelPushes,
  'speed-climb': speedClimb,
  'stop-bars': stopBars,
  'wheel-holds': wheelHolds,
  'belt-drive': beltDrive,
  'belt-pulls': beltPulls,
  'belt-span': beltSpan,
  'rope-round-post': ropeRoundPost,
  'axle-loads': axleLoads,
  'hub-section': hubSection,
  'tilted-board': tiltedBoard,
  'load-place': loadPlace,
  'load-discs': loadDiscs,
  'grip-rose': gripRose,
  'loss-rose': lossRose,
  'contact-ellipse': contactEllipse,
  'wheel-at-edge': wheelAtEdge,
  'step-rose': stepRose,
  'body-clearance': bodyClearance,
};
