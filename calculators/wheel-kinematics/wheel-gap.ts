import { defineCalculator } from '../calculator.ts';
import { gap, gaps, r, v } from '../givens.ts';

export const wheelGap = defineCalculator({
  id: 'wheel-gap',
  edition: 1,
  module: 'wheel-kinematics',
  title: 'Gaps in the rim',
  question: 'The wheel has gaps or facets: how rough does it run?',
  given: [r, gap, gaps, v],
  steps: [
    {
      name: 'drop',
      means: 'how far the wheel drops over a gap',
      quantity: 'length',
      unit: 'mm',
      formula: 'r - sqrt(r^2 - (gap / 2)^2)',
      why: 'Half the gap, the radius and what is left of the radius make a right triangle.',
    },
    {
      name: 'drop_half',
      means: 'the same for a gap half as wide',
      quantity: 'length',
      unit: 'mm',
      formula: 'r - sqrt(r^2 - (gap / 4)^2)',
      why: 'The drop goes with the square of the gap: half as wide is a quarter as rough.',
    },
    {
      name: 'f_bump',
      means: 'how often it bumps',
      quantity: 'frequency',
      unit: 'Hz',
      formula: 'gaps * v / (2 * pi * r)',
    },
    {
      name: 'gap_share',
      means: 'share of the rim that is gap',
      quantity: 'ratio',
      unit: '%',
      formula: 'gaps * asin(gap / (2 * r)) / pi',
      why: 'Each gap takes twice the angle whose sine is half the chord over the radius.',
    },
  ],
  results: ['drop', 'drop_half', 'f_bump', 'gap_share'],
  requires: [
    {
      given: 'gap',
      holds: 'gap < 2 * r',
      says: 'The gap must be smaller than the wheel: give less than twice the wheel radius r, which is {r}.',
    },
    {
      given: 'gaps',
      holds: 'gap_share <= 1 + 1e-9',
      says: 'The gaps do not fit round the wheel: together they would take {gap_share} of the rim. Give fewer gaps, or narrower ones.',
    },
  ],
  cautions: [
    {
      when: 'drop > 0.02 * r',
      says: 'A drop of {drop} is felt and heard, and at each one the load comes on a roller’s edge.',
    },
  ],
  limits: [
    { asks: 'Is there no gap?', answer: 'No drop.', at: { gap: '0 mm' } },
    {
      asks: 'Does the wheel sink in?',
      answer: 'On carpet it bridges the gap; a soft tread fills part of it. This is a hard wheel on a hard floor.',
    },
    {
      asks: 'Do two wheels on one axle take turns?',
      answer: 'Then one carries while the other passes its gap, and the drop is less than this.',
    },
  ],
});
