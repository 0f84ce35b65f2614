import { defineCalculator, withUsual } from '../calculator.ts';
import { acc, C_rr, g, m, n, r, slope, v, h } from '../givens.ts';
import { reachToEdge } from '../step-climbing/edge-steps.ts';
import { margin, work_share } from './givens.ts';
import { pushAll, pushFaster, pushRolling, pushUp, worstPushOf, worstTorque } from './push-steps.ts';

export const motorChoice = defineCalculator({
  id: 'motor-choice',
  edition: 1,
  module: 'motors',
  title: 'Motor to look for',
  question: 'Which motor do I need?',
  given: [m, v, acc, slope, C_rr, withUsual(h, '5 mm'), n, r, margin, work_share, g],
  steps: [
    pushUp,
    pushRolling,
    pushFaster,
    pushAll,
    {
      name: 'F_worst',
      means: 'push of the hardest wheel at the worst heading',
      quantity: 'force',
      unit: 'N',
      formula: worstPushOf('F_all'),
      why: 'The worst heading is along a wheel’s drive direction. That wheel then does two shares of an even split, whatever the number of wheels.',
    },
    { ...worstTorque, name: 'T_drive', means: 'torque of the hardest wheel while driving' },
    { ...reachToEdge, name: 'lever', means: 'distance of the axle from the edge of the step, along the floor' },
    {
      name: 'T_step',
      means: 'torque for a wheel to lift its share of the weight on to the step',
      quantity: 'torque',
      unit: 'N m',
      formula: 'm * g / n * lever',
      why: 'The wheel turns about the edge. Its share of the weight pulls it back with this lever. It needs no help from the others this way, if it grips.',
    },
    {
      name: 'omega_v',
      means: 'wheel speed at this travel speed',
      quantity: 'angular velocity',
      unit: 'rpm',
      formula: 'v / r',
      why: 'At the worst heading the hardest wheel is also the fastest: it rolls at the speed of travel.',
    },
    {
      name: 'P_wheel',
      means: 'power of the hardest wheel',
      quantity: 'power',
      unit: 'W',
      formula: 'T_drive * omega_v',
    },
    {
      name: 'T_work',
      means: 'torque to plan for while driving',
      quantity: 'torque',
      unit: 'N m',
      formula: 'margin * T_drive',
    },
    {
      name: 'T_w',
      means: 'stall torque to look for, at the wheel',
      quantity: 'torque',
      unit: 'N m',
      formula: 'max(T_work / work_share, margin * T_step)',
      why: 'Driving goes on for minutes, so it may take a small share of the stall torque only. A step is over in a second and may take nearly all.',
    },
    {
      name: 'omega_w',
      means: 'no-load speed to look for, at the wheel',
      quantity: 'angular velocity',
      unit: 'rpm',
      formula: 'omega_v / (1 - T_work / T_w)',
      why: 'Speed falls in a straight line from no load to stall, so the load takes the same share of the speed as of the torque.',
    },
    {
      name: 'P_look',
      means: 'most power of such a motor',
      quantity: 'power',
      unit: 'W',
      formula: 'T_w * omega_w / 4',
      why: 'Half the stall torque at half the no-load speed.',
    },
  ],
  results: ['T_drive', 'T_step', 'omega_v', 'P_wheel', 'T_w', 'omega_w', 'P_look'],
  requires: [
    {
      given: 'h',
      holds: 'h < r',
      says: 'A step as high as the wheel’s radius r, which is {r}, or higher cannot be climbed by turning the wheel. Give a lower step h.',
    },
    {
      given: 'acc',
      holds: 'F_all > 0 or T_step > 0',
      says: 'Nothing asks for torque. Give an acceleration, a slope, rolling resistance, or a step.',
    },
  ],
  cautions: [
    {
      when: 'margin * T_step > T_work / work_share',
      says: 'The step decides and not the driving. Whether the wheel can climb it depends on grip too, and on whether the others push.',
    },
    {
      when: 'work_share > 0.5',
      says: 'Above half the stall torque a motor gives less power for more current. It will run hot.',
    },
    {
      says: 'A motor strong enough for this can pinch fingers and push a person over. Limit speed and current where people are near.',
    },
  ],
  limits: [
    { asks: 'Is there no step?', answer: 'Then the driving decides.', at: { h: '0 mm' } },
    { asks: 'Is the step half the radius?', answer: 'The step decides by far.', at: { h: '30 mm' } },
    {
      asks: 'Do you need the power at the motor?',
      answer: 'This is at the wheel. A belt or further gears between take their loss on the way.',
    },
    {
      asks: 'Is the heading not the worst?',
      answer: 'Then each wheel does less. A robot that may face a slope on any heading must plan for the worst.',
    },
    {
      asks: 'Do the wheels and rotors have inertia?',
      answer:
        'It adds to the mass when the robot speeds up. The small rotor of a motor with much reduction can count for kilograms.',
    },
  ],
});
