/** Steps that several calculators of a wheel at an edge share. */
export const contactAngle = {
  name: 'psi',
  means: 'contact angle at the edge, from the bottom of the wheel',
  quantity: 'angle',
  unit: 'deg',
  formula: 'acos(1 - h / r)',
  why: 'The axle stands r above the floor and r − h above the edge. That height over the radius is the cosine of the angle.',
} as const;

/** The height that goes with a contact angle. */
export const heightAt = (angle: string): string => `r * (1 - cos(${angle}))`;

export const reachToEdge = {
  name: 'reach_edge',
  means: 'how far ahead of the axle the wheel meets the edge',
  quantity: 'length',
  unit: 'mm',
  formula: 'sqrt(h * (2 * r - h))',
  why: 'From the axle to the edge is one radius, and the axle stands r − h above the edge. By Pythagoras its square is r² − (r − h)², which is h (2r − h).',
} as const;

export const levelPush = {
  name: 'push',
  means: 'level push for a wheel that turns freely',
  quantity: 'force',
  unit: 'N',
  formula: 'W * tan(psi)',
} as const;

export const gripForContact = {
  name: 'grip_used',
  means: 'grip that a driven wheel needs',
  quantity: 'ratio',
  unit: '',
  formula: 'max(tan(psi - atan(H / W)), 0)',
} as const;

/** The force of the edge may lean by the angle of friction from its normal; weight and push together lean by atan(H/W). */
export const contactMost = 'atan(mu) + atan(H / W)';

export const steepestContact = {
  name: 'psi_most',
  means: 'steepest contact it can climb',
  quantity: 'angle',
  unit: 'deg',
  formula: `min(${contactMost}, 90deg)`,
} as const;

/** What no level push can lift a wheel over is refused. */
export const lowerThanAxle = {
  given: 'h',
  holds: 'h < r',
  says: 'The edge must be lower than the axle: give less than the wheel radius r, which is {r}. No level push lifts a wheel over more.',
} as const;
