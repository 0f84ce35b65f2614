import type { Calculator } from './calculator.ts';
import { beltGrip } from './belt-drives/belt-grip.ts';
import { beltNote } from './belt-drives/belt-note.ts';
import { beltTension } from './belt-drives/belt-tension.ts';
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
  beltTension,
  beltNote,
  beltGrip,
];

const byId = new Map(catalogue.map((calculator) => [calculator.id, calculator]));

export const findCalculator = (id: string): Calculator | undefined => byId.get(id);

/** @throws Error for an id that is none of the catalogue's: an author's mistake. */
export function calculatorOf(id: string): Calculator {
  const calculator = byId.get(id);
  if (!calculator) throw new Error(`unknown calculator: ${id}. Known: ${[...byId.keys()].join(', ')}`);
  return calculator;
}
