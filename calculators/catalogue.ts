import type { Calculator } from './calculator.ts';
import { bodyMotion } from './wheel-kinematics/body-motion.ts';
import { rollRatio } from './wheel-kinematics/roll-ratio.ts';
import { speedEnvelope } from './wheel-kinematics/speed-envelope.ts';
import { wheelSpeeds } from './wheel-kinematics/wheel-speeds.ts';

/** Every calculator, in reading order. */
export const catalogue: readonly Calculator[] = [rollRatio, wheelSpeeds, bodyMotion, speedEnvelope];

const byId = new Map(catalogue.map((calculator) => [calculator.id, calculator]));

export const findCalculator = (id: string): Calculator | undefined => byId.get(id);

/** @throws Error for an id that is none of the catalogue's: an author's mistake. */
export function calculatorOf(id: string): Calculator {
  const calculator = byId.get(id);
  if (!calculator) throw new Error(`unknown calculator: ${id}. Known: ${[...byId.keys()].join(', ')}`);
  return calculator;
}
