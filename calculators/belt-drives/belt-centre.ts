import { defineCalculator } from '../calculator.ts';
import { p, z1, z2 } from '../givens.ts';
import { shim, z_b } from './givens.ts';
import { exactLength, nearlyTouching, pitchCircles, shortestBelt } from './pitch-circles.ts';
import { freeSpan, spanAngle } from './span-steps.ts';
import { lengthOfTeeth } from './tooth-steps.ts';

export const beltCentre = defineCalculator({
  id: 'belt-centre',
  edition: 1,
  module: 'belt-drives',
  title: 'Centre distance for a belt',
  question: 'I have this belt: where do the shafts go?',
  given: [p, z_b, z1, z2, shim],
  steps: [
    ...pitchCircles,
    ...shortestBelt,
    lengthOfTeeth,
    {
      name: 'C',
      means: 'distance between the two shafts',
      quantity: 'length',
      unit: 'mm',
      solve: exactLength('C'),
      equals: 'L_b',
      between: ['C_touch', 'L_b / 2'],
      why: 'Two spans and two arcs must be the belt. The centre distance stands in a root and in an arcsine, so it is found by trial.',
    },
    spanAngle,
    freeSpan,
    {
      name: 'B',
      means: 'belt that is left for the two spans, about',
      quantity: 'length',
      unit: 'mm',
      formula: 'L_b - pi * (D1 + D2) / 2',
      why: 'As if each pulley were wrapped half round.',
    },
    {
      name: 'C_about',
      means: 'centre distance by the usual closed formula',
      quantity: 'length',
      unit: 'mm',
      formula: '(B + sqrt(B^2 - 2 * (D2 - D1)^2)) / 4',
      why: 'It follows from the length 2C + π(D1 + D2)/2 + (D2 − D1)²/(4C), which takes a small angle for its sine. Shigley’s Mechanical Engineering Design, 10th edition, has it in the section on V belts, as cited from memory.',
    },
    {
      name: 'dC_about',
      means: 'error of that formula',
      quantity: 'length',
      unit: 'mm',
      formula: 'C_about - C',
      why: 'Two nearly equal lengths are subtracted, so a very small error is known to a few digits only.',
    },
    {
      name: 'take',
      means: 'belt taken up by the shim',
      quantity: 'length',
      unit: 'mm',
      formula: '2 * cos(phi_b) * shim',
      why: 'Both spans grow by nearly what the shaft moves, less the lean of a span.',
    },
    {
      name: 'C_tooth',
      means: 'how far a shaft must move for one tooth more of belt',
      quantity: 'length',
      unit: 'mm',
      formula: 'p / (2 * cos(phi_b))',
    },
    {
      name: 'left',
      means: 'of that, what is left beside the shim',
      quantity: 'length',
      unit: 'mm',
      formula: 'C_tooth - shim',
      why: 'A slot with this much to spare takes any belt length: where one tooth count is too short, the next still gets tight.',
    },
  ],
  results: ['C', 'span', 'C_about', 'take', 'C_tooth', 'left'],
  requires: [
    {
      given: 'z_b',
      holds: 'L_b > L_touch',
      says: 'The belt is too short for these pulleys with z_b at {z_b}: even if they touched, it would have to be {L_touch in mm} long. Take one with {z_least} teeth or more.',
    },
  ],
  cautions: [
    nearlyTouching,
    {
      when: 'dC_about > 0.0005 * C',
      says: 'The pulleys are so unlike and so close that the closed formula is off by {dC_about}. Drill for the exact distance.',
    },
    {
      when: 'shim > C_tooth',
      says: 'The shim moves the shaft further than one tooth of belt needs, which is {C_tooth}. A belt with one tooth more would do with less.',
    },
    {
      says: 'A belt draws fingers, hair and sleeves in where it meets a pulley. Take the supply off before you change a shim.',
    },
  ],
  limits: [
    {
      asks: 'Are the pulleys alike?',
      answer: 'Then the closed formula is exact, and a shim takes up twice its thickness.',
      at: { z2: '18' },
    },
    {
      asks: 'Are they very unlike and close together?',
      answer: 'Then a small angle is no longer its sine, and the closed formula puts the shafts off.',
      at: { z2: '72', z_b: '83' },
    },
    {
      asks: 'Is the shim thick?',
      answer:
        'The belt taken up is reckoned with the angle before the shim. For a shim of a few millimetres nothing is lost.',
    },
    {
      asks: 'Does the belt stretch?',
      answer:
        'Its cord gives a little under the pretension, so the shafts end up slightly further apart. This is the belt with no pull in it: start from here and tighten by the note.',
    },
  ],
});
