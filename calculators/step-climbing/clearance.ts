import { defineCalculator } from '../calculator.ts';
import { r, h } from '../givens.ts';
import { lowerThanAxle, reachToEdge } from './edge-steps.ts';
import { base, overhang, under } from './givens.ts';

export const clearance = defineCalculator({
  id: 'clearance',
  edition: 1,
  module: 'step-climbing',
  title: 'What touches before a wheel does',
  question: 'Does the body hit the step, the ramp or the crest before a wheel does?',
  given: [r, h, under, overhang, base],
  steps: [
    reachToEdge,
    {
      name: 'spare_edge',
      means: 'how much farther the wheel reaches than the body at the height of the edge',
      quantity: 'length',
      unit: 'mm',
      formula: 'if(under >= h, reach_edge, reach_edge - overhang)',
      why: 'A body higher than the edge passes over it; a lower one must reach out less than the wheel.',
    },
    {
      name: 'D_front',
      means: 'axle to the front lower corner of the body',
      quantity: 'length',
      unit: 'mm',
      formula: 'sqrt(overhang^2 + (r - under)^2)',
    },
    {
      name: 't_front',
      means: 'corner to where a line from it touches the wheel',
      quantity: 'length',
      unit: 'mm',
      formula: 'sqrt(max(D_front^2 - r^2, 0))',
      why: 'A tangent is square to the radius at which it touches, so Pythagoras gives it. Nothing is left where the corner is inside the wheel.',
    },
    {
      name: 'approach',
      means: 'steepest ramp it can start up',
      quantity: 'angle',
      unit: 'deg',
      formula: 'min(atan2(r, t_front) - atan2(r - under, overhang), 90deg)',
      why: 'The tangent is the ramp that corner and wheel touch at once: its angle from the line to the axle, less that of this line from the level.',
    },
    {
      name: 'D_middle',
      means: 'axle to the lowest point of the body half-way between the wheels',
      quantity: 'length',
      unit: 'mm',
      formula: 'sqrt((base / 2)^2 + (r - under)^2)',
    },
    {
      name: 't_middle',
      means: 'that point to where a line from it touches the wheel',
      quantity: 'length',
      unit: 'mm',
      formula: 'sqrt(max(D_middle^2 - r^2, 0))',
    },
    {
      name: 'breakover',
      means: 'sharpest crest it can cross, as the change of slope',
      quantity: 'angle',
      unit: 'deg',
      formula: '2 * min(atan2(r, t_middle) - atan2(r - under, base / 2), 90deg)',
      why: 'The same tangent from the middle of the body to the wheel on each side.',
    },
  ],
  results: ['approach', 'breakover', 'spare_edge', 'reach_edge'],
  requires: [
    lowerThanAxle,
    {
      given: 'under',
      holds: 'under < 2 * r',
      says: 'The body hangs between the wheels here: give a clear height less than twice the wheel radius r, which is {r}.',
    },
  ],
  cautions: [
    { when: 'spare_edge <= 0', says: 'The body meets the edge before the wheel does: nothing climbs.' },
    { when: 'under < h', says: 'The edge is higher than the clear height: once over it, the body comes down on it.' },
    {
      when: 'D_front <= r',
      says: 'The corner of the body is inside the wheel: whatever the ramp, the wheel touches it first.',
    },
  ],
  limits: [
    {
      asks: 'Does nothing reach out past the axle?',
      answer: 'Then the wheel is always first.',
      at: { overhang: '0 mm' },
    },
    {
      asks: 'Does the carpet have a pile?',
      answer: 'The wheels sink in: take the depth off the clear height first.',
      at: { under: '22 mm' },
    },
    { asks: 'Does the robot tilt or squat?', answer: 'Then it has less. This is a stiff, level robot.' },
  ],
});
