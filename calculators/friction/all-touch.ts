import { defineCalculator, withUsual } from '../calculator.ts';
import { g, m, n } from '../givens.ts';
import { wheelNumber } from '../wheel-kinematics/wheel-steps.ts';
import { e_floor, k_w } from './givens.ts';
import { angleFromOut, leastSpring, loadAfterLift, pullOut, wheelOut, wheelRank } from './lift-steps.ts';

export const allTouch = defineCalculator({
  id: 'all-touch',
  edition: 1,
  module: 'friction',
  title: 'Do all wheels touch',
  question: 'Do all wheels touch a floor that is not flat?',
  given: [withUsual(n, '4'), m, k_w, e_floor, g],
  steps: [
    wheelNumber,
    {
      name: 'alpha_i',
      means: 'how far round from wheel 1 each wheel stands',
      quantity: 'angle',
      unit: 'deg',
      formula: '(i - 1) * 360deg / n',
    },
    {
      name: 'N_even',
      means: 'load on each wheel on a flat floor',
      quantity: 'force',
      unit: 'N',
      formula: 'm * g / n',
    },
    {
      name: 'raised',
      brief: true,
      means: 'one for the wheel on the other height, zero for the rest',
      quantity: 'count',
      unit: '',
      formula: 'if(i == 1, 1, 0)',
    },
    {
      name: 'warp',
      means: 'share of the error of the floor that each wheel feels',
      quantity: 'ratio',
      unit: '',
      formula: 'if(n == 3, 0, raised - (1 + 2 * cos(alpha_i)) / n)',
      why: 'The body rises and tilts to follow the floor as well as it can, and three wheels follow any floor. With more, a part is left over and presses the wheels.',
    },
    {
      name: 'dN',
      means: 'load that the floor moves to each wheel',
      quantity: 'force',
      unit: 'N',
      formula: 'k_w * e_floor * warp',
    },
    {
      name: 'N_spring',
      means: 'load on each wheel if the floor could also pull',
      quantity: 'force',
      unit: 'N',
      formula: 'N_even + dN',
    },
    leastSpring,
    pullOut,
    wheelRank,
    wheelOut,
    angleFromOut,
    loadAfterLift,
    { name: 'dN_low', means: 'most that a wheel loses', brief: true, quantity: 'force', unit: 'N', formula: 'min(dN)' },
    {
      name: 'use_lift',
      means: 'how far it is on the way to a lift',
      quantity: 'ratio',
      unit: '%',
      formula: '-dN_low / N_even',
    },
    { name: 'N_top', means: 'largest load', brief: true, quantity: 'force', unit: 'N', formula: 'max(N_i)' },
    { name: 'N_i_low', means: 'least load', brief: true, quantity: 'force', unit: 'N', formula: 'min(N_i)' },
    {
      name: 'spread',
      means: 'from the least load to the largest, over the even one',
      quantity: 'ratio',
      unit: '%',
      formula: '(N_top - N_i_low) / N_even',
    },
  ],
  results: ['N_i', 'dN', 'use_lift', 'spread'],
  requires: [
    {
      given: 'e_floor',
      holds: 'N_i_low >= -0.000001 * m * g',
      says: 'More than one wheel lifts, and this works out the lift of one only. Give a smaller error of the floor e_floor in mm, which is {e_floor}, or a softer wheel k_w.',
    },
  ],
  cautions: [
    {
      when: 'N_out < 0',
      says: 'Wheel {i_out} lifts. It neither drives nor measures: the robot strays and its odometry goes wrong.',
    },
    {
      when: 'N_out < 0 and n == 4',
      says: 'The wheel opposite to it touches and carries nothing. The robot rocks on the diagonal of the other two.',
    },
    {
      when: 'use_lift > 0.5 and N_out == 0',
      says: 'A wheel has lost {use_lift} of its load, and with it as much of its grip.',
    },
    { when: 'n == 3', says: 'Three wheels always touch: the body tilts to follow the floor, and the loads stay.' },
  ],
  limits: [
    {
      asks: 'Does it stand on three wheels?',
      answer: 'Then the floor changes no load at all.',
      at: { n: '3' },
    },
    {
      asks: 'Is the floor low under wheel 1?',
      answer: 'Then that wheel hangs, and with four wheels the opposite one hangs as much.',
      at: { e_floor: '-1 mm' },
    },
    {
      asks: 'Are the wheels stiffer?',
      answer: 'Then the same error moves more load. Softer mounts or treads let all wheels touch.',
      at: { k_w: '100 N/mm', e_floor: '0.5 mm' },
    },
    {
      asks: 'Does the body twist?',
      answer:
        'A thin plate twists and does what soft wheels do. Put that into the stiffness of a wheel: press on one and measure how far it gives.',
    },
  ],
});
