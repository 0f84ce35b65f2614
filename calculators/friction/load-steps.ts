import { across } from '../wheel-kinematics/wheel-steps.ts';

/** Steps that several calculators of loads and grip share: what each wheel carries, and what it must push. */
export const towardsWheel = {
  name: 'x_i',
  means: 'how far the centre of mass lies towards each wheel',
  quantity: 'length',
  unit: 'mm',
  formula: 'x * cos(alpha_i) + y * sin(alpha_i)',
} as const;

export const loadLevel = {
  name: 'N_level',
  means: 'load on each wheel on level ground, by where the centre of mass lies',
  quantity: 'force',
  unit: 'N',
  formula: 'm * g / n * (1 + 2 * x_i / R)',
  why: 'A wheel that the centre of mass lies towards carries more.',
} as const;

export const loadFlat = {
  name: 'N_flat',
  means: 'what is left of that square to the slope',
  quantity: 'force',
  unit: 'N',
  formula: 'N_level * cos(slope)',
} as const;

export const loadLean = {
  name: 'N_lean',
  means: 'load that each wheel loses because the weight leans downhill',
  quantity: 'force',
  unit: 'N',
  formula: `2 * m * g / n * z / R * sin(slope) * ${across('up')}`,
  why: 'The higher the centre of mass, the more. A wheel on the lower side gains: its loss is below zero.',
} as const;

export const loadStanding = {
  name: 'N_0',
  brief: true,
  means: 'load on each wheel before its speed changes',
  quantity: 'force',
  unit: 'N',
  formula: 'N_flat - N_lean',
} as const;

const loadShift = {
  name: 'k_N',
  quantity: 'mass',
  unit: 'kg',
  formula: '2 * m / n * z / R * c_i',
} as const;

export const loadGainedBraking = {
  ...loadShift,
  means: 'load that each wheel gains, for each m/s² of braking',
  why: 'Braking leans the weight forward: wheels ahead of the middle gain, those behind lose. One kilogram is one newton for each m/s².',
} as const;

export const loadLostSpeedingUp = {
  ...loadShift,
  means: 'load that each wheel loses, for each m/s² of speeding up',
  why: 'Speeding up leans the weight back: wheels ahead of the middle lose, those behind gain. One kilogram is one newton for each m/s².',
} as const;

/** How far the centre of mass lies to the right of a line through the middle that runs this way. */
export const offLineOf = (way: string): string => `x * sin(${way}) - y * cos(${way})`;

export const offLine = {
  name: 'y_theta',
  means: 'centre of mass off the line of travel, to its right',
  quantity: 'length',
  unit: 'mm',
  formula: offLineOf('theta'),
} as const;

const pushShare = {
  name: 'k_f',
  quantity: 'mass',
  unit: 'kg',
  formula: 'm / n * (2 * s_i + y_theta / R)',
} as const;

export const pushTakenOff = {
  ...pushShare,
  means: 'push taken off each wheel, for each m/s² of braking',
} as const;

export const pushWanted = {
  ...pushShare,
  means: 'push of each wheel for each m/s², counter-clockwise positive',
  why: 'Each wheel pushes in proportion to its share, and a little more or less to keep a weight off the line from turning the robot.',
} as const;

/** The wheel that uses most of its grip sets the limit. Needs `use_i`, its share at one g. */
export const firstToSlip = {
  name: 'use_top',
  means: 'share of the wheel that slips first',
  brief: true,
  quantity: 'ratio',
  unit: '',
  formula: 'max(use_i)',
} as const;

export const slipAcceleration = {
  name: 'a_slip',
  means: 'speeding up at which the first wheel slips or lifts',
  quantity: 'acceleration',
  unit: 'm/s^2',
  formula: 'g / use_top',
} as const;
