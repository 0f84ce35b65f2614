import { given } from '../calculator.ts';

/** Givens of friction; see the note in calculators/givens.ts. Usual values are those of the demo robot, which is invented. */
export const rise = given('rise', 'height of the raised end when the sled starts to slide', 'length', '309 mm', [
  '0.1 mm',
  '100 m',
]);
export const board = given('board', 'length of the board, measured as chosen below', 'length', '600 mm', [
  '1 mm',
  '100 m',
]);
export const measured = given('measured', 'where that length was measured', 'ratio', '1', ['1', '2'], {
  options: { 'along the board': 1, 'on the floor': 2 },
});
export const F_pull = given('F_pull', 'pull on the scale when the sled starts to slide', 'force', '5.6 N', [
  '0.001 N',
  '100000 N',
]);
export const F_sled = given('F_sled', 'weight of the sled', 'force', '9.8 N', ['0.001 N', '100000 N']);
export const C_w = given('C_w', 'rolling resistance of a wheel along its drive direction', 'ratio', '0.025', [
  '0',
  '1',
]);
export const C_r = given('C_r', 'rolling resistance of its rollers, along its axle', 'ratio', '0.04', ['0', '1']);
export const ground = given('ground', 'ground to compare with', 'ratio', '1', ['1', '5'], {
  options: {
    'new asphalt or concrete': 1,
    'worn asphalt or concrete': 2,
    'rolled new gravel': 3,
    'loose worn gravel': 4,
    'medium hard soil': 5,
  },
});
export const F_n = given('F_n', 'load on the roller', 'force', '29.4 N', ['0.001 N', '1000000 N']);
export const r1 = given('r1', 'radius of the roller round its axle', 'length', '60 mm', ['0.1 mm', '10 m']);
export const r2 = given('r2', 'radius of its crown, along its axle', 'length', '60 mm', ['0.1 mm', '10 m']);
export const E1 = given('E1', 'Young’s modulus of the roller (a printed plastic)', 'pressure', '2.4 GPa', [
  '1 MPa',
  '1000 GPa',
]);
export const nu1 = given('nu1', 'Poisson’s ratio of the roller', 'ratio', '0.35', ['0', '0.5']);
export const E2 = given('E2', 'Young’s modulus of the floor (concrete)', 'pressure', '30 GPa', ['1 MPa', '1000 GPa']);
export const nu2 = given('nu2', 'Poisson’s ratio of the floor', 'ratio', '0.2', ['0', '0.5']);
export const k_w = given('k_w', 'stiffness of a wheel with its mount', 'stiffness', '20 N/mm', [
  '0.001 N/mm',
  '1000000 N/mm',
]);
export const e_floor = given('e_floor', 'how much higher the floor is under wheel 1', 'length', '1 mm', [
  '-100 mm',
  '100 mm',
]);
