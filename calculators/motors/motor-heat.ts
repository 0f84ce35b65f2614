import { defineCalculator } from '../calculator.ts';
import { I_m } from '../givens.ts';
import { R_th, R_w, tau_th, Theta_0, Theta_a, Theta_max, Theta_w } from './givens.ts';

const resistanceAt = (temperature: string): string => `R_w * (1 + alpha_c * (${temperature} - Theta_w))`;

/** The heat that the rising resistance adds, and what that adds again, all summed. */
const fedBack = (alone: string): string => `${alone} / (1 - q_hot)`;

export const motorHeat = defineCalculator({
  id: 'motor-heat',
  edition: 1,
  module: 'motors',
  title: 'Heat in a motor',
  question: 'How long may the motor hold this load?',
  given: [I_m, R_w, Theta_w, R_th, tau_th, Theta_a, Theta_max, Theta_0],
  steps: [
    {
      name: 'alpha_c',
      means: 'change of the resistance for each kelvin, as a share of what was measured',
      quantity: 'temperature coefficient',
      unit: '%/K',
      formula: '1 / (Theta_w - Theta_0)',
      why: 'The resistance of copper runs along a straight line, which would reach nothing at −234.5 °C (Federal Aviation Administration, AC 43.13-1B, paragraph 11-67). At 20 °C that is the 0.393 % of the annealed copper standard.',
    },
    {
      name: 'R_a',
      means: 'resistance of the winding at the temperature of the air',
      quantity: 'resistance',
      unit: 'ohm',
      formula: resistanceAt('Theta_a'),
    },
    {
      name: 'P_a',
      means: 'heat in the winding at the start',
      quantity: 'power',
      unit: 'W',
      formula: 'I_m^2 * R_a',
    },
    {
      name: 'dTheta_cold',
      means: 'how much warmer it would get if the resistance stayed',
      quantity: 'temperature difference',
      unit: 'K',
      formula: 'R_th * P_a',
      why: 'The motor warms until it sheds as much heat as it makes. Each watt takes this many kelvin to be shed.',
    },
    {
      name: 'q_hot',
      means: 'share of each kelvin that comes back as more heat',
      quantity: 'ratio',
      unit: '%',
      formula: 'R_th * I_m^2 * R_w * alpha_c',
      why: 'One kelvin more adds this much resistance, and the heat of that resistance warms it by this share of a kelvin again.',
    },
    {
      name: 'dTheta_end',
      means: 'how much warmer it gets in the end',
      quantity: 'temperature difference',
      unit: 'K',
      formula: fedBack('dTheta_cold'),
      why: 'A share of a share of a share: the sum of them all is one over what is missing to one. At a share of one there is no end.',
    },
    {
      name: 'Theta_end',
      means: 'end temperature of the winding',
      quantity: 'Celsius temperature',
      unit: 'degC',
      formula: 'Theta_a + dTheta_end',
    },
    {
      name: 'tau_hot',
      means: 'time constant with the resistance rising',
      quantity: 'time',
      unit: 'min',
      formula: fedBack('tau_th'),
      why: 'The end is further off, but the start is as quick as before, so it takes longer.',
    },
    {
      name: 'dTheta_lim',
      means: 'how much warmer it may get',
      quantity: 'temperature difference',
      unit: 'K',
      formula: 'Theta_max - Theta_a',
    },
    {
      name: 'left',
      means: 'share of the way still to go when it gets to its limit, or one thousandth',
      quantity: 'ratio',
      unit: '',
      formula: 'max(0.001, 1 - dTheta_lim / dTheta_end)',
    },
    {
      name: 't_hold',
      means: 'time to the limit, or to 99.9 % of the rise if it ends below the limit',
      quantity: 'time',
      unit: 'min',
      formula: '-tau_hot * ln(left)',
      why: 'What is left to go shrinks by the same share in each equal time.',
    },
    {
      name: 'R_lim',
      means: 'resistance of the winding at its limit',
      quantity: 'resistance',
      unit: 'ohm',
      formula: resistanceAt('Theta_max'),
    },
    {
      name: 'I_hold',
      means: 'current it may hold for ever',
      quantity: 'current',
      unit: 'A',
      formula: 'sqrt(dTheta_lim / (R_th * R_lim))',
      why: 'At this current it sheds at its limit what it makes there.',
    },
    {
      name: 'I_away',
      means: 'current from which on it has no end temperature',
      quantity: 'current',
      unit: 'A',
      formula: '1 / sqrt(R_th * R_w * alpha_c)',
      why: 'Here each kelvin brings a whole kelvin after it.',
    },
  ],
  results: ['Theta_end', 't_hold', 'I_hold', 'I_away'],
  requires: [
    {
      given: 'Theta_max',
      holds: 'Theta_max > Theta_a',
      says: 'The limit must be above the temperature of the air, which is {Theta_a}.',
    },
    {
      given: 'I_m',
      holds: 'q_hot < 1 or q_hot > 1',
      says: 'At this current the winding has no end temperature: each kelvin brings another one after it. It may hold {I_hold} for ever.',
    },
    {
      given: 'I_m',
      holds: 'q_hot < 1',
      says: 'At {I_m} the winding has no end temperature: each kelvin brings more than one kelvin after it, and so on until it burns. It passes its limit after {t_hold in s}, or sooner, since the wire alone warms faster than the whole motor. From {I_away} on this is so; it may hold {I_hold} for ever.',
    },
  ],
  cautions: [
    {
      when: 'Theta_end <= Theta_max',
      says: 'It ends below its limit, so it may hold this current for ever.',
    },
    {
      when: 'Theta_end > Theta_max',
      says: 'It must not hold this current for ever: from cold, it passes its limit after {t_hold}. {I_hold} is what it may hold.',
    },
    {
      when: 't_hold < 0.2 * tau_th',
      says: 'So short a burst stays in the wire. The winding alone warms many times faster than the whole motor: take its own time constant, if you know it, or a small part of this time.',
    },
    {
      says: 'A motor case can burn fingers long before its winding is in danger, and grease, glue and printed plastic around it give way sooner. Let it cool before you touch it, and follow its maker’s limit.',
    },
  ],
  limits: [
    { asks: 'Is there no current?', answer: 'It stays as warm as the air.', at: { I_m: '0 A' } },
    {
      asks: 'Is the motor held still?',
      answer: 'Then the current is the stall current, far beyond what it can shed.',
      at: { I_m: '5.1 A' },
    },
    {
      asks: 'Is it warm already?',
      answer: 'The time is from cold. A motor that has been working has less of it left.',
    },
    {
      asks: 'Does the load come and go?',
      answer:
        'If it comes and goes much faster than the time constant, take the root of the mean square of the current.',
    },
    {
      asks: 'Is the heat only in the winding?',
      answer: 'Brushes, gears and iron add some. The winding’s is the part that a load brings.',
    },
    {
      asks: 'Does air blow over it?',
      answer:
        'Then it sheds more and the thermal resistance is smaller. Inside a closed shell it is larger, and the air around it is the air in there.',
    },
  ],
});
