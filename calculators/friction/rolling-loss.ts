import { defineCalculator } from '../calculator.ts';
import type { Table } from '../calculator.ts';
import { alpha, g, m, n, s, slope, theta, v } from '../givens.ts';
import { pushUp } from '../motors/push-steps.ts';
import { acrossShare, alongShare, wheelAngle, wheelNumber } from '../wheel-kinematics/wheel-steps.ts';
import { C_r, C_w, ground } from './givens.ts';

const tyres: Table = {
  title: 'Rolling resistance of car tyres',
  source: 'carvill-1993',
  place: 'table of tyre rolling resistance',
  of: 'number of the ground',
  rows: [
    [1, 0.01],
    [2, 0.02],
    [3, 0.01],
    [4, 0.04],
    [5, 0.08],
  ],
  between: 'rows only',
};

export const rollingLoss = defineCalculator({
  id: 'rolling-loss',
  edition: 1,
  module: 'friction',
  title: 'What the floor costs',
  question: 'What does carpet cost?',
  given: [m, C_w, C_r, n, alpha, theta, slope, v, s, ground, g],
  steps: [
    wheelNumber,
    wheelAngle,
    alongShare,
    acrossShare,
    {
      name: 'N_each',
      means: 'load on each wheel, all alike',
      quantity: 'force',
      unit: 'N',
      formula: 'm * g * cos(slope) / n',
    },
    {
      name: 'F_i',
      means: 'what each wheel loses',
      quantity: 'force',
      unit: 'N',
      formula: 'N_each * (C_w * abs(s_i) + C_r * abs(c_i))',
      why: 'Along its drive direction the wheel rolls, along its axle the rollers do. Each loses in proportion to how far it rolls.',
    },
    {
      name: 'F_roll',
      means: 'push to keep rolling',
      quantity: 'force',
      unit: 'N',
      formula: 'sum(F_i)',
    },
    {
      name: 'C_eff',
      means: 'rolling resistance of the whole robot on this heading',
      quantity: 'ratio',
      unit: '',
      formula: 'F_roll / (m * g * cos(slope))',
    },
    pushUp,
    { name: 'F_all', means: 'push straight uphill', quantity: 'force', unit: 'N', formula: 'F_roll + F_up' },
    { name: 'P_all', means: 'power for it', quantity: 'power', unit: 'W', formula: 'F_all * v' },
    {
      name: 'E_roll',
      means: 'energy lost to the floor on the way',
      quantity: 'energy',
      unit: 'J',
      formula: 'F_roll * s',
      why: 'One newton costs one joule for each metre.',
    },
    {
      name: 'C_tyre',
      means: 'rolling resistance of a car tyre on the ground to compare with',
      quantity: 'ratio',
      unit: '',
      table: tyres,
      at: 'ground',
    },
    {
      name: 'k_tyre',
      means: 'rolling resistance of this robot over that of the tyre',
      quantity: 'ratio',
      unit: '',
      formula: 'C_eff / C_tyre',
    },
  ],
  results: ['F_roll', 'C_eff', 'F_all', 'P_all', 'E_roll', 'C_tyre', 'k_tyre'],
  cautions: [
    {
      when: 'C_eff > 0.1',
      says: 'A tenth of the weight goes into the floor. Motors and their drivers get hot on such a floor: check them before a long run.',
    },
    {
      says: 'No table of small rollers on carpet is known to us. Measure both numbers with a hanging scale: one along a drive direction, one along an axle.',
    },
  ],
  limits: [
    {
      asks: 'Does it go along a drive direction?',
      answer: 'One wheel rolls only, and the others do some of each.',
      at: { theta: '90 deg' },
    },
    {
      asks: 'Does it go towards a wheel?',
      answer:
        'That wheel’s rollers do all of its rolling. If rollers lose more than wheels, this way costs most of it.',
      at: { theta: '0 deg' },
    },
    {
      asks: 'Are the loads unlike?',
      answer: 'Then a wheel with more load loses more. The sum changes little unless rollers and wheels differ a lot.',
    },
    {
      asks: 'Does the robot turn as well?',
      answer: 'Turning costs its own share, which is left out.',
    },
  ],
});
