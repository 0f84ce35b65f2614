import { defineCalculator } from '../calculator.ts';
import { alpha, g, m, mu, n, R, theta, x, y, z } from '../givens.ts';
import { allWheelsDown, firstSlip, slipCautions } from './slip-steps.ts';

export const traction = defineCalculator({
  id: 'traction',
  edition: 1,
  module: 'friction',
  title: 'Grip by heading',
  question: 'How hard can it push before a wheel slips?',
  given: [mu, theta, m, n, alpha, R, x, y, z, g],
  steps: firstSlip,
  results: ['a_slip', 'F_slip', 'slope_slip', 'share_car', 'a_car', 'f_i', 'N_i'],
  requires: [allWheelsDown],
  cautions: [
    {
      when: 'n > 3',
      says: 'This is the first slip, for the same voltage for each share and wheels that give alike. With more than four wheels a push of its own for each can get more.',
    },
    ...slipCautions,
  ],
  limits: [
    {
      asks: 'Does it go towards one of three wheels?',
      answer:
        'That wheel gives nothing and loses load it has no use for. The other two gain, so it starts best that way.',
      at: { theta: '0 deg' },
    },
    {
      asks: 'Does it go between two of three wheels?',
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
