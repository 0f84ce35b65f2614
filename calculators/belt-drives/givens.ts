import { given } from '../calculator.ts';

/** Givens of belt drives; see the note in calculators/givens.ts. Usual values are those of the demo robot, which is invented. */
export const T_1 = given(
  'T_1',
  'torque on pulley 1: the stall torque, unless current is limited',
  'torque',
  '1.4 N m',
  ['0.0001 N m', '10000 N m'],
);
export const pre = given('pre', 'pretension of a span, as a share of the pull', 'ratio', '0.6', ['0', '10']);
export const F_a = given('F_a', 'pull the belt allows, from its maker', 'force', '250 N', ['0.1 N', '1000000 N']);
export const service = given('service', 'service factor for shocks and long days', 'ratio', '1.5', ['1', '5']);
export const span = given('span', 'free length of the span, from pulley to pulley', 'length', '139 mm', [
  '1 mm',
  '10 m',
]);
export const m_l = given('m_l', 'mass of the belt for each length', 'linear density', '35 g/m', [
  '0.1 g/m',
  '100 kg/m',
]);
export const f = given('f', 'note of the plucked span', 'frequency', '140 Hz', ['0.1 Hz', '20 kHz']);
export const F_want = given('F_want', 'pretension wanted in a span', 'force', '60 N', ['0.01 N', '100000 N']);
export const wrap = given('wrap', 'angle the belt or rope goes round', 'angle', '168 deg', ['1 deg', '3600 deg']);
export const F_s = given('F_s', 'pull on the slack side', 'force', '10 N', ['0.001 N', '100000 N']);
export const F_t = given('F_t', 'pull wanted on the tight side', 'force', '107 N', ['0.001 N', '100000 N']);
export const z_b = given('z_b', 'teeth of the belt', 'count', '83', ['10', '100000'], { whole: true });
export const shim = given('shim', 'thickness of the shim that moves a shaft away', 'length', '0.5 mm', [
  '0 mm',
  '50 mm',
]);
export const F1 = given('F1', 'load 1, nearer to the outer bearing: the belt’s pull on the shaft', 'force', '117 N', [
  '0 N',
  '100000 N',
]);
export const a1 = given('a1', 'overhang of load 1, from the middle of the outer bearing', 'length', '12 mm', [
  '0 mm',
  '5 m',
]);
export const F2 = given('F2', 'load 2, further out: the floor on the wheel, bumps counted in', 'force', '60 N', [
  '0 N',
  '100000 N',
]);
export const a2 = given('a2', 'overhang of load 2, from the middle of the outer bearing', 'length', '40 mm', [
  '0 mm',
  '5 m',
]);
export const psi = given('psi', 'angle between the two loads, seen along the shaft', 'angle', '90 deg', [
  '-360 deg',
  '360 deg',
]);
export const L_b = given('L_b', 'distance between the middles of the two bearings', 'length', '50 mm', [
  '0.01 mm',
  '10 m',
]);
export const E = given('E', 'Young’s modulus of the shaft (steel)', 'pressure', '206 GPa', ['1 MPa', '1000 GPa']);
export const S_y = given('S_y', 'yield strength of the shaft', 'pressure', '300 MPa', ['0.1 MPa', '5 GPa']);
export const S_e = given('S_e', 'endurance limit of the shaft, with its surface and size', 'pressure', '150 MPa', [
  '0.1 MPa',
  '5 GPa',
]);
export const K_f = given('K_f', 'how much a shoulder or groove raises the bending stress', 'ratio', '1.5', ['1', '10']);
export const hold = given('hold', 'how the hub holds', 'ratio', '1', ['1', '3'], {
  options: { 'set screws': 1, 'a flat on the shaft': 2, 'a press fit': 3 },
});
export const screws = given('screws', 'number of set screws', 'count', '2', ['1', '4'], { whole: true });
export const d_s = given('d_s', 'diameter of a set screw', 'length', '4 mm', ['1.6 mm', '12 mm']);
export const add_s = given('add_s', 'what each further screw adds, as a share of the first', 'ratio', '50 %', [
  '0 %',
  '100 %',
]);
export const h_f = given('h_f', 'depth of the flat', 'length', '1 mm', ['0 mm', '500 mm']);
export const p_a = given('p_a', 'pressure that hub and flat bear', 'pressure', '30 MPa', ['0.01 MPa', '5 GPa']);
export const l_h = given('l_h', 'length of the hub on the shaft', 'length', '15 mm', ['0.1 mm', '1 m']);
export const delta = given(
  'delta',
  'interference on the diameter: shaft less bore, before the fit',
  'length',
  '30 um',
  ['0.1 um', '5 mm'],
);
export const d_o = given('d_o', 'outer diameter of the hub', 'length', '24 mm', ['0.2 mm', '10 m']);
export const E_h = given('E_h', 'Young’s modulus of the hub (a printed plastic)', 'pressure', '2.5 GPa', [
  '1 MPa',
  '1000 GPa',
]);
export const nu_h = given('nu_h', 'Poisson’s ratio of the hub', 'ratio', '0.35', ['0', '0.5']);
export const nu_s = given('nu_s', 'Poisson’s ratio of the shaft', 'ratio', '0.3', ['0', '0.5']);
export const S_h = given('S_h', 'stress that the hub bears for years', 'pressure', '15 MPa', ['0.01 MPa', '5 GPa']);
export const alpha_h = given('alpha_h', 'thermal expansion of the hub', 'temperature coefficient', '68 ppm/K', [
  '0 ppm/K',
  '500 ppm/K',
]);
export const alpha_s = given('alpha_s', 'thermal expansion of the shaft', 'temperature coefficient', '12 ppm/K', [
  '0 ppm/K',
  '500 ppm/K',
]);
export const dTheta = given(
  'dTheta',
  'how much warmer it gets than it was when fitted',
  'temperature difference',
  '20 K',
  ['0 K', '300 K'],
);
