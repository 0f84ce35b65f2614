import { defineCalculator, withUsual } from '../calculator.ts';
import { crown, n, pile, proud, r, w } from '../givens.ts';

export const poleContact = defineCalculator({
  id: 'pole-contact',
  edition: 1,
  module: 'wheel-kinematics',
  title: 'Ball-shaped wheels at their poles',
  question:
    'A ball-shaped wheel of two free halves sometimes rests on the small roller at a pole: how often, and with what clearance?',
  given: [withUsual(r, '60 mm'), withUsual(w, '9 mm'), withUsual(crown, '8 mm'), withUsual(proud, '0.3 mm'), n, pile],
  steps: [
    {
      name: 'beta',
      means: 'half the angle of the zone at a pole',
      quantity: 'angle',
      unit: 'deg',
      formula: 'asin(w / r)',
    },
    {
      name: 'zone',
      means: 'share of axle angles in a pole zone',
      quantity: 'ratio',
      unit: '%',
      formula: '2 * beta / pi',
      why: 'A turn of the axle brings two poles down, each for twice β.',
    },
    {
      name: 'chi_free',
      means: 'angle up to which the roller reaches below a full ball',
      quantity: 'angle',
      unit: 'deg',
      formula: 'acos((r - crown) / (r - crown + proud))',
      why: 'The roller’s crown is a circle round a point near the rim. As the axle turns, it rises as a cosine.',
    },
    {
      name: 'reach_a',
      means: 'level part of the comparison of roller and shell',
      quantity: 'length',
      unit: 'mm',
      formula: 'r + proud - crown - r * cos(beta)',
    },
    {
      name: 'reach_b',
      means: 'upright part of it',
      quantity: 'length',
      unit: 'mm',
      formula: 'r * sin(beta)',
    },
    {
      name: 'chi_edge',
      means: 'angle up to which the roller reaches below the edge of the shell',
      quantity: 'angle',
      unit: 'deg',
      formula: 'acos(max(-1, -crown / sqrt(reach_a^2 + reach_b^2))) - atan2(reach_b, reach_a)',
      why: 'Inside the zone the shell ends at its edge, which comes round by the angle β − χ. Roller and edge are level where (r + p − ρ) cos χ + ρ = r cos(β − χ).',
    },
    {
      name: 'chi',
      means: 'angle either side of the pole that the roller carries',
      quantity: 'angle',
      unit: 'deg',
      formula: 'if(chi_free >= beta, chi_free, chi_edge)',
    },
    {
      name: 'carried',
      means: 'share of axle angles that a pole roller carries',
      quantity: 'ratio',
      unit: '%',
      formula: '2 * chi / pi',
    },
    {
      name: 'clear',
      means: 'clearance of the shell’s edge when the wheel stands on its pole',
      quantity: 'length',
      unit: 'mm',
      formula: 'r + proud - r * cos(beta)',
    },
    {
      name: 'over',
      means: 'how far the pile reaches above that edge (negative: it clears)',
      quantity: 'length',
      unit: 'mm',
      formula: 'pile - clear',
    },
    {
      name: 'some',
      means: 'chance that some wheel of the robot stands on a pole roller',
      quantity: 'ratio',
      unit: '%',
      formula: '1 - (1 - carried)^n',
      why: 'The wheels stop at angles that have nothing to do with one another.',
    },
  ],
  results: ['zone', 'carried', 'clear', 'some'],
  requires: [
    {
      given: 'w',
      holds: 'w < r',
      says: 'The half-width w of the zone must be less than the radius of the ball r, which is {r}.',
    },
    {
      given: 'crown',
      holds: 'crown < r',
      says: 'The crown radius must be less than the radius of the ball r, which is {r}.',
    },
  ],
  cautions: [
    {
      when: 'over > 0',
      says: 'The pile of {pile} is higher than the clearance of {clear}, so it brushes the shell’s edge and drags when the wheel stands on a pole.',
    },
    {
      says: 'A wheel that is not driven stays where it stopped. If that is on a pole, it stays there until something moves it.',
    },
  ],
  limits: [
    {
      asks: 'Is the roller flush with the ball?',
      answer: 'It still carries in the middle of the zone, where the shell has ended.',
      at: { proud: '0 mm' },
    },
    {
      asks: 'Does the roller stand far out?',
      answer: 'Then it carries beyond the zone, and the wheel rises on it at each half turn.',
      at: { proud: '3 mm' },
    },
    {
      asks: 'Does the robot keep to one heading?',
      answer: 'A driven wheel passes its poles evenly. The chance holds for a stop at a random moment.',
    },
  ],
});
