import { defineCalculator } from '../calculator.ts';
import { r, h } from '../givens.ts';
import { contactAngle, heightAt, lowerThanAxle } from './edge-steps.ts';
import { W } from './givens.ts';

export const stepPush = defineCalculator({
  id: 'step-push',
  edition: 1,
  module: 'step-climbing',
  title: 'Push over an edge',
  question: 'A wheel that turns freely is pushed at a step: how hard must the push be?',
  given: [r, h, W],
  steps: [
    contactAngle,
    {
      name: 'push_W',
      means: 'push for each newton of weight',
      quantity: 'ratio',
      unit: '',
      formula: 'tan(psi)',
      why: 'About the edge, the push has the lever r cos ψ and the weight the lever r sin ψ. They balance as the wheel leaves the floor.',
    },
    { name: 'push', means: 'level push at the axle', quantity: 'force', unit: 'N', formula: 'W * push_W' },
    {
      name: 'push_min',
      means: 'the least push, square to the line from the edge to the axle',
      quantity: 'force',
      unit: 'N',
      formula: 'W * sin(psi)',
      why: 'Pushed upward at the angle ψ, the push has the whole radius for a lever.',
    },
    {
      name: 'h_weight',
      means: 'edge for which the push equals the weight',
      quantity: 'length',
      unit: 'mm',
      formula: heightAt('45deg'),
      why: 'At 45° the two levers are equal.',
    },
  ],
  results: ['psi', 'push', 'push_W', 'push_min', 'h_weight'],
  requires: [lowerThanAxle],
  cautions: [
    {
      when: 'push_W > 1',
      says: 'The push is more than the weight on the wheel. Wheels that carry about as much, and only grip by friction, cannot give it.',
    },
    { says: 'Keep fingers away from the edge and from under the robot: when the wheel comes over, it comes at once.' },
  ],
  limits: [
    { asks: 'Is there no step?', answer: 'No push.', at: { h: '0 mm' } },
    {
      asks: 'Is the wheel an omnidirectional one that meets the edge sideways?',
      answer: 'Then the roller is what climbs: give its radius q in place of r. Small rollers stop at low edges.',
      at: { r: '15 mm' },
    },
    {
      asks: 'Is the edge rounded, the tread soft?',
      answer: 'Then the contact starts lower and the push is less. This is a hard wheel at a sharp edge.',
    },
    {
      asks: 'Is the push angled down?',
      answer: 'Then part of it presses the wheel on the edge and more is needed. This is a level push.',
    },
  ],
});
