import { defineCalculator, withUsual } from '../calculator.ts';
import { eta, I_0, I_s, omega_0, ratio_b, T, T_s, V, V_rated } from '../givens.ts';

export const motorPoint = defineCalculator({
  id: 'motor-point',
  edition: 1,
  module: 'motors',
  title: 'Working point of a motor',
  question: 'What does this geared motor do at this voltage, with this torque on the wheel’s shaft?',
  given: [V_rated, omega_0, I_0, T_s, I_s, V, ratio_b, eta, withUsual(T, '0.64 N m')],
  steps: [
    {
      name: 'R_m',
      means: 'resistance of the motor',
      quantity: 'resistance',
      unit: 'ohm',
      formula: 'V_rated / I_s',
      why: 'Held still, a motor is nothing but a length of wire, so the stall current tells its resistance.',
    },
    {
      name: 'V_0',
      means: 'voltage that its own friction takes',
      quantity: 'voltage',
      unit: 'V',
      formula: 'I_0 * R_m',
      why: 'With no load the current turns only brushes, bearings and gears, and it loses this much on its way through the wire.',
    },
    {
      name: 'k_t',
      means: 'torque for each ampere above the no-load current',
      quantity: 'motor constant',
      unit: 'N m/A',
      formula: 'T_s / (I_s - I_0)',
    },
    {
      name: 'k_e',
      means: 'voltage the motor makes for each radian a second',
      quantity: 'motor constant',
      unit: 'N m/A',
      formula: '(V_rated - V_0) / omega_0',
      why: 'A turning motor is a generator too, and works against the supply. One volt second is one newton metre for each ampere.',
    },
    {
      name: 'k_share',
      means: 'share of the converted power that reaches the shaft',
      quantity: 'ratio',
      unit: '%',
      formula: 'k_t / k_e',
      why: 'In a motor without gears both constants are one. What is missing goes into the gears.',
    },
    {
      name: 'T_m',
      means: 'torque at the motor shaft',
      quantity: 'torque',
      unit: 'N m',
      formula: 'T / (ratio_b * eta)',
    },
    { name: 'I_stall', means: 'stall current at this voltage', quantity: 'current', unit: 'A', formula: 'V / R_m' },
    {
      name: 'I_m',
      means: 'motor current',
      quantity: 'current',
      unit: 'A',
      formula: 'min(I_0 + T_m / k_t, I_stall)',
      why: 'The load sets the current, whatever the voltage, until the wire lets no more through: then it stalls.',
    },
    {
      name: 'omega_m',
      means: 'speed of the motor shaft',
      quantity: 'angular velocity',
      unit: 'rpm',
      formula: '(V - I_m * R_m) / k_e',
      why: 'The wire takes its share of the voltage. What is left, the motor must make itself by turning.',
    },
    {
      name: 'omega_out',
      means: 'speed of the wheel',
      quantity: 'angular velocity',
      unit: 'rpm',
      formula: 'omega_m / ratio_b',
    },
    { name: 'P_in', means: 'power in', quantity: 'power', unit: 'W', formula: 'V * I_m' },
    { name: 'P_out', means: 'power out, at the wheel', quantity: 'power', unit: 'W', formula: 'T * omega_out' },
    {
      name: 'eff',
      means: 'efficiency, from the terminals to the wheel',
      quantity: 'ratio',
      unit: '%',
      formula: 'if(P_in > 0, P_out / P_in, 0)',
    },
    {
      name: 'P_wire',
      means: 'heat in the winding',
      quantity: 'power',
      unit: 'W',
      formula: 'I_m^2 * R_m',
    },
    {
      name: 'omega_free',
      means: 'no-load speed at this voltage',
      quantity: 'angular velocity',
      unit: 'rpm',
      formula: '(V - V_0) / k_e',
      why: 'Friction takes its voltage first. So half the voltage gives less than half the speed.',
    },
    {
      name: 'T_stall',
      means: 'stall torque at this voltage',
      quantity: 'torque',
      unit: 'N m',
      formula: 'k_t * (I_stall - I_0)',
    },
    {
      name: 'stall_share',
      means: 'torque as a share of the stall torque',
      quantity: 'ratio',
      unit: '%',
      formula: 'T_m / T_stall',
    },
    {
      name: 'T_top',
      means: 'torque at the motor shaft where it gives most power',
      quantity: 'torque',
      unit: 'N m',
      formula: 'T_stall / 2',
      why: 'Speed falls in a straight line as torque grows, so their product is largest half-way.',
    },
    {
      name: 'P_top',
      means: 'most power at the motor shaft',
      quantity: 'power',
      unit: 'W',
      formula: 'T_top * omega_free / 2',
    },
  ],
  results: ['omega_out', 'I_m', 'P_in', 'P_out', 'eff', 'stall_share', 'T_top', 'P_top'],
  requires: [
    {
      given: 'I_0',
      holds: 'I_0 < 0.999 * I_s',
      says: 'The no-load current must be less than the stall current I_s, which is {I_s}.',
    },
    {
      given: 'T_s',
      holds: 'k_t <= 1.000001 * k_e',
      says: 'These figures cannot be of one motor: {k_share} of the power it converts would reach the shaft, and no motor gives more than it takes. Check stall torque T_s, no-load speed and stall current, and whether all were measured at the rated voltage and on the same shaft.',
    },
    {
      given: 'V',
      holds: 'V > V_0',
      says: 'At {V} the motor does not turn: its own friction alone takes {V_0}. Give more voltage.',
    },
  ],
  cautions: [
    {
      when: 'stall_share >= 1',
      says: 'It stalls: this load asks {T_m} of the motor shaft, and at {V} the motor holds {T_stall}. It stands still, draws {I_stall} and turns all of its {P_in} into heat. Give less torque, more reduction, or more voltage.',
    },
    {
      when: 'stall_share > 0.5 and stall_share < 1',
      says: 'The load is past the point of most power: more torque now costs so much speed that less power comes out, and most of the power in stays in the motor as heat.',
    },
    {
      when: 'stall_share > 0.25 and stall_share <= 0.5',
      says: 'Above a quarter of the stall torque a small motor is good for a start or a slope, not for minutes on end: work out its heat. Common practice, no source.',
    },
    {
      when: 'V > 1.2 * V_rated',
      says: 'The voltage is well above the rated one. Brushes and gears wear faster, and at stall the motor draws {I_stall}.',
    },
    {
      says: 'Held still at this voltage the motor draws {I_stall}, and all of it turns to heat. Keep fingers away from wheels and gears while the supply is on.',
    },
  ],
  limits: [
    { asks: 'Is there no load?', answer: 'It runs at its no-load speed and gives nothing.', at: { T: '0 N m' } },
    {
      asks: 'Does it stall?',
      answer: 'It stands still and turns all it draws into heat.',
      at: { T: '3 N m' },
    },
    {
      asks: 'Is the voltage low?',
      answer: 'Friction takes the same voltage as before, so less is left than the share of the voltage tells.',
      at: { V: '6 V' },
    },
    {
      asks: 'Does the load drive the motor?',
      answer: 'Downhill or braking, the losses of the further reduction help to hold. This is for a motor that drives.',
    },
    {
      asks: 'Is the motor hot?',
      answer:
        'Hot wire has more resistance and warm magnets are weaker: expect less torque and, with no load, more speed.',
    },
    {
      asks: 'Is the voltage made by switching?',
      answer: 'Then V is the supply times the duty, as long as the switching is fast enough to keep the current even.',
    },
    {
      asks: 'Is friction the same at every speed?',
      answer:
        'It is taken to be. Thick grease and brushes make it grow with speed, so a low voltage gives a little more than this.',
    },
  ],
});
