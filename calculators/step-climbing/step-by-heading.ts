import { defineCalculator, withUsual } from '../calculator.ts';
import { alpha, g, m, mu, q, R, r, T_w, theta, x, y, h } from '../givens.ts';

import { balanceAtEdge } from './leaving-the-floor.ts';
import { whoStandsWhere } from './three-wheels.ts';

export const stepByHeading = defineCalculator({
  id: 'step-by-heading',
  edition: 1,
  module: 'step-climbing',
  title: 'Three wheels at a step',
  question: 'Which way should a robot on three wheels face a step, and how high a step does it get up?',
  given: [withUsual(theta, '5 deg'), h, alpha, r, q, R, mu, m, x, y, T_w, g],
  steps: [
    ...whoStandsWhere,
    {
      name: 'psi_i',
      means: 'steepest contact of each wheel as it leaves the floor',
      quantity: 'angle',
      unit: 'deg',
      solve: 'use_first',
      equals: 'mu',
      between: ['0.000001deg', '70deg'],
      by: balanceAtEdge,
      why: 'Found by trial: the lines below, worked out with this contact angle, use all the grip or all the torque there is. The wheels up to then have got up already.',
    },
    {
      name: 'h_most',
      means: 'highest step that all three wheels get up',
      quantity: 'length',
      unit: 'mm',
      formula: 'min(h_i)',
    },
    {
      name: 'margin_h',
      means: 'height to spare at this step',
      quantity: 'length',
      unit: 'mm',
      formula: 'h_most - h',
    },
    {
      name: 'climbs',
      means: 'does it get up: 1 yes, 0 no',
      quantity: 'count',
      unit: '',
      formula: 'h <= h_most',
    },
    {
      name: 'T_top',
      means: 'torque of the hardest wheel at the highest step of each',
      quantity: 'torque',
      unit: 'N m',
      formula: 'max(T_i, T_b, T_k)',
    },
    {
      name: 'b_i',
      means: 'number of wheel b',
      brief: true,
      quantity: 'count',
      unit: '',
      formula: 'mod(i - 1 + side_b, 3) + 1',
    },
    {
      name: 'by_i',
      means: 'what stops each: 1 grip, 2 motor, 3 nothing',
      brief: true,
      quantity: 'count',
      unit: '',
      formula: 'if(use_wall >= 0.99 * use_first, 3, if(use_T >= 0.99 * use_first, 2, 1))',
    },
    {
      name: 'full_i',
      means: 'what the wheel uses of its own limit, as a share of the grip',
      brief: true,
      quantity: 'ratio',
      unit: '',
      formula: 'max(use_i, mu * T_i / T_w)',
    },
    {
      name: 'full_b',
      means: 'the same of wheel b',
      brief: true,
      quantity: 'ratio',
      unit: '',
      formula: 'max(use_b, mu * T_b / T_w)',
    },
    {
      name: 'weak_i',
      means: 'number of the wheel that gives way; 0 if none does',
      brief: true,
      quantity: 'count',
      unit: '',
      formula: 'if(by_i == 3, 0, if(full_i >= 0.99 * use_first, i, if(full_b >= 0.99 * use_first, b_i, 6 - i - b_i)))',
    },
    {
      name: 'k_stop',
      means: 'number of the wheel with the lowest step; 9 for the others',
      brief: true,
      quantity: 'count',
      unit: '',
      formula: 'if(h_i <= 1.01 * h_most, i, 9)',
    },
    {
      name: 'i_stop',
      means: 'wheel that stops the robot',
      brief: true,
      why: 'Of wheels whose steps are alike to a hundredth, the first.',
      quantity: 'count',
      unit: '',
      formula: 'min(k_stop)',
    },
    {
      name: 'weak_at_i',
      means: 'wheel that gives way then; 0 for the others',
      brief: true,
      quantity: 'count',
      unit: '',
      formula: 'if(i == i_stop, weak_i, 0)',
    },
    {
      name: 'i_weak',
      means: 'wheel that gives way then',
      brief: true,
      quantity: 'count',
      unit: '',
      formula: 'max(weak_at_i)',
    },
    {
      name: 'by_at_i',
      means: 'what stops it; 0 for the others',
      brief: true,
      quantity: 'count',
      unit: '',
      formula: 'if(i == i_stop, by_i, 0)',
    },
    {
      name: 'by_stop',
      means: 'what stops it: 1 grip, 2 motor, 3 nothing',
      brief: true,
      quantity: 'count',
      unit: '',
      formula: 'max(by_at_i)',
    },
    {
      name: 'T_hard',
      means: 'torque that the motors need for all of that',
      brief: true,
      quantity: 'torque',
      unit: 'N m',
      formula: 'max(T_top)',
    },
  ],
  results: ['h_most', 'margin_h', 'climbs', 'i_stop', 'i_weak', 'T_hard', 'h_i', 'T_top'],
  requires: [
    {
      given: 'q',
      holds: 'q <= 1.000000001 * r',
      says: 'A roller cannot be larger than its wheel: give a roller radius q up to the wheel radius r, which is {r}. The same for both is a ball.',
    },
    {
      given: 'R',
      holds: 'r <= 1.000000001 * R',
      says: 'The wheels would overlap: give a distance R to each wheel of at least the wheel radius r, which is {r}.',
    },
    {
      given: 'x',
      holds: 'N_least > 0.000001 * W_r',
      says: 'A wheel is off the floor before it comes to the step: its load comes out as {N_least}. Bring the centre of mass nearer to the middle (x, y in mm; R is {R}).',
    },
    {
      given: 'T_w',
      holds: 'T_w > 0.000001 * W_r * r',
      says: 'The motors are far too weak to drive the robot at all: give a torque T_w at the wheel in N m that is more than a millionth of weight times wheel radius.',
    },
  ],
  cautions: [
    {
      when: 'climbs == 0',
      says: 'It does not get up {h}: wheel {i_stop} gets up {h_most} at most on this heading. It may hang there with the others up already, tilted, and drop back.',
    },
    {
      when: 'by_stop == 1',
      says: 'What stops it is grip: as wheel {i_stop} leaves the floor, wheel {i_weak} slips.',
    },
    {
      when: 'by_stop == 2',
      says: 'What stops it is torque: as wheel {i_stop} leaves the floor, the motor of wheel {i_weak} stalls.',
    },
    {
      when: 'by_stop == 3',
      says: 'Nothing stops it up to a contact of 65°, and steeper ones are not asked of this: it gets up {h_most} at least, if nothing else is in the way.',
    },
    {
      says: 'A robot that climbs can tip back, hang or drop. Try it low, with nobody below it, and never towards stairs that lead down.',
    },
  ],
  limits: [
    {
      asks: 'Does a wheel point straight at the step?',
      answer:
        'Then it is pushed up by the other two without driving, and may get up more than they can. They come to the edge side by side, with nothing behind to push them, and decide.',
      at: { theta: '0 deg' },
    },
    {
      asks: 'Do two wheels come to it side by side?',
      answer: 'The third only pushes sideways, so the two climb by their own grip: the contact may lean by little.',
      at: { theta: '60 deg' },
    },
    {
      asks: 'Are the wheels ordinary ones, with small rollers?',
      answer: 'Give the radius of a roller. Edgewise such a wheel meets the step with a roller, and low ones stop it.',
      at: { q: '15 mm', theta: '25 deg' },
    },
    {
      asks: 'Does the robot tilt while it climbs?',
      answer:
        'It does, and this takes it for level. With a high centre of mass the last wheel gets up 5 to 13 % more or less than this.',
    },
    {
      asks: 'Are the balls two halves with rollers of their own?',
      answer:
        'A free half takes no force along its way to roll. At the edge that is the drive direction for one phase of the ball only; others move the lowest step by about 6 %.',
    },
    {
      asks: 'Do two ordinary wheels hang on the edge at once?',
      answer:
        'This takes the second to be as far over the edge as its lead is a share of its reach. For balls that is exact, for small rollers close.',
    },
    {
      asks: 'Is it taken at speed, or is the edge rounded?',
      answer: 'This is slow, with a rigid wheel at a sharp edge. A rounded edge is easier, a soft tread too.',
    },
  ],
});
