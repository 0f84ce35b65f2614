import { given } from '../calculator.ts';

/** Givens of the module on steps, cables and gaps; usual values are those of the demo robot, which is invented. */
export const W = given('W', 'weight that the wheel carries', 'force', '29.4 N', ['0.001 N', '100000 N']);
export const H = given('H', 'level push on the axle from the other wheels', 'force', '12 N', ['0 N', '100000 N']);
export const d_c = given('d_c', 'diameter of the cable or hose', 'length', '10 mm', ['0.1 mm', '10 m']);
export const gyr = given('gyr', 'radius of gyration of the wheel', 'length', '42 mm', ['0 mm', '10 m']);
export const width = given('width', 'width of the gap in the floor', 'length', '25 mm', ['0.1 mm', '10 m']);
export const under = given('under', 'clear height under the body', 'length', '30 mm', ['0.1 mm', '10 m']);
export const overhang = given('overhang', 'how far the body reaches out past the axle', 'length', '70 mm', [
  '0 mm',
  '10 m',
]);
export const base = given('base', 'distance between the wheel that is over and the one behind it', 'length', '300 mm', [
  '1 mm',
  '100 m',
]);
