import { defineCalculator } from '../calculator.ts';
import { phi, q, r, v } from '../givens.ts';

export const rollRatio = defineCalculator({
  id: 'roll-ratio',
  edition: 1,
  module: 'wheel-kinematics',
  title: 'Rolling ratio of an angled wheel',
  question: 'A wheel stands at an angle to the travel: how fast must it turn, and what do its rollers do?',
  given: [v, phi, r, q],
  steps: [
    {
      name: 'k_roll',
      means: 'rolling ratio: the share of the travel along the drive direction',
      quantity: 'ratio',
      unit: '',
      formula: 'cos(phi)',
      why: 'The share of the travel that lies along the wheel’s drive direction is the near side of a right triangle over its long side.',
    },
    {
      name: 'v_roll',
      means: 'rolling part of the travel',
      quantity: 'velocity',
      unit: 'm/s',
      formula: 'v * k_roll',
      why: 'A wheel that does not slip rolls only along its drive direction, so its rim moves at this speed.',
    },
    {
      name: 'v_free',
      means: 'free part, which the rollers take',
      quantity: 'velocity',
      unit: 'm/s',
      formula: 'v * sin(phi)',
      why: 'What lies along the axle is no business of the motor: the rollers turn and let it pass.',
    },
    {
      name: 'omega_roll',
      means: 'wheel speed',
      quantity: 'angular velocity',
      unit: 'rpm',
      formula: 'v_roll / r',
      why: 'Rolling without slip, the rim covers one radius of floor for each radian the wheel turns.',
    },
    {
      name: 'omega_q',
      means: 'roller speed',
      quantity: 'angular velocity',
      unit: 'rpm',
      formula: 'v_free / q',
      why: 'The roller touches the floor at its own radius and rolls sideways on it.',
    },
  ],
  results: ['k_roll', 'omega_roll', 'omega_q'],
  cautions: [
    {
      when: 'abs(k_roll) < 0.1',
      says: 'The wheel hardly turns here, so small errors in its angle decide which way it turns: do not read the robot’s speed from this wheel.',
    },
    {
      when: 'q > r',
      says: 'The roller radius is larger than the wheel radius. That is possible only for a roller that stands proud; check that q is not a diameter.',
    },
  ],
  limits: [
    {
      asks: 'Does the wheel stand square to the travel?',
      answer: 'At 90° the motor stands still and the rollers do all the work.',
      at: { phi: '90 deg' },
    },
    {
      asks: 'Does the wheel face backwards?',
      answer: 'Past 90° the wheel turns the other way: the sign of its speed says so.',
      at: { phi: '120 deg' },
    },
    {
      asks: 'Do the rollers stand square to the axle?',
      answer:
        'They are taken to. Rollers at 45° carry the wheel along as they roll, and have a calculator of their own.',
    },
    {
      asks: 'Do the rollers turn freely?',
      answer:
        'They are taken to. A stiff or blocked roller drags, and the floor then pushes the wheel where no motor steers it.',
    },
    {
      asks: 'Does the wheel slip along its drive direction?',
      answer: 'It is taken not to. Hard acceleration, dust and loose carpet break that.',
    },
  ],
});
