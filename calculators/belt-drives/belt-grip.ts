import { defineCalculator, withUsual } from '../calculator.ts';
import { mu } from '../givens.ts';
import { F_s, F_t, wrap } from './givens.ts';

export const beltGrip = defineCalculator({
  id: 'belt-grip',
  edition: 1,
  module: 'belt-drives',
  title: 'Grip of a smooth belt or a rope',
  question: 'What would a belt without teeth hold, or a rope round a post?',
  given: [wrap, withUsual(mu, '0.3'), F_s, F_t],
  steps: [
    {
      name: 'k_grip',
      means: 'most that the pull can grow by round the bend',
      quantity: 'ratio',
      unit: '',
      formula: 'exp(mu * wrap)',
      why: 'Each bit of arc presses with the pull it carries, so it adds a share of it. Shares of shares grow as an exponential, and the radius does not matter.',
    },
    {
      name: 'F_held',
      means: 'most pull on the tight side before it slips',
      quantity: 'force',
      unit: 'N',
      formula: 'F_s * k_grip',
    },
    {
      name: 'F_grip',
      means: 'what is left to turn the pulley',
      quantity: 'force',
      unit: 'N',
      formula: 'F_held - F_s',
    },
    {
      name: 'F_s_need',
      means: 'pull that the slack side would need for the pull wanted',
      quantity: 'force',
      unit: 'N',
      formula: 'F_t / k_grip',
    },
    {
      name: 'wrap_need',
      means: 'angle it would have to go round instead',
      quantity: 'angle',
      unit: 'deg',
      formula: 'max(0, ln(F_t / F_s) / mu)',
      why: 'The same law the other way round.',
    },
    {
      name: 'pre_smooth',
      means: 'pretension a smooth belt needs, as a share of the pull it passes on',
      quantity: 'ratio',
      unit: '',
      formula: '(k_grip + 1) / (2 * (k_grip - 1))',
      why: 'The pretension is the mean of both sides, the pull passed on their difference. With teeth a little over one half does.',
    },
  ],
  results: ['k_grip', 'F_held', 'F_grip', 'F_s_need', 'wrap_need', 'pre_smooth'],
  cautions: [
    {
      when: 'F_held < F_t',
      says: 'It slips: the tight side holds {F_held} and not the {F_t} wanted. It would have to go round {wrap_need}, or the slack side pull {F_s_need}.',
    },
    {
      says: 'Never hold a load over people by a rope round a post, and keep fingers out of the turns. A wet, icy or waxed rope has a small part of the friction of a dry one.',
    },
  ],
  limits: [
    {
      asks: 'Is it a rope round a post?',
      answer: 'The law is the same. A few turns hold nearly anything.',
      at: { wrap: '3 turn', F_s: '10 N', F_t: '1000 N' },
    },
    {
      asks: 'Is it a V-belt?',
      answer: 'It wedges in its groove and grips as if the friction were two to three times as high.',
    },
    {
      asks: 'Is the belt stiff, or does it run fast?',
      answer: 'A stiff one does not hug a small pulley, and a fast one lifts off it. Both lose grip.',
    },
    {
      asks: 'Which pulley slips?',
      answer: 'The one with the smaller wrap. With pulleys of one material that is the smaller pulley.',
    },
  ],
});
