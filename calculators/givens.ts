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

const stick = (name: string, means: string, usual: string) => given(name, means, 'ratio', usual, ['-1', '1']);

export const stick_x = stick('stick_x', 'stick forward', '0.8');
export const stick_y = stick('stick_y', 'stick to the left', '0.6');
export const stick_turn = stick('stick_turn', 'stick for turning, counter-clockwise', '0.3');
export const dead = given('dead', 'dead band of the stick', 'ratio', '0.08', ['0', '0.9']);
export const least = given('least', 'least duty that moves a motor', 'ratio', '0.12', ['0', '0.9']);
export const full = given('full', 'count that the timer takes for full duty', 'count', '255', ['1', '1000000'], {
  whole: true,
});

export const half_base = given('half_base', 'half the wheelbase, front to back', 'length', '120 mm', ['1 mm', '10 m']);
export const half_track = given('half_track', 'half the track, left to right', 'length', '100 mm', ['1 mm', '10 m']);
export const gamma = given('gamma', 'angle of the roller axis from the wheel axle', 'angle', '45 deg', [
  '5 deg',
  '85 deg',
]);
export const pattern = given('pattern', 'mounting pattern, seen from above', 'ratio', '1', ['-1', '1'], {
  options: { 'rollers point at the centre': 1, 'rollers point round the centre': -1 },
});
export const v_x = given('v_x', 'speed straight ahead', 'velocity', '0.4 m/s', ['-100 m/s', '100 m/s']);
export const v_y = given('v_y', 'speed to the left', 'velocity', '0.3 m/s', ['-100 m/s', '100 m/s']);

export const counts = given('counts', 'counts for each motor turn, after decoding', 'count', '48', ['1', '1000000'], {
  whole: true,
});
export const ratio = given('ratio', 'gear ratio, motor turns for each wheel turn', 'ratio', '30', ['0.01', '10000']);
export const s = given('s', 'length of the path', 'length', '10 m', ['1 mm', '10 km']);
export const turns = given('turns', 'turns of the robot on the way, all in one sense', 'ratio', '2', ['0', '1000']);
export const e_r = given('e_r', 'error of the wheel radius, assumed less true', 'ratio', '1 %', ['-20 %', '20 %']);
export const e_R = given('e_R', 'error of the distance to the wheels, assumed less true', 'ratio', '-2 %', [
  '-20 %',
  '20 %',
]);
export const e_d = given('e_d', 'error of one wheel alone', 'ratio', '1 %', ['-20 %', '20 %']);
export const e_w = given(
  'e_w',
  'how much faster each wheel rolls than it should',
  'ratio',
  '1, 0, 0 %',
  ['-20 %', '20 %'],
  {
    list: [3, 8],
  },
);
export const dt = given('dt', 'time between two readings', 'time', '20 ms', ['0.01 ms', '100 s']);
export const gap = given('gap', 'gap in the rim, along the chord', 'length', '9 mm', ['0 mm', '1 m']);
export const gaps = given('gaps', 'gaps in one turn of the wheel', 'count', '8', ['1', '1000'], { whole: true });
export const w = given('w', 'half-width of the zone at a pole', 'length', '6 mm', ['0.1 mm', '1 m']);
export const crown = given('crown', 'radius of the pole roller in the drive plane', 'length', '5 mm', [
  '0.1 mm',
  '1 m',
]);
export const proud = given('proud', 'how far the pole roller stands proud of the ball', 'length', '0.2 mm', [
  '0 mm',
  '50 mm',
]);
export const pile = given('pile', 'height of the pile of a carpet', 'length', '4 mm', ['0 mm', '100 mm']);

export const m = given('m', 'mass of the robot with its load', 'mass', '9 kg', ['1 g', '10000 kg']);
export const g = given('g', 'acceleration of free fall', 'acceleration', '9.80665 m/s^2', ['0.1 m/s^2', '30 m/s^2']);
export const acc = given('acc', 'acceleration', 'acceleration', '0.8 m/s^2', ['0 m/s^2', '100 m/s^2']);
export const slope = given('slope', 'slope of the ground', 'angle', '4 deg', ['0 deg', '60 deg']);
export const up = given('up', 'heading that points uphill', 'angle', '90 deg', ['-360 deg', '360 deg']);
export const C_rr = given('C_rr', 'rolling resistance, as a share of the weight', 'ratio', '0.03', ['0', '1']);
export const mu = given('mu', 'coefficient of friction', 'ratio', '0.6', ['0.01', '3']);
export const x = given('x', 'centre of mass ahead of the middle', 'length', '0 mm', ['-10 m', '10 m']);
export const y = given('y', 'centre of mass to the left of the middle', 'length', '0 mm', ['-10 m', '10 m']);
export const z = given('z', 'height of the centre of mass', 'length', '120 mm', ['0 mm', '10 m']);
export const T_w = given('T_w', 'stall torque at the wheel', 'torque', '2.6 N m', ['0.001 N m', '10000 N m']);
export const omega_w = given('omega_w', 'no-load speed of the wheel', 'angular velocity', '180 rpm', [
  '0.1 rpm',
  '100000 rpm',
]);
export const V_rated = given('V_rated', 'rated voltage of the motor', 'voltage', '12 V', ['0.1 V', '1000 V']);
export const V = given('V', 'voltage at the motor', 'voltage', '11.1 V', ['0 V', '1000 V']);
export const omega_0 = given('omega_0', 'no-load speed at rated voltage', 'angular velocity', '360 rpm', [
  '0.1 rpm',
  '1000000 rpm',
]);
export const I_0 = given('I_0', 'no-load current', 'current', '0.25 A', ['0 A', '1000 A']);
export const T_s = given('T_s', 'stall torque at rated voltage', 'torque', '1.4 N m', ['0.00001 N m', '10000 N m']);
export const I_s = given('I_s', 'stall current at rated voltage', 'current', '5.5 A', ['0.001 A', '10000 A']);
export const I_m = given('I_m', 'motor current', 'current', '1.5 A', ['0 A', '10000 A']);
export const ratio_b = given('ratio_b', 'further reduction, motor shaft turns for each wheel turn', 'ratio', '2', [
  '0.01',
  '1000',
]);
export const eta = given('eta', 'efficiency of the further reduction', 'ratio', '95 %', ['1 %', '100 %']);
export const T = given('T', 'torque on the shaft', 'torque', '0.9 N m', ['0 N m', '10000 N m']);
export const d = given('d', 'diameter of the shaft', 'length', '8 mm', ['0.1 mm', '1 m']);
export const p = given('p', 'pitch of the belt, tooth to tooth', 'length', '5 mm', ['0.1 mm', '100 mm']);
export const z1 = given('z1', 'teeth of pulley 1, the driving one', 'count', '18', ['4', '1000'], { whole: true });
export const z2 = given('z2', 'teeth of pulley 2', 'count', '36', ['4', '1000'], { whole: true });
export const C = given('C', 'distance between the two shafts', 'length', '140 mm', ['1 mm', '100 m']);
export const h = given('h', 'height of the step', 'length', '8 mm', ['0 mm', '10 m']);
