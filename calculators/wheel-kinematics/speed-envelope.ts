import { defineCalculator } from '../calculator.ts';
import { alpha, n, Omega, omega_max, R, r, theta } from '../givens.ts';
import { topRimSpeed } from './rim-steps.ts';
import { alongShare, hardestWay, wheelAngle, wheelNumber } from './wheel-steps.ts';

export const speedEnvelope = defineCalculator({
  id: 'speed-envelope',
  edition: 1,
  module: 'wheel-kinematics',
  title: 'Top speed by heading',
  question: 'How fast can it go in each direction, and while turning?',
  given: [n, alpha, R, r, omega_max, Omega, theta],
  steps: [
    topRimSpeed,
    {
      name: 'u_turn',
      means: 'rim speed that turning takes of every wheel',
      quantity: 'velocity',
      unit: 'm/s',
      formula: 'R * Omega',
    },
    {
      name: 'Omega_limit',
      means: 'yaw rate at which turning takes everything',
      quantity: 'angular velocity',
      unit: 'deg/s',
      formula: 'u_max / R',
    },
    wheelNumber,
    wheelAngle,
    alongShare,
    {
      name: 'k',
      means: 'what each wheel would need, as a share of what it has, were the travel as fast as the rim can go',
      quantity: 'ratio',
      unit: '',
      formula: 'abs(s_i) * u_max / (u_max - sign(s_i) * u_turn)',
      why: 'Turning takes part of every wheel’s speed: it helps a wheel that travel turns the other way and hinders one that it turns the same way.',
    },
    {
      name: 'k_top',
      brief: true,
      means: 'the same for the hardest pressed wheel',
      quantity: 'ratio',
      unit: '',
      formula: 'max(k)',
    },
    {
      name: 'v_top',
      means: 'momentary top speed at this heading',
      quantity: 'velocity',
      unit: 'm/s',
      formula: 'u_max / k_top',
      why: 'The wheel that reaches its limit first sets the speed for all.',
    },
    {
      name: 'v_worst',
      means: 'momentary top speed at the slowest heading',
      quantity: 'velocity',
      unit: 'm/s',
      formula: 'u_max - abs(u_turn)',
      why: 'Slowest along a wheel’s drive direction, on the side where travel and turning add up.',
    },
    {
      name: 'theta_worst',
      means: 'slowest heading',
      quantity: 'angle',
      unit: 'deg',
      formula: hardestWay('Omega'),
      why: 'Along the drive direction of wheel 1. The other wheels repeat it every 360°/n.',
    },
    {
      name: 'v_corner',
      means: 'speed at a corner between two slow sides',
      quantity: 'velocity',
      unit: 'm/s',
      formula: 'v_worst / cos(180deg / n)',
      why: 'The limits of the wheels are straight sides of a polygon; the speeds that all wheels can follow lie inside it.',
    },
    {
      name: 'v_far',
      means: 'distance of the quick sides, where turning helps',
      quantity: 'velocity',
      unit: 'm/s',
      formula: 'u_max + abs(u_turn)',
    },
    {
      name: 'v_cut',
      means: 'speed at a corner between a slow side and a quick one',
      quantity: 'velocity',
      unit: 'm/s',
      formula: 'sqrt(v_worst^2 + v_far^2 - 2 * v_worst * v_far * cos(180deg / n)) / sin(180deg / n)',
      why: 'The law of cosines in the triangle between the two sides. It counts for an odd number of wheels only: with an even number the quick sides lie behind slow ones.',
    },
    {
      name: 'v_best',
      means: 'momentary top speed at the quickest heading',
      quantity: 'velocity',
      unit: 'm/s',
      formula: 'if(mod(n, 2) == 1 and v_far < v_corner, v_cut, v_corner)',
    },
    {
      name: 'v_ratio',
      means: 'quickest over slowest heading',
      quantity: 'ratio',
      unit: '',
      formula: 'v_best / v_worst',
    },
    {
      name: 'theta_best',
      means: 'a quickest heading',
      quantity: 'angle',
      unit: 'deg',
      formula: 'theta_worst + acos(v_worst / v_best)',
    },
    {
      name: 'v_keep',
      means: 'speed it can keep on a straight line while turning',
      quantity: 'velocity',
      unit: 'm/s',
      formula: 'v_worst',
      why: 'On a straight line over the floor a turning robot shows every heading in turn, the slowest too.',
    },
  ],
  results: ['v_top', 'v_keep', 'v_best', 'theta_best', 'v_worst', 'theta_worst', 'v_ratio'],
  requires: [
    {
      given: 'Omega',
      holds: 'R * abs(Omega) < u_max',
      says: 'Yaw rate Ω is too high: turning alone takes {u_turn in m/s} of each wheel’s {u_max in m/s}. Give less than {Omega_limit in deg/s} either way.',
    },
  ],
  cautions: [
    {
      when: 'abs(Omega) > 0',
      says: 'While it turns, the momentary top speed lasts only as long as the robot points this way. On a straight line it can keep {v_keep in m/s}.',
    },
    {
      says: 'A robot at top speed has no wheel speed left for steering. Plan with less, and keep people clear of its path.',
    },
  ],
  limits: [
    {
      asks: 'Does it travel along a drive direction?',
      answer: 'That is the slowest heading.',
      at: { theta: '90 deg' },
    },
    {
      asks: 'Does turning use all the wheel speed?',
      answer: 'Then nothing is left for travel, and the page says so beside the yaw rate.',
      at: { Omega: '270 deg/s' },
    },
    {
      asks: 'Do the motors give the same top speed in every direction?',
      answer: 'They are taken to. Under load a motor slows, and a slope or carpet loads the wheels unequally.',
    },
  ],
});
