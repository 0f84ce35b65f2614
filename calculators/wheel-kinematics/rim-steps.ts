/** Steps and terms that tie the rims of the wheels to the motion of the robot; several calculators share them. */
export const topRimSpeed = {
  name: 'u_max',
  means: 'top rim speed',
  quantity: 'velocity',
  unit: 'm/s',
  formula: 'r * omega_max',
} as const;

export const wheelSpeed = {
  name: 'omega',
  means: 'wheel speed, counter-clockwise positive',
  quantity: 'angular velocity',
  unit: 'rpm',
  formula: 'u / r',
} as const;

/** The counts of one wheel turn are a step or a product. */
export const travelOfCount = (counts: string) =>
  ({
    name: 'd_count',
    means: 'rim travel for each count',
    quantity: 'length',
    unit: 'mm',
    formula: `2 * pi * r / ${counts}`,
  }) as const;

/** What a motion, by its parts ahead and to the left and its turning, asks of each rim. */
export const rimSpeedFor = (ahead: string, left: string, turning: string): string =>
  `${left} * cos(alpha_i) - ${ahead} * sin(alpha_i) + ${turning}`;

/** What the rims together do to the robot: the best fit, whatever their speeds. */
export const travelOf = (part: string): string => `2 / n * sum(${part})`;
export const turningOf = (rims: string): string => `sum(${rims}) / (n * R)`;
