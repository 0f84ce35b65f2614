/** Steps about whole teeth that several calculators share. */
export const ratioOfTeeth = {
  name: 'ratio_z',
  means: 'turns of pulley 1 for one turn of pulley 2',
  quantity: 'ratio',
  unit: '',
  formula: 'z2 / z1',
} as const;

export const lengthOfTeeth = {
  name: 'L_b',
  means: 'length of the belt',
  quantity: 'length',
  unit: 'mm',
  formula: 'z_b * p',
} as const;
