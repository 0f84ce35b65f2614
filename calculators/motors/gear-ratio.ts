import { defineCalculator, withUsual } from '../calculator.ts';
import { ratioOfTeeth } from '../belt-drives/tooth-steps.ts';
import { r, v } from '../givens.ts';
import { omega_m, z_max, z_min } from './givens.ts';

/** Teeth of the small one of a pair, and of the large one that comes nearest. */
const smallTeeth = (pair: string): string => `min(z_max, z_min - 1 + ${pair})`;
const largeTeeth = (small: string): string => `min(z_max, round(k_teeth * ${small}))`;

export const gearRatio = defineCalculator({
  id: 'gear-ratio',
  edition: 1,
  module: 'motors',
  title: 'Ratio and teeth for a speed',
  question: 'Which ratio for the speed I want, and which teeth come nearest?',
  given: [withUsual(v, '0.75 m/s'), r, omega_m, z_min, z_max],
  steps: [
    {
      name: 'ratio_want',
      means: 'ratio wanted, motor turns for each wheel turn',
      quantity: 'ratio',
      unit: '',
      formula: 'omega_m * r / v',
      why: 'The wheel must turn at v/r.',
    },
    {
      name: 'k_teeth',
      means: 'teeth of the large one for each tooth of the small one',
      quantity: 'ratio',
      unit: '',
      formula: 'max(ratio_want, 1 / ratio_want)',
      why: 'To slow down, the motor has the small one. To speed up, the wheel has it.',
    },
    { name: 'i', means: 'pair', brief: true, quantity: 'count', unit: '', formula: 'upto(12)' },
    {
      name: 'z_small',
      means: 'teeth of the small one, from the fewest on',
      brief: true,
      quantity: 'count',
      unit: '',
      formula: smallTeeth('i'),
    },
    {
      name: 'z_large',
      means: 'teeth of the large one that come nearest',
      brief: true,
      quantity: 'count',
      unit: '',
      formula: largeTeeth('z_small'),
      why: 'Teeth are whole, so a ratio is met only as nearly as whole numbers allow.',
    },
    {
      name: 'v_i',
      means: 'travel speed of each pair',
      brief: true,
      quantity: 'velocity',
      unit: 'm/s',
      formula: 'omega_m * r * if(ratio_want >= 1, z_small / z_large, z_large / z_small)',
    },
    {
      name: 'e_i',
      means: 'how far the ratio of each pair is off',
      brief: true,
      quantity: 'ratio',
      unit: '%',
      formula: 'abs(z_large / z_small / k_teeth - 1)',
    },
    { name: 'e_least', means: 'the least of them', brief: true, quantity: 'ratio', unit: '%', formula: 'min(e_i)' },
    {
      name: 'i_near',
      means: 'pairs that are as near, to a thousandth of one per cent',
      brief: true,
      quantity: 'count',
      unit: '',
      formula: 'if(e_i <= e_least + 0.00001, i, 12)',
    },
    {
      name: 'i_best',
      means: 'first of them',
      brief: true,
      quantity: 'count',
      unit: '',
      formula: 'min(i_near)',
      why: 'Of pairs that are equally near the smallest is taken.',
    },
    {
      name: 'z_s',
      means: 'teeth of its small one',
      brief: true,
      quantity: 'count',
      unit: '',
      formula: smallTeeth('i_best'),
    },
    {
      name: 'z_l',
      means: 'teeth of its large one',
      quantity: 'count',
      unit: '',
      formula: largeTeeth('z_s'),
    },
    {
      name: 'z1',
      means: 'teeth on the motor, of the nearest pair',
      brief: true,
      quantity: 'count',
      unit: '',
      formula: 'if(ratio_want >= 1, z_s, z_l)',
    },
    {
      name: 'z2',
      means: 'teeth on the wheel, of the nearest pair',
      brief: true,
      quantity: 'count',
      unit: '',
      formula: 'if(ratio_want >= 1, z_l, z_s)',
    },
    { ...ratioOfTeeth, name: 'ratio_b', means: 'ratio of the nearest pair' },
    {
      name: 'v_got',
      means: 'travel speed of that pair',
      quantity: 'velocity',
      unit: 'm/s',
      formula: 'omega_m * r / ratio_b',
    },
    {
      name: 'e_v',
      means: 'how much faster that is than wanted',
      quantity: 'ratio',
      unit: '%',
      formula: 'v_got / v - 1',
    },
  ],
  results: ['ratio_want', 'z1', 'z2', 'ratio_b', 'v_got', 'e_v'],
  requires: [
    { given: 'v', holds: 'v > 0', says: 'Give the travel speed v you want: more than 0 m/s.' },
    {
      given: 'z_max',
      holds: 'z_max >= z_min',
      says: 'The most teeth must be no fewer than the fewest, which are {z_min}.',
    },
  ],
  cautions: [
    {
      when: 'abs(e_v) > 0.05',
      says: 'No pair within these teeth comes near: the speed of the best is {e_v} off. Allow more teeth or fewer, take two stages, or a motor with another gearbox.',
    },
    {
      when: 'min(z_max, z_max / k_teeth) > z_min + 12',
      says: 'Only the twelve smallest sizes are tried as the small one. Larger ones can come nearer, and take more room.',
    },
  ],
  limits: [
    {
      asks: 'Do you want to slow down ten to one?',
      answer: 'One pair does not do it: take two stages, or a motor with a lower gear.',
      at: { v: '0.15 m/s' },
    },
    { asks: 'Do you want to speed up?', answer: 'Then the large one sits on the motor.', at: { v: '3 m/s' } },
    {
      asks: 'Is the motor’s speed the same with every ratio?',
      answer:
        'No: more reduction takes load off the motor, and it runs faster. Find its speed again with the ratio you chose.',
    },
    {
      asks: 'Does it matter which of two equal pairs you take?',
      answer:
        'For the speed it does not. The larger pair has more teeth in mesh and less pull; the smaller one takes less room.',
    },
  ],
});
