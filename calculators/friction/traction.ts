import { defineCalculator } from '../calculator.ts';
import { alpha, g, m, mu, n, R, theta, x, y, z } from '../givens.ts';
import { acrossShare, alongShare, wheelAngle, wheelNumber } from '../wheel-kinematics/wheel-steps.ts';
import { loadLevel, loadLostSpeedingUp, offLine, pushWanted, towardsWheel } from './load-steps.ts';

export const traction = defineCalculator({
  id: 'traction',
  edition: 1,
  module: 'friction',
  title: 'Grip by heading',
  question: 'How hard can it push before a wheel slips?',
  given: [mu, theta, m, n, alpha, R, x, y, z, g],
  steps: [
    wheelNumber,
    wheelAngle,
    alongShare,
    acrossShare,
    towardsWheel,
    loadLevel,
    loadLostSpeedingUp,
    offLine,
    pushWanted,
    { name: 'N_low', means: 'least load', brief: true, quantity: 'force', unit: 'N', formula: 'min(N_level)' },
    {
      name: 'use_i',
      means: 'share of its grip that each wheel would use, speeding up at one g',
      quantity: 'ratio',
      unit: '',
      formula: 'g * (abs(k_f) + mu * k_N) / (mu * N_level)',
      why: 'What it must push, and what the lost load takes off its grip. A wheel that gains more grip than it needs has a share below zero: it never slips.',
    },
    {
      name: 'use_top',
      means: 'share of the wheel that slips first',
      brief: true,
      quantity: 'ratio',
      unit: '',
      formula: 'max(use_i)',
    },
    {
      name: 'a_slip',
      means: 'speeding up at which the first wheel slips or lifts',
      quantity: 'acceleration',
      unit: 'm/s^2',
      formula: 'g / use_top',
    },
    {
      name: 'F_slip',
      means: 'push at which the first wheel slips, at the centre of mass',
      quantity: 'force',
      unit: 'N',
      formula: 'm * a_slip',
    },
    {
      name: 'slope_slip',
      means: 'steepest slope straight ahead on this heading',
      quantity: 'angle',
      unit: 'deg',
      formula: 'atan(a_slip / g)',
      why: 'To a robot a slope is a weight that leans back, just as speeding up is: the tangent of the slope stands for the acceleration over g.',
    },
    {
      name: 'f_i',
      means: 'push of each wheel at that moment',
      quantity: 'force',
      unit: 'N',
      formula: 'k_f * a_slip',
    },
    {
      name: 'N_i',
      means: 'load on each wheel at that moment',
      quantity: 'force',
      unit: 'N',
      formula: 'N_level - k_N * a_slip',
    },
    {
      name: 'a_car',
      means: 'speeding up of a car that drives all its wheels',
      quantity: 'acceleration',
      unit: 'm/s^2',
      formula: 'mu * g',
      why: 'A car with every wheel driven straight ahead can use all its weight.',
    },
    {
      name: 'share_car',
      means: 'share of the car’s push',
      quantity: 'ratio',
      unit: '%',
      formula: 'a_slip / a_car',
    },
  ],
  results: ['a_slip', 'F_slip', 'slope_slip', 'share_car', 'a_car', 'f_i', 'N_i'],
  requires: [
    {
      given: 'x',
      holds: 'N_low > 0.000001 * m * g',
      says: 'A wheel is off the floor before it starts: its load comes out as {N_low}. Bring the centre of mass nearer to the middle (x, y in mm; R is {R}).',
    },
  ],
  cautions: [
    {
      when: 'n > 3',
      says: 'With more than three wheels this is the first slip when all get the same voltage for their share, on wheels that give alike. A control that watches each wheel could get more; how much is not worked out here.',
    },
    {
      says: 'A wheel that slips turns the robot and its odometry goes wrong. Keep a margin: the friction of a floor can halve with dust or water.',
    },
    {
      says: 'On a slope a robot that slips comes down. Test with a rope on it and nobody below.',
    },
  ],
  limits: [
    {
      asks: 'Does it go towards a wheel?',
      answer:
        'That wheel gives nothing and loses load it has no use for. The other two gain, so it starts best that way.',
      at: { theta: '0 deg' },
    },
    {
      asks: 'Does it go between two wheels?',
      answer: 'Those two do the work and lose load. It starts worst that way, and stops best.',
      at: { theta: '180 deg' },
    },
    {
      asks: 'Is the centre of mass on the floor?',
      answer: 'Then no load shifts, and only the share of the wheels counts.',
      at: { z: '0 mm' },
    },
    {
      asks: 'Are the motors strong enough?',
      answer: 'This is the floor’s side of it. If the motors stall first, no wheel slips.',
    },
  ],
});
