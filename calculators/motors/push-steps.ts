/** Steps that several calculators of pushes share: what the slope and the floor ask of the whole robot, and of one wheel. */
export const pushFaster = {
  name: 'F_acc',
  means: 'push to speed it up',
  quantity: 'force',
  unit: 'N',
  formula: 'm * acc',
} as const;

export const pushUp = {
  name: 'F_up',
  means: 'push to hold it on the slope',
  quantity: 'force',
  unit: 'N',
  formula: 'm * g * sin(slope)',
} as const;

export const pushRolling = {
  name: 'F_roll',
  means: 'push against rolling resistance',
  quantity: 'force',
  unit: 'N',
  formula: 'C_rr * m * g * cos(slope)',
} as const;

export const pushAll = {
  name: 'F_all',
  means: 'push of the whole robot',
  quantity: 'force',
  unit: 'N',
  formula: 'F_acc + F_up + F_roll',
} as const;

/** Each wheel pushes in proportion to its share of the way. */
export const pushOfWheel = (whole: string): string => `2 / n * ${whole} * s_i`;

/** Along a wheel's drive direction its share is one, and no share is larger. */
export const worstPushOf = (whole: string): string => `2 / n * ${whole}`;

export const worstTorque = {
  name: 'T_worst',
  means: 'torque of the hardest wheel at the worst heading',
  quantity: 'torque',
  unit: 'N m',
  formula: 'F_worst * r',
} as const;
