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

/** How much of a way lies along each wheel's drive direction, and along its axle. */
export const along = (way: string): string => `sin(${way} - alpha_i)`;
export const across = (way: string): string => `cos(${way} - alpha_i)`;

export const alongShare = {
  name: 's_i',
  means: 'share of the travel along each wheel’s drive direction',
  quantity: 'ratio',
  unit: '',
  formula: along('theta'),
  why: 'A wheel drives square to the line from the centre to it, so its drive direction is 90° further round than where it stands.',
} as const;

export const acrossShare = {
  name: 'c_i',
  means: 'share of the travel along each wheel’s axle',
  quantity: 'ratio',
  unit: '',
  formula: across('theta'),
} as const;

export const shareSize = {
  name: 's_abs',
  means: 'size of each share',
  brief: true,
  quantity: 'ratio',
  unit: '',
  formula: 'abs(s_i)',
} as const;

export const largestShare = {
  name: 's_top',
  means: 'largest share',
  brief: true,
  quantity: 'ratio',
  unit: '',
  formula: 'max(s_abs)',
} as const;

/** Along the drive direction of wheel 1, on the side where travel and turning add up. */
export const hardestWay = (turning: string): string => `alpha + if(${turning} < 0, -90deg, 90deg)`;
