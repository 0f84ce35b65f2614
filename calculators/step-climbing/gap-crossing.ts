import { defineCalculator } from '../calculator.ts';
import { mu, r } from '../givens.ts';
import { gripForContact, heightAt, levelPush, steepestContact } from './edge-steps.ts';
import { H, W, width } from './givens.ts';

export const gapCrossing = defineCalculator({
  id: 'gap-crossing',
  edition: 1,
  module: 'step-climbing',
  title: 'Over a gap in the floor',
  question: 'A drain or a joint lies across the way: does the wheel get over it?',
  given: [r, width, W, H, mu],
  steps: [
    {
      name: 'psi',
      means: 'contact angle at the far edge',
      quantity: 'angle',
      unit: 'deg',
      formula: 'asin(width / (2 * r))',
      why: 'The wheel hangs between the two edges: half the gap over the radius is the sine.',
    },
    {
      name: 'sink',
      means: 'how far the wheel sinks in',
      quantity: 'length',
      unit: 'mm',
      formula: heightAt('psi'),
      why: 'It leaves the gap as it would climb a step of this height.',
    },
    levelPush,
    gripForContact,
    steepestContact,
    {
      name: 'width_most',
      means: 'widest gap it can leave',
      quantity: 'length',
      unit: 'mm',
      formula: '2 * r * sin(psi_most)',
    },
  ],
  results: ['psi', 'sink', 'grip_used', 'width_most', 'push'],
  requires: [
    {
      given: 'width',
      holds: 'width < 2 * r',
      says: 'The wheel falls in: give a gap narrower than twice the wheel radius r, which is {r}.',
    },
  ],
  cautions: [
    {
      when: 'width > width_most',
      says: 'It does not get out of the gap: it would need a grip of {grip_used}, and there is {mu}.',
    },
  ],
  limits: [
    {
      asks: 'Does it cross at an angle?',
      answer: 'Then the gap it meets is wider along the way, but a ball-shaped wheel still sees its true width.',
    },
    {
      asks: 'Do the rollers meet it sideways?',
      answer: 'Then give the roller radius q in place of r: a gap of twice that swallows a roller.',
      at: { r: '15 mm' },
    },
    {
      asks: 'Is the gap shallow?',
      answer:
        'If it is less deep than the wheel sinks in, the wheel stands on its floor: take its depth as the height of a step.',
    },
    { asks: 'Is it as narrow as a joint?', answer: 'Then the wheel hardly feels it.', at: { width: '2 mm' } },
  ],
});
