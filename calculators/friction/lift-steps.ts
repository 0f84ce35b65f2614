/** Steps that take one wheel off the floor: springs cannot pull, so a load below zero goes to the others. Needs `N_spring`. */
export const leastSpring = {
  name: 'N_least',
  brief: true,
  means: 'least of these loads',
  quantity: 'force',
  unit: 'N',
  formula: 'min(N_spring)',
} as const;

export const pullOut = {
  name: 'N_out',
  means: 'load of a wheel that would have to be pulled down, else zero',
  quantity: 'force',
  unit: 'N',
  formula: 'min(N_least, 0)',
  why: 'The floor can push a wheel up and cannot pull it down. Below zero here means that a wheel lifts.',
} as const;

export const wheelRank = {
  name: 'k_least',
  brief: true,
  means: 'number of the wheel with the least load; 99 for the others',
  quantity: 'count',
  unit: '',
  formula: 'if(N_spring <= N_least + 0.000000001 * m * g, i, 99)',
} as const;

export const wheelOut = {
  name: 'i_out',
  brief: true,
  means: 'wheel with the least load',
  quantity: 'count',
  unit: '',
  formula: 'min(k_least)',
} as const;

export const angleFromOut = {
  name: 'beta_i',
  means: 'how far round from that wheel each wheel stands',
  quantity: 'angle',
  unit: 'deg',
  formula: '(i - i_out) * 360deg / n',
} as const;

export const loadAfterLift = {
  name: 'N_i',
  means: 'load on each wheel',
  quantity: 'force',
  unit: 'N',
  formula: 'if(i == i_out, N_spring - N_out, N_spring + N_out * (1 + 2 * cos(beta_i)) / max(n - 3, 1))',
  why: 'Without a lift nothing changes. A wheel that lifts carries nothing; the rest is what equal springs under the other wheels do without it.',
} as const;
