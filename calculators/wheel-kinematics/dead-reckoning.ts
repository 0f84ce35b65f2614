import { defineCalculator } from '../calculator.ts';
import { alpha, counts, e_d, e_R, e_r, n, R, r, ratio, s, theta, turns } from '../givens.ts';
import { travelOfCount } from './rim-steps.ts';
import { alongShare, largestShare, shareSize, wheelAngle, wheelNumber } from './wheel-steps.ts';

/** How far aside an arc ends whose heading is off by so much at its end. */
const strayOnArc = (off: string): string => `if(${off} == 0, 0, s * (1 - cos(${off})) / ${off})`;

export const deadReckoning = defineCalculator({
  id: 'dead-reckoning',
  edition: 1,
  module: 'wheel-kinematics',
  title: 'Dead reckoning and its errors',
  question: 'I drive by the encoders for a while: where am I, and how wrong can that be?',
  given: [counts, ratio, n, alpha, r, R, theta, s, turns, e_r, e_R, e_d],
  steps: [
    travelOfCount('(counts * ratio)'),
    {
      name: 'turn_counts',
      means: 'counts of a wheel for one turn of the robot on the spot',
      quantity: 'ratio',
      unit: '',
      formula: 'counts * ratio * R / r',
      why: 'Each wheel runs round a circle of radius R, so it turns R/r times.',
    },
    {
      name: 'ds',
      means: 'error of the distance',
      quantity: 'length',
      unit: 'mm',
      formula: 'e_r * s',
      why: 'The robot believes in a radius that is too large by this share, so it counts that much too much floor. An error that all wheels share bends no straight run.',
    },
    {
      name: 'dtheta_turn',
      means: 'error of the heading from turning, reckoned less true',
      quantity: 'angle',
      unit: 'deg',
      formula: '360deg * turns * ((1 + e_r) / (1 + e_R) - 1)',
      why: 'The reckoned yaw is the rim travel over the distance to the wheels, so the one error multiplies and the other divides.',
    },
    {
      name: 'y_turn_first',
      means: 'sideways error if it turns first and drives then',
      quantity: 'length',
      unit: 'm',
      formula: 's * sin(dtheta_turn)',
      why: 'The whole path runs off at the wrong angle: the worst order. Driven first and turned then, the same errors cost nothing sideways.',
    },
    {
      name: 'y_turn_mixed',
      means: 'sideways error if it turns evenly all the way',
      quantity: 'length',
      unit: 'm',
      formula: strayOnArc('dtheta_turn'),
    },
    wheelNumber,
    wheelAngle,
    alongShare,
    shareSize,
    largestShare,
    {
      name: 'dtheta_one',
      means: 'error of the heading when one wheel alone is wrong',
      quantity: 'angle',
      unit: 'deg',
      formula: 'e_d * s * s_top / (n * R)',
      why: 'The wheel that does most of the travel at this heading is the worst. Its excess travel turns the robot by itself over nR.',
    },
    {
      name: 'y_one',
      means: 'sideways error when one wheel alone is wrong',
      quantity: 'length',
      unit: 'm',
      formula: strayOnArc('dtheta_one'),
      why: 'The heading goes off evenly along the path, so the path is an arc.',
    },
  ],
  results: ['d_count', 'turn_counts', 'ds', 'dtheta_turn', 'y_turn_first', 'y_turn_mixed', 'dtheta_one', 'y_one'],
  cautions: [
    {
      when: 'abs(dtheta_turn) > 45deg or abs(dtheta_one) > 45deg',
      says: 'The heading is off by so much that the position means little. Correct it on the way, by a yaw sensor or a mark on the floor.',
    },
  ],
  limits: [
    {
      asks: 'Are all errors nil?',
      answer: 'Then counting is exact, but for slip.',
      at: { e_r: '0 %', e_R: '0 %', e_d: '0 %' },
    },
    {
      asks: 'Are the errors large?',
      answer:
        'The sideways figures lay the true length of the path along the wrong heading, and leave out the small drift of a wheel in error. Below a few per cent nothing is lost by that.',
      at: { e_r: '20 %' },
    },
    {
      asks: 'Does a wheel slip?',
      answer: 'Slip is not in here. It comes on top, and unlike these errors it cannot be calibrated away.',
    },
    {
      asks: 'Do the errors stay the same on the way?',
      answer: 'They are taken to. Wear, load and carpet change the rolling radius.',
    },
  ],
});
