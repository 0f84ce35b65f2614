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

/** Pulleys nearer than this are refused where the centre distance is given. */
export const apart = {
  given: 'C',
  holds: 'C > C_touch',
  says: 'The pulleys overlap: their pitch circles touch at a centre distance C of {C_touch in mm}. Give more than that.',
} as const;

export const nearlyTouching = {
  when: 'C < C_touch + p',
  says: 'The pitch circles are less than a tooth apart. Pulleys with flanges are larger than their pitch circles, and may touch: look at their outer diameters.',
} as const;

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

/** The angle of a span to the line of shafts, and the exact length of an open belt, with the centre distance under the name given. */
export const leanOfSpan = (C: string): string => `asin((D2 - D1) / (2 * ${C}))`;
export const exactLength = (C: string): string =>
  `2 * sqrt(${C}^2 - ((D2 - D1) / 2)^2) + pi * (D1 + D2) / 2 + (D2 - D1) * ${leanOfSpan(C)}`;
