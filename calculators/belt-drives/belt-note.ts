import { defineCalculator } from '../calculator.ts';
import { F_want, f, m_l, span } from './givens.ts';

export const beltNote = defineCalculator({
  id: 'belt-note',
  edition: 1,
  module: 'belt-drives',
  title: 'The note of a belt span',
  question: 'I pluck the belt and hear a note: is that the right tension?',
  given: [span, m_l, f, F_want],
  steps: [
    {
      name: 'v_wave',
      means: 'how fast a wave runs along the span',
      quantity: 'velocity',
      unit: 'm/s',
      formula: '2 * span * f',
      why: 'In the lowest note the wave goes there and back once in each swing.',
    },
    {
      name: 'F_0',
      means: 'pretension: pull of the span at rest',
      quantity: 'force',
      unit: 'N',
      formula: 'm_l * v_wave^2',
      why: 'Pull over mass for each length is the square of the speed of a wave: tighter is faster, heavier slower. Put in the speed, and it is 4 m f² times the span squared.',
    },
    {
      name: 'F_octave',
      means: 'the pull if what you heard was the octave',
      quantity: 'force',
      unit: 'N',
      formula: 'F_0 / 4',
      why: 'The octave has twice the frequency, and the pull goes with its square.',
    },
    {
      name: 'F_share',
      means: 'pull of the span, as a share of the one wanted',
      quantity: 'ratio',
      unit: '%',
      formula: 'F_0 / F_want',
    },
    {
      name: 'f_want',
      means: 'note of the tension wanted',
      quantity: 'frequency',
      unit: 'Hz',
      formula: 'sqrt(F_want / m_l) / (2 * span)',
    },
  ],
  results: ['F_0', 'F_share', 'f_want', 'F_octave'],
  cautions: [
    {
      when: 'F_share > 2',
      says: 'The pull read is {F_share} of the one wanted. Before you slacken the belt, listen again for a lower note: if you heard the octave, the pull is {F_octave}.',
    },
    {
      when: 'F_share < 0.5',
      says: 'The pull read is {F_share} of the one wanted. The belt is slack, or what you hear is not the belt but the frame or the plate it hangs on.',
    },
    {
      says: 'Pluck with the supply off. A motor that starts takes the finger along to where the belt meets the pulley.',
    },
  ],
  limits: [
    {
      asks: 'Is the span short and the belt thick?',
      answer:
        'Then the belt resists bending and sounds higher than a string would, so the pull read is too large. From some twenty thicknesses of belt on it is small. Common practice, no source.',
    },
    {
      asks: 'Is the belt running?',
      answer: 'This is for a belt at rest, with no torque on either pulley: both spans then have the same pull.',
    },
    {
      asks: 'Did you touch the span?',
      answer: 'A finger or a microphone that touches it shortens it and raises the note.',
    },
    { asks: 'Is the note an octave lower?', answer: 'A quarter of the pull.', at: { f: '70 Hz' } },
  ],
});
