import { defineCalculator } from '../calculator.ts';
import { mu, r, h } from '../givens.ts';
import { contactAngle, contactMost, heightAt, lowerThanAxle, steepestContact } from './edge-steps.ts';
import { H, W } from './givens.ts';

export const stepClimb = defineCalculator({
  id: 'step-climb',
  edition: 1,
  module: 'step-climbing',
  title: 'Grip at an edge',
  question: 'A driven wheel stands at a step and is pushed as well: does it climb?',
  given: [r, h, W, H, mu],
  steps: [
    contactAngle,
    {
      name: 'f_drive',
      means: 'drive force needed along the rim',
      quantity: 'force',
      unit: 'N',
      formula: 'W * sin(psi) - H * cos(psi)',
      why: 'Along the rim at the edge: the weight pulls back by its part W sin ψ, the push helps by H cos ψ.',
    },
    {
      name: 'normal',
      means: 'force with which the edge presses on the wheel',
      quantity: 'force',
      unit: 'N',
      formula: 'W * cos(psi) + H * sin(psi)',
    },
    {
      name: 'grip_used',
      means: 'grip needed, as a coefficient of friction',
      quantity: 'ratio',
      unit: '',
      formula: 'max(f_drive, 0) / normal',
      why: 'Friction must be this share of the force at the edge.',
    },
    {
      name: 'margin_grip',
      means: 'grip there is, less the grip needed',
      quantity: 'ratio',
      unit: '',
      formula: 'mu - grip_used',
    },
    {
      name: 'T_edge',
      means: 'torque the wheel needs',
      quantity: 'torque',
      unit: 'N m',
      formula: 'r * max(f_drive, 0)',
    },
    {
      ...steepestContact,
      formula: contactMost,
      why: 'The force of the edge may lean by the angle of friction from its normal; weight and push together lean by atan(H/W).',
    },
    {
      name: 'h_most',
      means: 'highest edge it can climb',
      quantity: 'length',
      unit: 'mm',
      formula: heightAt('min(psi_most, 90deg)'),
      why: 'From 90° on the edge is as high as the axle, and the wheel climbs a wall.',
    },
    { name: 'climbs', means: 'does it climb: 1 yes, 0 no', quantity: 'count', unit: '', formula: 'grip_used <= mu' },
  ],
  results: ['h_most', 'grip_used', 'margin_grip', 'T_edge', 'psi', 'climbs'],
  requires: [lowerThanAxle],
  cautions: [
    { when: 'margin_grip < 0', says: 'It does not climb {h}: it would need a grip of {grip_used}, and there is {mu}.' },
    {
      when: 'H * mu >= W',
      says: 'The push is so strong that the wheel would climb a wall. Check that the other wheels can give it without slipping.',
    },
    {
      when: 'f_drive < 0',
      says: 'The push alone lifts the wheel over; its motor need not help.',
    },
    { says: 'A robot that climbs can tip back or drop. Try it low, with nobody below it.' },
  ],
  limits: [
    {
      asks: 'Does nothing push?',
      answer: 'Then the grip alone decides: the contact angle may be the angle of friction and no more.',
      at: { H: '0 N' },
    },
    {
      asks: 'Is the tread printed plastic?',
      answer: 'Measure the grip of the tread on the edge itself with a tilted board: tables spread widely.',
      at: { mu: '0.3' },
    },
    {
      asks: 'Does the push change the weight on the wheel?',
      answer: 'In a whole robot it does: driving takes load off the wheels in front. Give W with that in it.',
    },
  ],
});
