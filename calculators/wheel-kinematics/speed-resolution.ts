import { defineCalculator } from '../calculator.ts';
import { counts, dt, r, ratio, v } from '../givens.ts';
import { travelOfCount } from './rim-steps.ts';

export const speedResolution = defineCalculator({
  id: 'speed-resolution',
  edition: 1,
  module: 'wheel-kinematics',
  title: 'How finely a wheel’s speed is measured',
  question: 'I count encoder pulses at fixed times: what is the smallest difference of speed that I can see?',
  given: [counts, ratio, r, dt, v],
  steps: [
    {
      name: 'wheel_counts',
      means: 'counts for each wheel turn',
      quantity: 'ratio',
      unit: '',
      formula: 'counts * ratio',
    },
    travelOfCount('wheel_counts'),
    {
      name: 'v_step',
      means: 'smallest step of the measured rim speed',
      quantity: 'velocity',
      unit: 'mm/s',
      formula: 'd_count / dt',
      why: 'One count more or less in the time between two readings.',
    },
    {
      name: 'omega_step',
      means: 'the same as wheel speed',
      quantity: 'angular velocity',
      unit: 'rpm',
      formula: '2 * pi / (wheel_counts * dt)',
    },
    {
      name: 'n_dt',
      means: 'counts between two readings at the travel speed',
      quantity: 'ratio',
      unit: '',
      formula: 'v / v_step',
    },
    {
      name: 'dv_share',
      means: 'step as a share of the travel speed',
      quantity: 'ratio',
      unit: '%',
      formula: 'if(v > 0, v_step / max(v, v_step / 1000), 0)',
      brief: true,
    },
  ],
  results: ['d_count', 'v_step', 'omega_step', 'n_dt', 'dv_share'],
  cautions: [
    {
      when: 'v > 0 and n_dt < 10',
      says: 'Fewer than ten counts between two readings: the measured speed jumps by more than a tenth. Read less often, or measure the time between counts instead.',
    },
  ],
  limits: [
    {
      asks: 'Does the wheel stand still?',
      answer: 'Then no count comes, and the speed reads zero.',
      at: { v: '0 m/s' },
    },
    {
      asks: 'Are the pulses evenly spaced?',
      answer:
        'They are taken to be. On a cheap encoder the four edges of a cycle are not, and the speed ripples by more than one count.',
    },
  ],
});
