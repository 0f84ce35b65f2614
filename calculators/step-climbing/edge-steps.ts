/** Steps that several calculators of a wheel at an edge share. */
export const contactAngle = {
  name: 'psi',
  means: 'contact angle at the edge, from the bottom of the wheel',
  quantity: 'angle',
  unit: 'deg',
  formula: 'acos(1 - h / r)',
  why: 'The axle stands r above the floor and r − h above the edge. That height over the radius is the cosine of the angle.',
} as const;

/** What no level push can lift a wheel over is refused. */
export const lowerThanAxle = {
  given: 'h',
  holds: 'h < r',
  says: 'The edge must be lower than the axle: give less than the wheel radius r, which is {r}. No level push lifts a wheel over more.',
} as const;
