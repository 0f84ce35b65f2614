import { defineCalculator } from '../calculator.ts';
import { acc, alpha, C_rr, g, m, n, R, r, slope, theta } from '../givens.ts';
import { alongShare, hardestWay, wheelAngle, wheelNumber } from '../wheel-kinematics/wheel-steps.ts';
import { acc_Omega, I_z } from './givens.ts';
import { pushAll, pushFaster, pushOfWheel, pushRolling, pushUp, worstPushOf, worstTorque } from './push-steps.ts';

export const driveForce = defineCalculator({
  id: 'drive-force',
  edition: 1,
  module: 'motors',
  title: 'Push of each wheel',
  question: 'How hard must each wheel push, and which torque is that?',
  given: [m, acc, slope, C_rr, theta, n, alpha, R, r, I_z, acc_Omega, g],
  steps: [
    pushFaster,
    pushUp,
    pushRolling,
    { ...pushAll, means: 'push of the whole robot, along the heading' },
    wheelNumber,
    wheelAngle,
    alongShare,
    {
      name: 'f_turn',
      means: 'push of each wheel that speeds up the turning',
      quantity: 'force',
      unit: 'N',
      formula: 'I_z * acc_Omega / (n * R)',
      why: 'Turning asks the same of every wheel, and each has the lever R.',
    },
    {
      name: 'f_i',
      means: 'push of each wheel, counter-clockwise positive',
      quantity: 'force',
      unit: 'N',
      formula: `${pushOfWheel('F_all')} + f_turn`,
      why: 'Each wheel pushes in proportion to its share of the travel. Only that share of its push points along the heading, and the squares of the shares add up to n/2: hence the factor 2/n.',
    },
    { name: 'f_abs', means: 'size of each push', brief: true, quantity: 'force', unit: 'N', formula: 'abs(f_i)' },
    {
      name: 'f_top',
      means: 'push of the hardest wheel at this heading',
      brief: true,
      quantity: 'force',
      unit: 'N',
      formula: 'max(f_abs)',
    },
    {
      name: 'T_top',
      means: 'torque of the hardest wheel at this heading',
      quantity: 'torque',
      unit: 'N m',
      formula: 'f_top * r',
    },
    {
      name: 'F_worst',
      means: 'push of the hardest wheel at the worst heading',
      quantity: 'force',
      unit: 'N',
      formula: `${worstPushOf('F_all')} + abs(f_turn)`,
      why: 'Along a wheel’s drive direction its share is one, and no share is larger.',
    },
    worstTorque,
    {
      name: 'theta_hard',
      means: 'a worst heading',
      quantity: 'angle',
      unit: 'deg',
      formula: hardestWay('acc_Omega'),
      why: 'Along the drive direction of wheel 1, on the side where travel and turning add up.',
    },
  ],
  results: ['F_all', 'f_i', 'f_top', 'T_top', 'F_worst', 'T_worst', 'theta_hard'],
  cautions: [
    {
      when: 'F_worst == 0',
      says: 'Nothing asks for a push. Give an acceleration, a slope or rolling resistance.',
    },
    {
      when: 'F_worst > m * g * cos(slope) / n',
      says: 'At the worst heading a wheel pushes harder than its share of the weight presses it down, which is more than most floors hold: expect it to slip.',
    },
    {
      says: 'A robot that pushes can pinch a hand against a wall or a bench. Limit current and speed where people are near.',
    },
  ],
  limits: [
    {
      asks: 'Does it keep an even speed on level ground?',
      answer: 'Then only rolling resistance is left.',
      at: { acc: '0 m/s^2', slope: '0 deg' },
    },
    {
      asks: 'Does it travel along an axle?',
      answer: 'That wheel pushes nothing and the others push more than half each.',
      at: { theta: '0 deg' },
    },
    {
      asks: 'Does it turn faster and faster as well?',
      answer: 'The push for turning adds to some wheels and is taken from others.',
      at: { acc_Omega: '180 deg/s^2' },
    },
    {
      asks: 'Is the heading not straight up the slope?',
      answer:
        'It is taken to be: the worst case. Across a slope the wheels push the robot uphill and along at the same time, and the two pushes add as arrows.',
    },
    {
      asks: 'Are there more than three wheels?',
      answer:
        'Then the pushes could be shared in many ways. This is how equal motors at proportional voltage share them; the squares of the pushes add up to least.',
    },
    {
      asks: 'Do motors and wheels have inertia?',
      answer: 'Their spinning takes torque too. Add what they count for to the mass: speeding up works it out.',
    },
  ],
});
