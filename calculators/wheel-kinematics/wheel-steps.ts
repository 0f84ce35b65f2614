/** Steps that several calculators of wheel speeds begin with: which wheel, where it stands, how it faces the travel. */
export const wheelNumber = {
  name: 'i',
  brief: true,
  means: 'wheel number',
  quantity: 'count',
  unit: '',
  formula: 'upto(n)',
} as const;

export const wheelAngle = {
  name: 'alpha_i',
  means: 'where each wheel stands',
  quantity: 'angle',
  unit: 'deg',
  formula: 'alpha + (i - 1) * 360deg / n',
  why: 'The wheels share the circle evenly, counted counter-clockwise from wheel 1.',
} as const;

export const alongShare = {
  name: 's_i',
  means: 'share of the travel along each wheel’s drive direction',
  quantity: 'ratio',
  unit: '',
  formula: 'sin(theta - alpha_i)',
  why: 'A wheel drives square to the line from the centre to it, so its drive direction is 90° further round than where it stands.',
} as const;

export const acrossShare = {
  name: 'c_i',
  means: 'share of the travel along each wheel’s axle',
  quantity: 'ratio',
  unit: '',
  formula: 'cos(theta - alpha_i)',
} as const;
