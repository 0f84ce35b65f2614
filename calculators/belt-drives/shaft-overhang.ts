import { defineCalculator, withUsual } from '../calculator.ts';
import { d, T } from '../givens.ts';
import { a1, a2, E, F1, F2, K_f, L_b, psi, S_e, S_y } from './givens.ts';

/** What two loads do together: their arrows stand at an angle to each other. */
const together = (one: string, two: string): string => `sqrt((${one} + ${two} * cos(psi))^2 + (${two} * sin(psi))^2)`;

/** What one load at one overhang does by itself. */
const momentOf = (F: string, a: string): string => `${F} * ${a}`;
const outerShareOf = (F: string, a: string): string => `${F} * (1 + ${a} / L_b)`;
const slopeUnder = (F: string, a: string): string => `${F} * ${a} * (2 * L_b + 3 * ${a}) / (6 * E * I_b)`;
const sagUnder = (F: string, a: string): string => `${F} * ${a}^2 * (L_b + ${a}) / (3 * E * I_b)`;

export const shaftOverhang = defineCalculator({
  id: 'shaft-overhang',
  edition: 1,
  module: 'belt-drives',
  title: 'Pulley and wheel on the end of an axle',
  question: 'Pulley and wheel hang off the end: will the axle bend?',
  given: [F1, a1, F2, a2, psi, L_b, d, E, withUsual(T, '2.6 N m'), S_y, S_e, K_f],
  steps: [
    {
      name: 'M1',
      means: 'bending moment of load 1 at the outer bearing',
      quantity: 'torque',
      unit: 'N m',
      formula: momentOf('F1', 'a1'),
    },
    {
      name: 'M2',
      means: 'bending moment of load 2 at the outer bearing',
      quantity: 'torque',
      unit: 'N m',
      formula: momentOf('F2', 'a2'),
    },
    {
      name: 'M_b',
      means: 'bending moment at the outer bearing',
      quantity: 'torque',
      unit: 'N m',
      formula: together('M1', 'M2'),
      why: 'Moments add like the arrows of their loads: what load 2 has along load 1 counts with it, and what it has across makes a right angle with that.',
    },
    {
      name: 'M_left',
      means: 'bending moment left at load 1',
      quantity: 'torque',
      unit: 'N m',
      formula: 'F2 * (a2 - a1)',
      why: 'Beyond load 1 only load 2 still bends the shaft.',
    },
    {
      name: 'M_max',
      means: 'largest bending moment',
      quantity: 'torque',
      unit: 'N m',
      formula: 'max(M_b, M_left)',
      why: 'It is at the outer bearing, unless the loads pull against each other: from there the moment falls to nothing at the other bearing and at the end.',
    },
    {
      name: 'R_in',
      means: 'load on the inner bearing',
      quantity: 'force',
      unit: 'N',
      formula: 'M_b / L_b',
      why: 'It holds the other end down like the far end of a seesaw. So bearings set close together are loaded hard.',
    },
    {
      name: 'P1',
      means: 'share of load 1 in the load on the outer bearing',
      quantity: 'force',
      unit: 'N',
      formula: outerShareOf('F1', 'a1'),
      why: 'It carries the load, and what the inner bearing pulls against it.',
    },
    {
      name: 'P2',
      means: 'share of load 2 in it',
      quantity: 'force',
      unit: 'N',
      formula: outerShareOf('F2', 'a2'),
    },
    {
      name: 'R_out',
      means: 'load on the outer bearing',
      quantity: 'force',
      unit: 'N',
      formula: together('P1', 'P2'),
    },
    {
      name: 'sigma_b',
      means: 'bending stress where it is bent most',
      quantity: 'pressure',
      unit: 'MPa',
      formula: '32 * M_max / (pi * d^3)',
    },
    {
      name: 'tau_s',
      means: 'shear stress from the torque',
      quantity: 'pressure',
      unit: 'MPa',
      formula: '16 * T / (pi * d^3)',
      why: 'If pulley and wheel hang off the same end, the torque runs from one to the other and not past the bearing. Counting it there is on the safe side.',
    },
    {
      name: 'sigma_v',
      means: 'both stresses in one (von Mises)',
      quantity: 'pressure',
      unit: 'MPa',
      formula: 'sqrt(sigma_b^2 + 3 * tau_s^2)',
    },
    {
      name: 'margin_y',
      means: 'margin on yield: the strength over that stress',
      quantity: 'ratio',
      unit: '',
      formula: 'S_y / sigma_v',
    },
    {
      name: 'margin_f',
      means: 'margin on fatigue: the endurance limit over the bending stress at its notch',
      quantity: 'ratio',
      unit: '',
      formula: 'S_e / (K_f * sigma_b)',
      why: 'The loads stand still and the shaft turns. Each fibre is pulled and pushed once a turn, some millions of times.',
    },
    {
      name: 'I_b',
      means: 'second moment of area of the shaft',
      quantity: 'second moment of area',
      unit: 'mm^4',
      formula: 'pi * d^4 / 64',
    },
    {
      name: 'slope_1',
      means: 'slope that load 1 alone makes at its place',
      quantity: 'angle',
      unit: 'deg',
      formula: slopeUnder('F1', 'a1'),
      why: 'Between the bearings the shaft bows and tilts in the outer bearing; beyond it, the overhang bends on its own.',
    },
    {
      name: 'sag_1',
      means: 'how far load 1 alone bends it at the place of load 2',
      quantity: 'length',
      unit: 'mm',
      formula: `${sagUnder('F1', 'a1')} + slope_1 * (a2 - a1)`,
      why: 'Beyond load 1 nothing bends the shaft on its account, so there it goes on straight at that slope.',
    },
    {
      name: 'slope_2',
      means: 'slope that load 2 alone makes at its place',
      quantity: 'angle',
      unit: 'deg',
      formula: slopeUnder('F2', 'a2'),
    },
    {
      name: 'sag_2',
      means: 'how far load 2 alone bends it there',
      quantity: 'length',
      unit: 'mm',
      formula: sagUnder('F2', 'a2'),
    },
    {
      name: 'sag',
      means: 'deflection at load 2',
      quantity: 'length',
      unit: 'mm',
      formula: together('sag_1', 'sag_2'),
    },
    {
      name: 'tilt',
      means: 'slope at load 2',
      quantity: 'angle',
      unit: 'deg',
      formula: together('slope_1', 'slope_2'),
      why: 'The wheel and its pulley lean by this angle.',
    },
  ],
  results: ['M_max', 'R_in', 'R_out', 'sigma_b', 'sigma_v', 'sag', 'tilt', 'margin_y', 'margin_f'],
  requires: [
    {
      given: 'a2',
      holds: 'a2 >= a1',
      says: 'Load 2 is the one further out: give an overhang a2 of {a1} or more, or change the two loads over.',
    },
    {
      given: 'F2',
      holds: 'M_max > 0',
      says: 'Nothing bends the shaft: give a load F2 above 0 N that hangs off by an a2 above 0 mm, and that load 1 does not cancel.',
    },
  ],
  cautions: [
    {
      when: 'margin_y < 1',
      says: 'It bends for good: {sigma_v} is more than the yield strength of {S_y}. Deflection and slope are then more than printed.',
    },
    {
      when: 'tilt > 5deg',
      says: 'Deflection and slope hold for small bends. A slope of {tilt} says no more than that this shaft is far too thin.',
    },
    {
      when: 'margin_f < 1.5',
      says: 'The margin on fatigue is {margin_f}. Such a shaft may hold for a day and break after some weeks. Make it thicker, or bring the loads nearer to the bearing.',
    },
    {
      says: 'A shaft that breaks lets a wheel go and drops a corner of the robot. Look for a crack at the shoulder or groove next to the outer bearing, and do not carry anything over people on an axle worked out with guessed strengths.',
    },
  ],
  limits: [
    {
      asks: 'Does only one load hang off?',
      answer: 'Then give the other one as zero.',
      at: { F1: '0 N' },
    },
    {
      asks: 'Is the shaft hollow, or thinner somewhere?',
      answer: 'It is taken as solid and of one diameter. Give the thinnest between the bearing and the loads.',
    },
    {
      asks: 'Are the bearings stiff?',
      answer:
        'They are taken as two stiff points that let the shaft tilt. In a printed housing they give, often more than the shaft does, and the wheel sags further.',
    },
    {
      asks: 'Does the torque wear it out too?',
      answer:
        'A steady torque hardly does. One that changes sign all day does, and then the margin on fatigue is less than printed here.',
    },
  ],
});
