import { given } from './calculator.ts';

/**
 * The givens of the catalogue. A name is an address (it stands in links and commands), so it means one thing everywhere.
 * Usual values are those of the demo robot, which is invented; ranges are what physics and a workbench allow.
 */
export const n = given('n', 'number of wheels, evenly spaced', 'count', '3', ['3', '8'], { whole: true });
export const alpha = given('alpha', 'where wheel 1 stands, from straight ahead', 'angle', '0 deg', [
  '-360 deg',
  '360 deg',
]);
export const R = given('R', 'centre of the robot to each wheel', 'length', '200 mm', ['1 mm', '100 m']);
export const r = given('r', 'wheel radius', 'length', '60 mm', ['1 mm', '10 m']);
export const q = given('q', 'roller radius (the wheel radius sideways)', 'length', '60 mm', ['0.1 mm', '10 m']);
export const v = given('v', 'travel speed', 'velocity', '0.6 m/s', ['0 m/s', '100 m/s']);
export const theta = given('theta', 'heading of travel, from straight ahead', 'angle', '90 deg', [
  '-360 deg',
  '360 deg',
]);
export const Omega = given('Omega', 'yaw rate, counter-clockwise', 'angular velocity', '0 deg/s', [
  '-3600 deg/s',
  '3600 deg/s',
]);
export const phi = given('phi', 'angle from the wheel’s drive direction to the travel', 'angle', '60 deg', [
  '-360 deg',
  '360 deg',
]);
export const omega = given(
  'omega',
  'wheel speeds',
  'angular velocity',
  '10, -5, -5 rad/s',
  ['-10000 rad/s', '10000 rad/s'],
  {
    list: [3, 8],
  },
);
export const omega_max = given('omega_max', 'top speed of a wheel under load', 'angular velocity', '150 rpm', [
  '0.1 rpm',
  '100000 rpm',
]);
