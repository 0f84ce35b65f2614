import { defineCalculator } from '../calculator.ts';
import { board, F_pull, F_sled, measured, rise } from './givens.ts';

export const tiltTest = defineCalculator({
  id: 'tilt-test',
  edition: 1,
  module: 'friction',
  title: 'Friction by a tilted board',
  question: 'How well does my roller material hold on this floor?',
  given: [rise, board, measured, F_pull, F_sled],
  steps: [
    {
      name: 'l_floor',
      means: 'length on the floor under the board',
      quantity: 'length',
      unit: 'mm',
      formula: 'if(measured == 1, sqrt(board^2 - rise^2), board)',
      why: 'Board, floor and height make a right triangle, and the slope needs its level side.',
    },
    {
      name: 'mu_tilt',
      means: 'friction by the board',
      quantity: 'ratio',
      unit: '',
      formula: 'rise / l_floor',
      why: 'The part of the weight along the board has just overcome friction, and their ratio is height over level length. The weight drops out.',
    },
    {
      name: 'angle_slip',
      means: 'angle at which it slides',
      quantity: 'angle',
      unit: 'deg',
      formula: 'atan(mu_tilt)',
    },
    {
      name: 'mu_pull',
      means: 'friction by the scale',
      quantity: 'ratio',
      unit: '',
      formula: 'F_pull / F_sled',
      why: 'On a level floor the weight presses and the scale pulls.',
    },
    {
      name: 'gap_mu',
      means: 'how far the two readings lie apart',
      quantity: 'ratio',
      unit: '%',
      formula: 'abs(mu_tilt - mu_pull) / max(mu_tilt, mu_pull)',
    },
    {
      name: 'mu_low',
      means: 'the lower reading, to plan with',
      brief: true,
      quantity: 'ratio',
      unit: '',
      formula: 'min(mu_tilt, mu_pull)',
    },
    {
      name: 'mu_worst',
      means: 'what a whole robot on three locked wheels would read at its worst heading',
      quantity: 'ratio',
      unit: '',
      formula: 'mu_low / 2',
      why: 'Downhill along the drive direction of one wheel, that wheel has to hold two thirds of all with a third of the load, and it slips first. So it is with the weight low; a high one shifts load.',
    },
    {
      name: 'mu_best',
      means: 'the same at its best heading',
      quantity: 'ratio',
      unit: '',
      formula: 'mu_low / sqrt(3)',
      why: 'With a wheel straight up or down the slope the two others share the hold, each at 30° to it.',
    },
  ],
  results: ['mu_tilt', 'angle_slip', 'mu_pull', 'gap_mu', 'mu_low', 'mu_worst', 'mu_best'],
  requires: [
    {
      given: 'rise',
      holds: 'measured == 2 or board > 1.0001 * rise',
      says: 'The raised end cannot be as high as the board is long: rise is {rise} and board {board}. Give a smaller height in mm, or say that the length was measured on the floor.',
    },
  ],
  cautions: [
    {
      when: 'gap_mu > 0.2',
      says: 'The two readings are {gap_mu} apart. Repeat both: look for dust, for a pull that is not level, for a board that was knocked.',
    },
    {
      says: 'Test a sled of the roller material that cannot roll. A whole robot with locked wheels slides on its rollers and reads 42 to 50 % low.',
    },
    {
      says: 'Friction is no constant: dust, water, wear and warmth change it. Take ten readings on the real floor and plan with the lowest.',
    },
  ],
  limits: [
    {
      asks: 'Was the length measured on the floor?',
      answer: 'Then it is the level side already. The same two numbers mean less friction.',
      at: { measured: 'on the floor' },
    },
    {
      asks: 'Is the board steep?',
      answer:
        'Past 45° friction is above one. Soft rubber on a clean board does that, and then it depends on load and area as well.',
      at: { rise: '450 mm' },
    },
    {
      asks: 'Does the sled creep, or stop again?',
      answer: 'Once it slides, friction is that of sliding, which is mostly less. Read the height at which it starts.',
    },
    {
      asks: 'Does the sled tip over?',
      answer: 'Then its centre of mass is too high: make it lower and longer than it is high.',
    },
  ],
});
