import { defineCalculator, withUsual } from '../calculator.ts';
import {
  firstToSlip,
  loadFlat,
  loadGainedBraking,
  loadLean,
  loadLevel,
  loadStanding,
  offLine,
  offLineOf,
  pushTakenOff,
  slipAcceleration,
  towardsWheel,
} from '../friction/load-steps.ts';
import { alpha, C_rr, g, m, mu, n, R, r, slope, T_w, theta, up, v, x, y, z } from '../givens.ts';
import { acrossShare, along, alongShare, wheelAngle, wheelNumber } from '../wheel-kinematics/wheel-steps.ts';
import { t_react } from './givens.ts';

/** From the speed of travel to a stand, braking evenly. */
const brakedOver = (braking: string): string => `v^2 / (2 * ${braking})`;

export const stopping = defineCalculator({
  id: 'stopping',
  edition: 1,
  module: 'motors',
  title: 'Stopping distance',
  question: 'How far does it go until it stands?',
  given: [v, theta, t_react, mu, C_rr, T_w, m, n, alpha, R, r, x, y, z, withUsual(slope, '0 deg'), up, g],
  steps: [
    wheelNumber,
    wheelAngle,
    alongShare,
    acrossShare,
    towardsWheel,
    loadLevel,
    loadFlat,
    loadLean,
    loadStanding,
    loadGainedBraking,
    {
      name: 'y_up',
      means: 'centre of mass off the line uphill, to its right',
      quantity: 'length',
      unit: 'mm',
      formula: offLineOf('up'),
    },
    {
      name: 'f_0',
      means: 'push of each wheel before it brakes, counter-clockwise positive',
      quantity: 'force',
      unit: 'N',
      formula: `m * g / n * sin(slope) * (2 * ${along('up')} + y_up / R)`,
      why: 'The wheels hold the robot on the slope, and keep it from turning if its weight sits to one side.',
    },
    offLine,
    pushTakenOff,
    {
      name: 'f_abs',
      means: 'size of each push before it brakes',
      brief: true,
      quantity: 'force',
      unit: 'N',
      formula: 'abs(f_0)',
    },
    {
      name: 'rest_f',
      means: 'grip that each wheel has left before it brakes',
      quantity: 'force',
      unit: 'N',
      formula: 'mu * N_0 - f_abs',
    },
    { name: 'rest_low', means: 'least grip left', brief: true, quantity: 'force', unit: 'N', formula: 'min(rest_f)' },
    {
      name: 'use_back',
      means: 'share of that grip which braking at one g takes, pushing clockwise',
      quantity: 'ratio',
      unit: '',
      formula: 'g * (k_f - mu * k_N) / (mu * N_0 + f_0)',
      why: 'A wheel that gains more grip than it needs has a share below zero: it never slips.',
    },
    {
      name: 'use_on',
      means: 'the same, pushing counter-clockwise',
      quantity: 'ratio',
      unit: '',
      formula: 'g * (-k_f - mu * k_N) / (mu * N_0 - f_0)',
    },
    {
      name: 'use_i',
      means: 'the larger of the two',
      brief: true,
      quantity: 'ratio',
      unit: '',
      formula: 'max(use_back, use_on)',
    },
    firstToSlip,
    { ...slipAcceleration, name: 'a_grip', means: 'braking at which the first wheel slips or lifts' },
    {
      name: 'f_T',
      means: 'push that the stall torque gives a wheel',
      quantity: 'force',
      unit: 'N',
      formula: 'T_w / r',
    },
    {
      name: 'spare_T',
      means: 'push that each motor has to spare before it brakes',
      quantity: 'force',
      unit: 'N',
      formula: 'f_T - f_abs',
    },
    {
      name: 'spare_low',
      means: 'least push to spare',
      brief: true,
      quantity: 'force',
      unit: 'N',
      formula: 'min(spare_T)',
    },
    {
      name: 'rest_T',
      means: 'what each motor has left before it brakes',
      quantity: 'force',
      unit: 'N',
      formula: 'f_T + sign(k_f) * f_0',
    },
    {
      name: 'use_T',
      means: 'share of that which braking at one g takes',
      quantity: 'ratio',
      unit: '',
      formula: 'g * abs(k_f) / rest_T',
    },
    {
      name: 'use_T_top',
      means: 'share of the hardest motor',
      brief: true,
      quantity: 'ratio',
      unit: '',
      formula: 'max(use_T)',
    },
    {
      name: 'a_motor',
      means: 'braking that the motors can give',
      quantity: 'acceleration',
      unit: 'm/s^2',
      formula: 'g / use_T_top',
    },
    {
      name: 'a_coast',
      means: 'braking with the power lost',
      quantity: 'acceleration',
      unit: 'm/s^2',
      formula: 'g * (C_rr * cos(slope) + sin(slope) * cos(up - theta))',
      why: 'Rolling resistance alone, and the slope for or against it.',
    },
    {
      name: 's_react',
      means: 'distance before the brakes act',
      quantity: 'length',
      unit: 'm',
      formula: 'v * t_react',
    },
    {
      name: 's_grip',
      means: 'braking distance by grip',
      quantity: 'length',
      unit: 'm',
      formula: brakedOver('a_grip'),
    },
    {
      name: 's_motor',
      means: 'braking distance by the motors',
      quantity: 'length',
      unit: 'm',
      formula: brakedOver('a_motor'),
    },
    {
      name: 's_coast',
      means: 'coasting distance, power lost',
      quantity: 'length',
      unit: 'm',
      formula: brakedOver('a_coast'),
    },
    {
      name: 's_power',
      means: 'distance until it stands, with power',
      quantity: 'length',
      unit: 'm',
      formula: 's_react + max(s_grip, s_motor)',
      why: 'It can brake no harder than both the floor and the motors allow.',
    },
    {
      name: 's_stop',
      means: 'distance to keep clear: until it stands, power or no power',
      quantity: 'length',
      unit: 'm',
      formula: 's_react + max(s_grip, s_motor, s_coast)',
      why: 'The power can fail at the worst moment, so the largest of the three counts.',
    },
    {
      name: 't_stop',
      means: 'time until it stands, power or no power',
      quantity: 'time',
      unit: 's',
      formula: 't_react + v / min(a_grip, a_motor, a_coast)',
    },
  ],
  results: ['s_stop', 't_stop', 's_power', 's_react', 's_grip', 's_motor', 's_coast', 'a_grip', 'a_motor'],
  requires: [
    {
      given: 'mu',
      holds: 'rest_low > 0.000001 * m * g',
      says: 'A wheel slips or lifts before it brakes: of its grip {rest_low} are left, and less than nothing does not hold. Give more friction μ, a smaller slope, or a centre of mass that is lower and nearer to the middle.',
    },
    {
      given: 'T_w',
      holds: 'spare_low > 0.000001 * m * g',
      says: 'The motors cannot hold it on this slope, let alone stop it. Their stall torque gives a wheel {f_T}, and the hardest needs more. Give more torque T_w or a smaller slope.',
    },
    {
      given: 'C_rr',
      holds: 'a_coast > 0.000001 * g',
      says: 'With the power lost it never stops: nothing holds it, or the slope pulls harder than rolling resistance does. No distance is safe without a brake that holds by itself. To see the stop with power alone, give C_rr a value above the tangent of the slope.',
    },
  ],
  cautions: [
    {
      when: 'n > 3',
      says: 'With more than three wheels the loads are those of wheels on equal springs, and the braking is that of the first slip.',
    },
    {
      when: 's_coast > max(s_grip, s_motor)',
      says: 'With the power lost it rolls on for {s_coast}. If that is too far, fit a brake that closes when the power goes.',
    },
    {
      when: 'a_motor > a_grip',
      says: 'The motors can brake harder than the floor holds. Locked wheels slide, and with three of them the robot turns as it slides: brake no harder than {a_grip}.',
    },
    {
      says: 'This is a distance on paper. Near people go so slowly that a stop needs less than the free space, test it with a soft obstacle, and follow the safety rules that apply where you are.',
    },
  ],
  limits: [
    {
      asks: 'Does it stop towards a wheel?',
      answer:
        'That wheel gains load it has no use for, and the two behind lose theirs. What speeds up best that way stops worst.',
      at: { theta: '0 deg' },
    },
    {
      asks: 'Does the centre of mass sit on the floor?',
      answer: 'Then braking shifts no load.',
      at: { z: '0 mm' },
    },
    {
      asks: 'Does it go downhill?',
      answer:
        'The slope takes part of grip and torque, and coasting goes further. Beyond a small slope it never stops.',
      at: { slope: '1 deg', up: '-90 deg' },
    },
    {
      asks: 'Do the wheels lock?',
      answer: 'Then friction is that of sliding, which is less on most floors, and the robot turns. Take a lower μ.',
    },
    {
      asks: 'Do rotors and wheels spin on?',
      answer:
        'The motors must stop them as well: type the mass with what they count for, which speeding up works out. Grip does not change by it. Coasting goes further, by that mass over the mass of the robot alone; or type the rolling resistance that a measured roll gives.',
    },
    {
      asks: 'Do the motors brake with their stall torque?',
      answer:
        'A driver that limits the current to that of stall gives it at any speed. A motor with its wires joined brakes less and less as it slows.',
    },
    {
      asks: 'Does the drag of gears help with the power lost?',
      answer: 'It does. Measure how far the robot coasts and type the rolling resistance that fits.',
    },
  ],
});
