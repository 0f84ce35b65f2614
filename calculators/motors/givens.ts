import { given } from '../calculator.ts';

/** Givens of motors; see the note in calculators/givens.ts. Usual values are those of the demo robot, which is invented. */
export const R_w = given('R_w', 'resistance of the winding when it was measured', 'resistance', '2.2 ohm', [
  '0.001 ohm',
  '10000 ohm',
]);
export const Theta_w = given(
  'Theta_w',
  'temperature of the winding when it was measured',
  'Celsius temperature',
  '25 degC',
  ['0 degC', '50 degC'],
);
export const Theta_0 = given(
  'Theta_0',
  'temperature where the line of the metal’s resistance meets nothing (copper)',
  'Celsius temperature',
  '-234.5 degC',
  ['-300 degC', '-150 degC'],
);
export const R_th = given('R_th', 'thermal resistance, winding to air', 'thermal resistance', '10 K/W', [
  '0.001 K/W',
  '10000 K/W',
]);
export const tau_th = given('tau_th', 'thermal time constant', 'time', '8 min', ['0.1 s', '100 h']);
export const Theta_a = given('Theta_a', 'temperature of the air around', 'Celsius temperature', '25 degC', [
  '-40 degC',
  '100 degC',
]);
export const Theta_max = given('Theta_max', 'limit for the winding', 'Celsius temperature', '100 degC', [
  '-20 degC',
  '300 degC',
]);
export const margin = given('margin', 'margin on the torque', 'ratio', '1.5', ['1', '10']);
export const work_share = given('work_share', 'share of the stall torque to work at', 'ratio', '40 %', ['5 %', '90 %']);
export const omega_m = given('omega_m', 'speed of the motor shaft', 'angular velocity', '240 rpm', [
  '0.1 rpm',
  '1000000 rpm',
]);
export const z_min = given('z_min', 'fewest teeth of a pulley or gear', 'count', '18', ['4', '1000'], { whole: true });
export const z_max = given('z_max', 'most teeth of a pulley or gear', 'count', '40', ['4', '1000'], { whole: true });
export const I_z = given(
  'I_z',
  'moment of inertia about the upright through the centre',
  'moment of inertia',
  '0.2 kg m^2',
  ['0.000001 kg m^2', '100000 kg m^2'],
);
export const acc_Omega = given(
  'acc_Omega',
  'angular acceleration, counter-clockwise',
  'angular acceleration',
  '0 deg/s^2',
  ['-36000 deg/s^2', '36000 deg/s^2'],
);
export const J = given('J', 'moment of inertia of a motor’s rotor', 'moment of inertia', '20 g cm^2', [
  '0 g cm^2',
  '100 kg m^2',
]);
export const J_wheel = given(
  'J_wheel',
  'moment of inertia of a wheel with its axle',
  'moment of inertia',
  '4 kg cm^2',
  ['0 kg cm^2', '1000 kg m^2'],
);
export const reach = given('reach', 'share of the final speed to reach', 'ratio', '95 %', ['1 %', '99.9 %']);
export const t_react = given('t_react', 'time until the brakes act', 'time', '0.3 s', ['0 s', '60 s']);
export const T_hold = given('T_hold', 'torque that the drive holds at each wheel, power off', 'torque', '0.4 N m', [
  '0 N m',
  '10000 N m',
]);
