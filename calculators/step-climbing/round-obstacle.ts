import { defineCalculator } from '../calculator.ts';
import { mu, r } from '../givens.ts';
import { gripForContact, heightAt, levelPush, steepestContact } from './edge-steps.ts';
import { d_c, H, W } from './givens.ts';

export const roundObstacle = defineCalculator({
  id: 'round-obstacle',
  edition: 1,
  module: 'step-climbing',
  title: 'Over a cable or hose',
  question: 'A cable or a hose lies on the floor: does the wheel roll over it, or push it along?',
  given: [r, d_c, W, H, mu],
  steps: [
    {
      name: 'psi',
      means: 'contact angle, from the bottom of the wheel',
      quantity: 'angle',
      unit: 'deg',
      formula: 'acos((r - d_c / 2) / (r + d_c / 2))',
      why: 'The two centres are r + d/2 apart and r − d/2 apart in height.',
    },
    {
      name: 'h_same',
      means: 'square step that is as hard',
      quantity: 'length',
      unit: 'mm',
      formula: heightAt('psi'),
    },
    {
      ...levelPush,
      why: 'As at a step: the force of the cable passes through the axle.',
    },
    {
      ...gripForContact,
      means: 'grip that a driven wheel needs on a cable that is held',
      why: 'The force on the wheel leans by ψ from the normal, less by what the push gives.',
    },
    steepestContact,
    {
      name: 'd_held',
      means: 'thickest held cable it can climb',
      quantity: 'length',
      unit: 'mm',
      formula: '2 * r * tan(psi_most / 2)^2',
      why: 'Solve the contact angle for the diameter.',
    },
    {
      name: 'd_loose',
      means: 'thickest loose cable it nips instead of pushing along',
      quantity: 'length',
      unit: 'mm',
      formula: '2 * r * min(mu, 1)^2',
      why: 'A loose cable is held between wheel and floor only if both grip it: each force leans by ψ/2 from its normal, and tan(ψ/2) may be μ at most.',
    },
    {
      name: 'push_loose',
      means: 'level push for a wheel that stands on a loose cable it has nipped',
      quantity: 'force',
      unit: 'N',
      formula: 'W * tan(psi / 2)',
      why: 'A loose cable passes on only a force along the line through its two contacts, which leans back by ψ/2. The other wheels must hold against that, however well the motor pulls.',
    },
  ],
  results: ['psi', 'grip_used', 'd_held', 'd_loose', 'push', 'push_loose', 'h_same'],
  requires: [
    {
      given: 'd_c',
      holds: 'd_c < 2 * r',
      says: 'The middle of the cable must be lower than the axle: give less than twice the wheel radius r, which is {r}. No level push lifts a wheel over more.',
    },
  ],
  cautions: [
    {
      when: 'd_c > d_held',
      says: 'Even if it is held, the wheel does not climb it: it would need a grip of {grip_used}, and there is {mu}.',
    },
    {
      when: 'd_c > d_loose',
      says: 'Left loose it is pushed along in front of the wheel, and may wind up there.',
    },
    {
      when: 'if(d_c <= d_loose, H < push_loose, 0)',
      says: 'Loose, it is nipped but not climbed: the other wheels would have to push with {push_loose}, and they push with {H}.',
    },
    { says: 'Never drive over a mains cable. Lay it elsewhere, or under a cable bridge made for it.' },
  ],
  limits: [
    {
      asks: 'Is the hose soft?',
      answer: 'It flattens and is easier than this. This is a hard, round cable.',
    },
    {
      asks: 'Do the rollers meet it sideways?',
      answer: 'Then give the roller radius q in place of r.',
      at: { r: '15 mm' },
    },
    { asks: 'Is the cable very thin?', answer: 'Then next to nothing is needed.', at: { d_c: '0.1 mm' } },
  ],
});
