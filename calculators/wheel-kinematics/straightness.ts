import { defineCalculator } from '../calculator.ts';
import { alpha, e_w, R, s, theta } from '../givens.ts';
import { travelOf, turningOf } from './rim-steps.ts';
import { acrossShare, alongShare, wheelAngle, wheelNumber } from './wheel-steps.ts';

export const straightness = defineCalculator({
  id: 'straightness',
  edition: 1,
  module: 'wheel-kinematics',
  title: 'Drift off a straight line',
  question:
    'One wheel rolls a little faster than it should: how far does the robot stray, and which wheel matters most?',
  given: [e_w, alpha, R, theta, s],
  steps: [
    { name: 'n', means: 'number of wheels', brief: true, quantity: 'count', unit: '', formula: 'count(e_w)' },
    wheelNumber,
    wheelAngle,
    alongShare,
    acrossShare,
    {
      name: 'kappa_i',
      means: 'turn for each metre that one per cent on this wheel alone would bring',
      quantity: 'curvature',
      unit: 'deg/m',
      formula: '1 / 100 * abs(s_i) / (n * R)',
      why: 'A wheel that does none of the travel brings none: its error has nothing to work on.',
    },
    {
      name: 'kappa_top',
      means: 'the most of them',
      brief: true,
      quantity: 'curvature',
      unit: 'deg/m',
      formula: 'max(kappa_i)',
    },
    {
      name: 'i_kappa',
      means: 'wheels that matter most',
      brief: true,
      quantity: 'count',
      unit: '',
      formula: 'if(kappa_i >= 0.999999 * kappa_top, i, 0)',
    },
    {
      name: 'i_most',
      means: 'wheel that matters most at this heading (the last of equals)',
      brief: true,
      quantity: 'count',
      unit: '',
      formula: 'max(i_kappa)',
    },
    {
      name: 'excess',
      means: 'excess travel of each rim, for each metre of path',
      quantity: 'ratio',
      unit: '%',
      formula: 'e_w * s_i',
      why: 'The error of a wheel counts in proportion to what the wheel does.',
    },
    {
      name: 'kappa',
      means: 'how much the heading goes off for each metre',
      quantity: 'curvature',
      unit: 'deg/m',
      formula: turningOf('excess'),
      why: 'The yaw is the sum of the rim travels over nR. Without errors the sum is zero.',
    },
    {
      name: 'excess_c',
      means: 'excess travel across the path',
      brief: true,
      quantity: 'ratio',
      unit: '%',
      formula: 'excess * c_i',
    },
    {
      name: 'crab',
      means: 'drift to the left for each metre, without turning',
      quantity: 'ratio',
      unit: '%',
      formula: travelOf('excess_c'),
      why: 'The excess rim travels also add up to a small travel of their own. Its part across the path is a drift that a yaw sensor does not see.',
    },
    {
      name: 'dtheta',
      means: 'heading at the end of the path, off by',
      quantity: 'angle',
      unit: 'deg',
      formula: 'kappa * s',
    },
    {
      name: 'y_left',
      means: 'how far to the left of the line it ends',
      quantity: 'length',
      unit: 'm',
      formula: 'crab * s + kappa * s^2 / 2',
      why: 'The drift grows with the path, the arc with its square: on a long run the arc is what matters.',
    },
    {
      name: 'y_sensor',
      means: 'what is left of that when a yaw sensor holds the heading',
      quantity: 'length',
      unit: 'm',
      formula: 'crab * s',
      why: 'The sensor takes out the turning. The drift stays.',
    },
  ],
  results: ['kappa_i', 'i_most', 'kappa', 'crab', 'dtheta', 'y_left', 'y_sensor'],
  cautions: [
    {
      when: 'abs(dtheta) > 30deg',
      says: 'The heading goes off by so much that the path is no longer nearly straight: the sideways figure is too small a model for it.',
    },
  ],
  limits: [
    {
      asks: 'Do all wheels err alike?',
      answer: 'Then the robot drives straight, only faster or slower.',
      at: { e_w: '1, 1, 1 %' },
    },
    {
      asks: 'Does the wheel in error stand square to the travel?',
      answer: 'Then its error does nothing.',
      at: { theta: '0 deg' },
    },
    {
      asks: 'Are there more than three wheels?',
      answer:
        'Then the wheels disagree and slip. The motion shown is the one that fits all best, as if all slipped alike.',
      at: { e_w: '1, 0, 0, 0 %' },
    },
  ],
});
