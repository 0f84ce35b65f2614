/** Steps that several calculators of pushes share: what the slope and the floor ask of the whole robot. */
export const pushUp = {
  name: 'F_up',
  means: 'push to hold it on the slope',
  quantity: 'force',
  unit: 'N',
  formula: 'm * g * sin(slope)',
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
  means: 'share of the hardest wheel',
  brief: true,
  quantity: 'ratio',
  unit: '',
  formula: 'max(s_abs)',
} as const;
