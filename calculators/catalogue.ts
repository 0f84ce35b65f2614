import type { Calculator } from './calculator.ts';
import { beltCentre } from './belt-drives/belt-centre.ts';
import { beltGrip } from './belt-drives/belt-grip.ts';
import { beltLength } from './belt-drives/belt-length.ts';
import { beltNote } from './belt-drives/belt-note.ts';
import { beltTension } from './belt-drives/belt-tension.ts';
import { hubGrip } from './belt-drives/hub-grip.ts';
import { shaftOverhang } from './belt-drives/shaft-overhang.ts';
import { allTouch } from './friction/all-touch.ts';
import { contactPatch } from './friction/contact-patch.ts';
import { rollingLoss } from './friction/rolling-loss.ts';
import { tiltTest } from './friction/tilt-test.ts';
import { mostGrip } from './friction/most-grip.ts';
import { traction } from './friction/traction.ts';
import { wheelLoads } from './friction/wheel-loads.ts';
import { driveForce } from './motors/drive-force.ts';
import { gearRatio } from './motors/gear-ratio.ts';
import { motorChoice } from './motors/motor-choice.ts';
import { motorHeat } from './motors/motor-heat.ts';
import { motorPoint } from './motors/motor-point.ts';
import { parking } from './motors/parking.ts';
import { speedUp } from './motors/speed-up.ts';
import { stopping } from './motors/stopping.ts';
import { clearance } from './step-climbing/clearance.ts';
import { gapCrossing } from './step-climbing/gap-crossing.ts';
import { roundObstacle } from './step-climbing/round-obstacle.ts';
import { stepByHeading } from './step-climbing/step-by-heading.ts';
import { stepClimb } from './step-climbing/step-climb.ts';
import { stepPush } from './step-climbing/step-push.ts';
import { stepRunUp } from './step-climbing/step-run-up.ts';
import { angledRollers } from './wheel-kinematics/angled-rollers.ts';
import { deadReckoning } from './wheel-kinematics/dead-reckoning.ts';
import { mixAndLimit } from './wheel-kinematics/mix-and-limit.ts';
import { poleContact } from './wheel-kinematics/pole-contact.ts';
import { speedResolution } from './wheel-kinematics/speed-resolution.ts';
import { straightness } from './wheel-kinematics/straightness.ts';
import { wheelGap } from './wheel-kinematics/wheel-gap.ts';
import { bodyMotion } from './wheel-kinematics/body-motion.ts';
import { rollRatio } from './wheel-kinematics/roll-ratio.ts';
import { speedEnvelope } from './wheel-kinematics/speed-envelope.ts';
import { wheelSpeeds } from './wheel-kinematics/wheel-speeds.ts';

/** Every calculator, in reading order. */
export const catalogue: readonly Calculator[] = [
  rollRatio,
  wheelSpeeds,
  mixAndLimit,
  speedEnvelope,
  bodyMotion,
  speedResolution,
  deadReckoning,
  straightness,
  angledRollers,
  wheelGap,
  poleContact,
  motorPoint,
  motorChoice,
  motorHeat,
  gearRatio,
  driveForce,
  speedUp,
  stopping,
  parking,
  beltLength,
  beltCentre,
  beltTension,
  beltNote,
  beltGrip,
  shaftOverhang,
  hubGrip,
  tiltTest,
  wheelLoads,
  traction,
  mostGrip,
  rollingLoss,
  contactPatch,
  allTouch,
  stepPush,
  stepClimb,
  stepByHeading,
  roundObstacle,
  gapCrossing,
  stepRunUp,
  clearance,
];

const byId = new Map(catalogue.map((calculator) => [calculator.id, calculator]));

export const findCalculator = (id: string): Calculator | undefined => byId.get(id);

/** @throws Error for an id that is none of the catalogue's: an author's mistake. */
export function calculatorOf(id: string): Calculator {
  const calculator = byId.get(id);
  if (!calculator) throw new Error(`unknown calculator: ${id}. Known: ${[...byId.keys()].join(', ')}`);
  return calculator;
}
