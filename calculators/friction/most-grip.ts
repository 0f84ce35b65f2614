import { defineCalculator, withUsual } from '../calculator.ts';
import { alpha, g, m, mu, n, R, theta, x, y, z } from '../givens.ts';
import { floorBound, pushesOfMost } from './most-steps.ts';
import { allWheelsDown, firstSlip, slipCautions } from './slip-steps.ts';

export const mostGrip = defineCalculator({
  id: 'most-grip',
  edition: 1,
  module: 'friction',
  title: 'Grip with the best control',
  question: 'With a push of its own for each wheel, how hard could it push at the most?',
  given: [mu, theta, m, withUsual(n, '6'), alpha, R, x, y, z, g],
  steps: [
    ...firstSlip.filter(({ name }) => !['F_slip', 'slope_slip', 'f_i', 'N_i'].includes(name)),
    ...floorBound,
    {
      name: 'a_most',
      means: 'speeding up, the most any control could get',
      quantity: 'acceleration',
      unit: 'm/s^2',
      formula: 'g / max(use_most, use_lift_top)',
      why: 'The tightest bound of all pairs of wheels, or the first lift. The pushes below show that it can be reached.',
    },
    {
      name: 'F_most',
      means: 'push, the most any control could get',
      quantity: 'force',
      unit: 'N',
      formula: 'm * a_most',
    },
    {
      name: 'slope_most',
      means: 'steepest slope, the most any control could get',
      quantity: 'angle',
      unit: 'deg',
      formula: 'atan(a_most / g)',
    },
    {
      name: 'share_most',
      means: 'share of the car’s push, the most any control could get',
      quantity: 'ratio',
      unit: '%',
      formula: 'a_most / a_car',
    },
    ...pushesOfMost,
  ],
  results: ['a_most', 'F_most', 'slope_most', 'share_most', 'a_slip', 'share_car', 'a_car'],
  requires: [allWheelsDown],
  cautions: [
    {
      when: 'use_lift_top > use_most',
      says: 'A wheel lifts before the floor gives all of its grip, at {a_most}. The pushes printed for that moment balance, but others would too, and one of them may be more than its wheel grips.',
    },
    {
      says: 'This takes a push of its own for each wheel and one friction everywhere. A real control stays below it.',
    },
    ...slipCautions,
  ],
  limits: [
    {
      asks: 'Does it have three wheels?',
      answer: 'Then there is one way only to share the push, and this is the first slip.',
      at: { n: '3' },
    },
    {
      asks: 'Does it have four, with all loads alike?',
      answer: 'Then it is the first slip too. From five on it is more.',
      at: { n: '4', z: '0 mm' },
    },
    {
      asks: 'Is the centre of mass on the floor?',
      answer: 'Then no load shifts, and the number of wheels and the heading decide alone.',
      at: { z: '0 mm' },
    },
    {
      asks: 'Are the motors strong enough?',
      answer: 'This is the floor’s side of it. If the motors stall first, no wheel slips.',
    },
  ],
});
