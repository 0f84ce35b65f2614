import { defineCalculator } from '../calculator.ts';
import { C, p, z1, z2 } from '../givens.ts';
import { F_a, pre, service, T_1 } from './givens.ts';
import { apart, pitchCircles } from './pitch-circles.ts';
import { spanAngle, teethInMesh } from './span-steps.ts';

export const beltTension = defineCalculator({
  id: 'belt-tension',
  edition: 1,
  module: 'belt-drives',
  title: 'Belt pulls and the load on the shaft',
  question: 'How tight must the belt be, and what does the shaft feel?',
  given: [T_1, p, z1, z2, C, pre, F_a, service],
  steps: [
    ...pitchCircles,
    spanAngle,
    {
      name: 'F_u',
      means: 'pull that the torque needs',
      quantity: 'force',
      unit: 'N',
      formula: '2 * T_1 / D1',
      why: 'The torque is this pull times the radius of the pulley.',
    },
    {
      name: 'F_0',
      means: 'pretension: pull of each span at rest',
      quantity: 'force',
      unit: 'N',
      formula: 'pre * F_u',
    },
    {
      name: 'F_t',
      means: 'pull of the tight side under this torque',
      quantity: 'force',
      unit: 'N',
      formula: 'max(F_0 + F_u / 2, F_u)',
      why: 'One span gains what the other loses, so each changes by half the pull. A span that has lost all it had has no more to lose, and then the tight side carries the whole pull.',
    },
    {
      name: 'F_s',
      means: 'pull of the slack side',
      quantity: 'force',
      unit: 'N',
      formula: 'max(F_0 - F_u / 2, 0)',
      why: 'A belt cannot push.',
    },
    {
      name: 'F_along',
      means: 'shaft load along the line of shafts',
      quantity: 'force',
      unit: 'N',
      formula: '(F_t + F_s) * cos(phi_b)',
    },
    {
      name: 'F_across',
      means: 'shaft load across it, towards the tight side',
      quantity: 'force',
      unit: 'N',
      formula: '(F_t - F_s) * sin(phi_b)',
      why: 'Across the line the two pulls work against each other. On pulley 2 it points the other way.',
    },
    {
      name: 'F_shaft',
      means: 'shaft load under this torque',
      quantity: 'force',
      unit: 'N',
      formula: 'sqrt(F_t^2 + F_s^2 + 2 * F_t * F_s * cos(2 * phi_b))',
      why: 'The law of cosines for two pulls with twice that angle between them. Both shafts feel it, in opposite directions.',
    },
    {
      name: 'lean',
      means: 'its direction at pulley 1, from the line of shafts towards the tight side',
      quantity: 'angle',
      unit: 'deg',
      formula: 'atan2(F_across, F_along)',
    },
    {
      name: 'F_rest',
      means: 'shaft load at rest',
      quantity: 'force',
      unit: 'N',
      formula: '2 * F_0 * cos(phi_b)',
    },
    teethInMesh('(180deg - 2 * abs(phi_b))'),
    {
      name: 'k_mesh',
      means: 'share of the allowed pull with so many teeth',
      quantity: 'ratio',
      unit: '%',
      formula: 'max(0, min(1, 1 - 0.2 * (6 - floor(z_mesh))))',
      why: 'Each whole tooth fewer than six costs a fifth. Common practice, no source; some makers take off more.',
    },
    {
      name: 'margin_b',
      means: 'margin of the belt: allowed pull over the pull with its service factor',
      quantity: 'ratio',
      unit: '',
      formula: 'k_mesh * F_a / (service * F_u)',
    },
  ],
  results: ['F_u', 'F_0', 'F_t', 'F_s', 'F_shaft', 'lean', 'F_rest', 'z_mesh', 'margin_b'],
  requires: [apart],
  cautions: [
    {
      when: 'pre < 0.5',
      says: 'The slack side hangs loose under this torque, so a tooth can climb and jump. From half the pull on, a span stays taut.',
    },
    {
      when: 'pre > 1',
      says: 'The pretension is more than the pull itself. Teeth do not need that, and shaft and bearings feel {F_rest} even at rest.',
    },
    {
      when: 'floor(z_mesh) < 6',
      says: 'Only {z_mesh} teeth are in mesh on the smaller pulley. Fewer than six lower the allowed pull, here to {k_mesh} of what the maker names.',
    },
    {
      when: 'margin_b < 1',
      says: 'The belt is too weak for this torque: with its service factor the pull is more than the belt allows. Take a wider belt or a larger pulley.',
    },
    {
      says: 'A belt draws fingers, hair and sleeves in where it meets the pulley. Take the supply off before you reach for it, and put a cover over it.',
    },
  ],
  limits: [
    {
      asks: 'Are the pulleys alike?',
      answer: 'Then the pulls are parallel, and the shaft feels their sum.',
      at: { z2: '18' },
    },
    {
      asks: 'Is the belt mounted loose?',
      answer: 'The tight side carries the pull and the slack side nothing, so the shaft load is the pull itself.',
      at: { pre: '0.3' },
    },
    {
      asks: 'Does the cord of the belt hold as well?',
      answer:
        'The margin is that of the teeth, which pass on the pull. The cord carries the whole tight side. Makers choose it so that the teeth give way first, as long as the pretension is not far above the pull. Common practice, no source.',
    },
    {
      asks: 'Does the motor reverse at speed?',
      answer:
        'The rotor’s inertia then adds to the stall torque, and tight and slack side change places. A blow against a stop is not in here either.',
    },
    {
      asks: 'Does the belt run fast?',
      answer:
        'Going round the pulleys, a fast belt pulls on itself. At the speeds of a small robot this is far below one newton.',
    },
    {
      asks: 'Does one span get all of the other’s loss?',
      answer:
        'It does if both stretch alike and the shafts do not give. A shaft that bends or a printed frame that yields lowers both pulls.',
    },
  ],
});
