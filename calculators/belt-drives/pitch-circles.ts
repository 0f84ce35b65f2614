/** Steps that every question about two pulleys and an open belt begins with. */
export const pitchCircles = [
  {
    name: 'D1',
    means: 'pitch diameter of pulley 1',
    quantity: 'length',
    unit: 'mm',
    formula: 'p * z1 / pi',
    why: 'A tooth of the pulley takes one pitch of its circumference.',
  },
  { name: 'D2', means: 'pitch diameter of pulley 2', quantity: 'length', unit: 'mm', formula: 'p * z2 / pi' },
  {
    name: 'C_touch',
    means: 'centre distance at which the pitch circles touch',
    quantity: 'length',
    unit: 'mm',
    formula: '(D1 + D2) / 2',
    brief: true,
  },
] as const;

/** The shortest belt that goes round two pulleys: they touch. */
export const shortestBelt = [
  {
    name: 'phi_touch',
    means: 'angle of a span if they touched',
    quantity: 'angle',
    unit: 'deg',
    formula: 'asin((D2 - D1) / (D1 + D2))',
  },
  {
    name: 'L_touch',
    means: 'length of the belt if they touched',
    quantity: 'length',
    unit: 'mm',
    formula: '(D1 + D2) * (cos(phi_touch) + pi / 2) + (D2 - D1) * phi_touch',
  },
  {
    name: 'z_least',
    means: 'fewest teeth of a belt that goes round both',
    quantity: 'count',
    unit: '',
    formula: 'ceil(L_touch / p)',
    brief: true,
  },
] as const;

/** The exact length of an open belt, with the centre distance under the name given. */
export const exactLength = (C: string): string =>
  `2 * sqrt(${C}^2 - ((D2 - D1) / 2)^2) + pi * (D1 + D2) / 2 + (D2 - D1) * asin((D2 - D1) / (2 * ${C}))`;
