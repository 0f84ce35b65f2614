import { defineCalculator } from '../calculator.ts';
import { alpha, dead, full, least, n, stick_turn, stick_x, stick_y } from '../givens.ts';
import { rimSpeedFor } from './rim-steps.ts';
import { wheelAngle, wheelNumber } from './wheel-steps.ts';

export const mixAndLimit = defineCalculator({
  id: 'mix-and-limit',
  edition: 1,
  module: 'wheel-kinematics',
  title: 'Sticks to motor commands',
  question: 'I push the sticks: what does each motor get, and how do I keep the direction when it is too much?',
  given: [stick_x, stick_y, stick_turn, dead, least, full, n, alpha],
  steps: [
    {
      name: 'push',
      means: 'how far the travel stick is pushed',
      quantity: 'ratio',
      unit: '',
      formula: 'sqrt(stick_x^2 + stick_y^2)',
    },
    {
      name: 'k_stick',
      means: 'factor that takes out the dead band',
      quantity: 'ratio',
      unit: '',
      formula: 'if(push <= dead, 0, min(1, (push - dead) / (1 - dead)) / push)',
      why: 'One factor for both axes leaves the direction alone. Just outside the dead band it starts from nothing, so the robot does not jump, and a stick in a corner counts as fully pushed.',
    },
    {
      name: 'want_x',
      means: 'travel asked for straight ahead',
      quantity: 'ratio',
      unit: '',
      formula: 'k_stick * stick_x',
    },
    {
      name: 'want_y',
      means: 'travel asked for to the left',
      quantity: 'ratio',
      unit: '',
      formula: 'k_stick * stick_y',
    },
    {
      name: 'want_turn',
      means: 'turning asked for',
      quantity: 'ratio',
      unit: '',
      formula: 'if(abs(stick_turn) <= dead, 0, sign(stick_turn) * (abs(stick_turn) - dead) / (1 - dead))',
      why: 'The same dead band on one axis.',
    },
    wheelNumber,
    wheelAngle,
    {
      name: 'mix',
      means: 'what each wheel would get without a limit',
      quantity: 'ratio',
      unit: '',
      formula: rimSpeedFor('want_x', 'want_y', 'want_turn'),
      why: 'The equation of a wheel with the sticks in place of speeds: its share of the travel, plus the turning.',
    },
    {
      name: 'mix_abs',
      means: 'size of each',
      brief: true,
      quantity: 'ratio',
      unit: '',
      formula: 'abs(mix)',
    },
    { name: 'mix_top', means: 'the largest', brief: true, quantity: 'ratio', unit: '', formula: 'max(mix_abs)' },
    {
      name: 'k_limit',
      means: 'factor that brings the largest down to full',
      quantity: 'ratio',
      unit: '',
      formula: '1 / max(1, mix_top)',
      why: 'All wheels are scaled together. Cutting only the one that is too fast would change their proportions, and so the direction.',
    },
    {
      name: 'command',
      means: 'signed command of each wheel',
      quantity: 'ratio',
      unit: '',
      formula: 'k_limit * mix',
    },
    {
      name: 'give_x',
      means: 'travel given straight ahead',
      brief: true,
      quantity: 'ratio',
      unit: '',
      formula: 'k_limit * want_x',
    },
    {
      name: 'give_y',
      means: 'travel given to the left',
      brief: true,
      quantity: 'ratio',
      unit: '',
      formula: 'k_limit * want_y',
    },
    {
      name: 'give_turn',
      means: 'turning given',
      brief: true,
      quantity: 'ratio',
      unit: '',
      formula: 'k_limit * want_turn',
    },
    {
      name: 'direction',
      means: 'direction bit, 1 for counter-clockwise',
      brief: true,
      quantity: 'count',
      unit: '',
      formula: 'if(command < 0, 0, 1)',
    },
    {
      name: 'duty',
      means: 'duty of each motor',
      quantity: 'ratio',
      unit: '%',
      formula: 'if(command == 0, 0, least + (1 - least) * abs(command))',
      why: 'Below the least duty a motor only hums. Starting above it makes speed follow the command from the first bit of stick.',
    },
    {
      name: 'level',
      means: 'count for the timer',
      quantity: 'count',
      unit: '',
      formula: 'round(full * duty)',
    },
  ],
  results: ['command', 'direction', 'duty', 'level', 'k_limit'],
  cautions: [
    {
      when: 'mix_top > 1',
      says: 'The sticks ask for more than the wheels have, so everything is scaled to {k_limit in %}: the direction stays, the speed does not.',
    },
    {
      when: 'mix_top == 0',
      says: 'Both sticks are inside the dead band: every motor is off.',
    },
    {
      says: 'When the radio or the program stops, the last command goes on. Let the motors stop by themselves when no new command has come for a fraction of a second.',
    },
  ],
  limits: [
    {
      asks: 'Is the stick at rest?',
      answer: 'All motors are off, whatever the least duty.',
      at: { stick_x: '0', stick_y: '0', stick_turn: '0' },
    },
    {
      asks: 'Is everything asked for at once?',
      answer: 'The commands are scaled together.',
      at: { stick_x: '1', stick_y: '1', stick_turn: '1' },
    },
    {
      asks: 'Is the speed of a motor proportional to its duty?',
      answer:
        'Above the least duty it is taken to be. Under load it is not, and a speed control with encoders then does better.',
    },
  ],
});
