import { acrossShare, alongShare, wheelAngle, wheelNumber } from '../wheel-kinematics/wheel-steps.ts';
import {
  firstToSlip,
  loadLevel,
  loadLostSpeedingUp,
  offLine,
  pushWanted,
  slipAcceleration,
  towardsWheel,
} from './load-steps.ts';

/** Speeding up until the first wheel slips or lifts, and a car beside it. */
export const firstSlip = [
  wheelNumber,
  wheelAngle,
  alongShare,
  acrossShare,
  towardsWheel,
  loadLevel,
  loadLostSpeedingUp,
  offLine,
  pushWanted,
  { name: 'N_low', means: 'least load', brief: true, quantity: 'force', unit: 'N', formula: 'min(N_level)' },
  {
    name: 'use_i',
    means: 'share of its grip that each wheel would use, speeding up at one g',
    quantity: 'ratio',
    unit: '',
    formula: 'g * (abs(k_f) + mu * k_N) / (mu * N_level)',
    why: 'What it must push, and what the lost load takes off its grip. A wheel that gains more grip than it needs has a share below zero: it never slips.',
  },
  firstToSlip,
  slipAcceleration,
  {
    name: 'F_slip',
    means: 'push at which the first wheel slips, at the centre of mass',
    quantity: 'force',
    unit: 'N',
    formula: 'm * a_slip',
  },
  {
    name: 'slope_slip',
    means: 'steepest slope on this heading, at the first slip',
    quantity: 'angle',
    unit: 'deg',
    formula: 'atan(a_slip / g)',
    why: 'To a robot a slope is a weight that leans back, just as speeding up is: the tangent of the slope stands for the acceleration over g.',
  },
  {
    name: 'f_i',
    means: 'push of each wheel at the first slip',
    quantity: 'force',
    unit: 'N',
    formula: 'k_f * a_slip',
  },
  {
    name: 'N_i',
    means: 'load on each wheel at the first slip',
    quantity: 'force',
    unit: 'N',
    formula: 'N_level - k_N * a_slip',
  },
  {
    name: 'a_car',
    means: 'speeding up of a car that drives all its wheels',
    quantity: 'acceleration',
    unit: 'm/s^2',
    formula: 'mu * g',
    why: 'A car with every wheel driven straight ahead can use all its weight.',
  },
  {
    name: 'share_car',
    means: 'share of the car’s push, at the first slip',
    quantity: 'ratio',
    unit: '%',
    formula: 'a_slip / a_car',
  },
] as const;

/** All wheels stand on the floor before it starts. */
export const allWheelsDown = {
  given: 'x',
  holds: 'N_low > 0.000001 * m * g',
  says: 'A wheel is off the floor before it starts: its load comes out as {N_low}. Bring the centre of mass nearer to the middle (x, y in mm; R is {R}).',
} as const;

export const slipCautions = [
  {
    says: 'A wheel that slips turns the robot and its odometry goes wrong. Keep a margin: the friction of a floor can halve with dust or water.',
  },
  {
    says: 'On a slope a robot that slips comes down. Test with a rope on it and nobody below.',
  },
] as const;
