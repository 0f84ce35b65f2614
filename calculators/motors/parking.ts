import { defineCalculator } from '../calculator.ts';
import { alpha, g, m, n, r, slope, up } from '../givens.ts';
import { along, largestShare, shareSize, wheelAngle, wheelNumber } from '../wheel-kinematics/wheel-steps.ts';
import { T_hold } from './givens.ts';
import { pushOfWheel, pushUp, worstPushOf } from './push-steps.ts';

export const parking = defineCalculator({
  id: 'parking',
  edition: 1,
  module: 'motors',
  title: 'Parked on a slope',
  question: 'Does it roll away with the power off?',
  given: [m, slope, up, n, alpha, r, T_hold, g],
  steps: [
    pushUp,
    wheelNumber,
    wheelAngle,
    {
      name: 's_i',
      means: 'share of the way uphill along each wheel’s drive direction',
      quantity: 'ratio',
      unit: '',
      formula: along('up'),
    },
    {
      name: 'f_i',
      means: 'push of each wheel, counter-clockwise positive',
      quantity: 'force',
      unit: 'N',
      formula: pushOfWheel('F_up'),
      why: 'Standing still asks the same of the wheels as driving: each pushes in proportion to its share.',
    },
    shareSize,
    { ...largestShare, means: 'share of the hardest wheel' },
    {
      name: 'T_top',
      means: 'torque of the hardest wheel',
      quantity: 'torque',
      unit: 'N m',
      formula: `${worstPushOf('F_up')} * s_top * r`,
    },
    {
      name: 'margin_T',
      means: 'margin, torque it holds over torque it needs',
      quantity: 'ratio',
      unit: '',
      formula: 'T_hold / T_top',
    },
    {
      name: 'T_worst',
      means: 'torque of the hardest wheel, however it is parked',
      quantity: 'torque',
      unit: 'N m',
      formula: `${worstPushOf('F_up')} * r`,
      why: 'With a drive direction straight uphill a wheel has a share of one.',
    },
    {
      name: 'margin_worst',
      means: 'margin, however it is parked',
      quantity: 'ratio',
      unit: '',
      formula: 'T_hold / T_worst',
    },
    {
      name: 'F_hold',
      means: 'push that the wheels hold, however it is parked',
      quantity: 'force',
      unit: 'N',
      formula: 'n / 2 * T_hold / r',
    },
    {
      name: 'slope_hold',
      means: 'steepest slope that they hold, however it is parked',
      quantity: 'angle',
      unit: 'deg',
      formula: 'asin(min(F_hold / (m * g), 1))',
    },
  ],
  results: ['f_i', 'T_top', 'margin_T', 'T_worst', 'margin_worst', 'slope_hold'],
  requires: [
    {
      given: 'slope',
      holds: 'F_up > 0',
      says: 'On level ground nothing pulls it away and a margin has no meaning. Give a slope above 0 deg.',
    },
  ],
  cautions: [
    {
      when: 'margin_T < 1',
      says: 'It rolls away: the hardest wheel needs {T_top} and the drive holds {T_hold}.',
    },
    {
      when: 'margin_T >= 1 and margin_worst < 1',
      says: 'It holds only as it stands now. Turned another way it rolls off.',
    },
    {
      when: 'margin_T >= 1 and margin_worst >= 1 and margin_worst < 1.5',
      says: 'It holds, with little to spare. Gears that have run in and warm grease hold less. Common practice, no source.',
    },
    {
      says: 'A motor with its wires joined brakes only while it turns: on a slope it lets the robot creep. Put a chock under a wheel, and never leave a heavy robot on a slope above people.',
    },
  ],
  limits: [
    {
      asks: 'Is the slope steep?',
      answer: 'Past the steepest slope it rolls, and with little rolling resistance it gathers speed.',
      at: { slope: '10 deg' },
    },
    {
      asks: 'Does the drive hold nothing?',
      answer: 'A motor without gears turns with one finger. Then only a brake or a chock holds it.',
      at: { T_hold: '0 N m' },
    },
    {
      asks: 'Does rolling resistance help?',
      answer: 'It does, by as much as its share of the weight. It is left out here, on the safe side.',
    },
    {
      asks: 'Do the wheels slip instead?',
      answer: 'Grip is taken to be enough. A wheel that slips lets the robot slide and turn.',
    },
    {
      asks: 'Are there more than three wheels?',
      answer:
        'This tells when the first wheel gives. The others may then hold a little longer, which is nothing to plan on.',
    },
  ],
});
