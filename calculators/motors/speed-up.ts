import { defineCalculator } from '../calculator.ts';
import { alpha, C_rr, g, m, mu, n, omega_w, r, ratio, T_w, theta } from '../givens.ts';
import { alongShare, largestShare, shareSize, wheelAngle, wheelNumber } from '../wheel-kinematics/wheel-steps.ts';
import { J, J_wheel, reach } from './givens.ts';

export const speedUp = defineCalculator({
  id: 'speed-up',
  edition: 1,
  module: 'motors',
  title: 'Speeding up',
  question: 'How long and how far until it is at speed?',
  given: [m, J, ratio, J_wheel, C_rr, T_w, omega_w, n, alpha, theta, r, mu, reach, g],
  steps: [
    wheelNumber,
    wheelAngle,
    alongShare,
    shareSize,
    { ...largestShare, means: 'share of the hardest wheel' },
    {
      name: 'm_spin',
      means: 'mass that rotors and wheels count for',
      quantity: 'mass',
      unit: 'kg',
      formula: 'n / 2 * (J * ratio^2 + J_wheel) / r^2',
      why: 'To get the robot going, rotors and wheels must be spun up as well. A rotor turns as many times faster as the gear ratio says, and its energy goes with the square of that.',
    },
    { name: 'm_all', means: 'mass to speed up', quantity: 'mass', unit: 'kg', formula: 'm + m_spin' },
    {
      name: 'F_start',
      means: 'push of the motors from rest',
      quantity: 'force',
      unit: 'N',
      formula: 'n / 2 * T_w / (r * s_top)',
      why: 'The hardest wheel gets the full voltage, the others their share of it, so that the robot goes straight.',
    },
    {
      name: 'F_roll',
      means: 'push against rolling resistance',
      quantity: 'force',
      unit: 'N',
      formula: 'C_rr * m * g',
    },
    {
      name: 'v_free',
      means: 'speed at which the motors push no more',
      quantity: 'velocity',
      unit: 'm/s',
      formula: 'r * omega_w / s_top',
    },
    {
      name: 'v_end',
      means: 'final speed',
      quantity: 'velocity',
      unit: 'm/s',
      formula: 'v_free * (1 - F_roll / F_start)',
      why: 'The push falls in a straight line from rest to that speed. Where it is down to the rolling resistance, the robot gains no more.',
    },
    {
      name: 'tau',
      means: 'time constant',
      quantity: 'time',
      unit: 's',
      formula: 'm_all * v_free / F_start',
      why: 'As long as it would take to the final speed if the push of the start lasted. It is the same at every heading.',
    },
    {
      name: 'a_start',
      means: 'acceleration from rest, as the motors could',
      quantity: 'acceleration',
      unit: 'm/s^2',
      formula: 'v_end / tau',
    },
    {
      name: 'a_grip',
      means: 'acceleration that grip allows',
      quantity: 'acceleration',
      unit: 'm/s^2',
      formula: '(mu / (2 * s_top) - C_rr) * g',
      why: 'The hardest wheel carries one n-th of the weight and does 2/n of the push, so it slips at half of μ times the weight. The floor has to move the mass of the robot only: what spins is turned by the motors.',
    },
    {
      name: 'a_go',
      means: 'acceleration from rest',
      brief: true,
      quantity: 'acceleration',
      unit: 'm/s^2',
      formula: 'min(a_start, a_grip)',
    },
    { name: 'v_reach', means: 'speed to reach', quantity: 'velocity', unit: 'm/s', formula: 'reach * v_end' },
    {
      name: 'v_hold',
      means: 'speed up to which grip is the limit',
      quantity: 'velocity',
      unit: 'm/s',
      formula: 'min(v_end * (1 - a_go / a_start), v_reach)',
      why: 'As speed grows the push of the motors falls, until the floor holds it.',
    },
    { name: 't_hold', means: 'time until then', quantity: 'time', unit: 's', formula: 'v_hold / a_go' },
    {
      name: 't_motor',
      means: 'time from then on, with all that the motors give',
      quantity: 'time',
      unit: 's',
      formula: 'tau * ln((v_end - v_hold) / (v_end - v_reach))',
      why: 'What is missing to the final speed shrinks by the same share in equal times.',
    },
    {
      name: 't_reach',
      means: 'time to reach the speed',
      quantity: 'time',
      unit: 's',
      formula: 't_hold + t_motor',
    },
    {
      name: 's_reach',
      means: 'distance to reach the speed',
      quantity: 'length',
      unit: 'm',
      formula: 'v_hold * t_hold / 2 + v_end * t_motor - tau * (v_reach - v_hold)',
      why: 'Evenly faster at first, so half of speed times time. Then what was missing to the final speed is taken off.',
    },
    {
      name: 'grip_use',
      means: 'acceleration of the motors over that of grip',
      quantity: 'ratio',
      unit: '%',
      formula: 'a_start / a_grip',
    },
  ],
  results: ['v_end', 'tau', 't_reach', 's_reach', 'm_spin', 'a_start', 'a_grip', 'grip_use'],
  requires: [
    {
      given: 'C_rr',
      holds: 'F_roll < 0.999999 * F_start',
      says: 'It does not move: rolling resistance takes {F_roll} and the motors push {F_start}. Give a lower C_rr, a smaller mass or more torque T_w.',
    },
    {
      given: 'mu',
      holds: 'a_grip > 0.000001 * g',
      says: 'It does not move: at the grip limit the wheels push no harder than rolling resistance holds. Give a coefficient of friction μ well above twice C_rr, which is {C_rr}.',
    },
  ],
  cautions: [
    {
      when: 'a_start > a_grip',
      says: 'Grip is the limit up to {v_hold}, not the motors. Time and distance hold if you raise the voltage gently enough; at full voltage from rest the wheels spin, the robot turns off its line, and it takes longer.',
    },
    {
      when: 'm_spin > m / 2',
      says: 'Rotors and wheels count for more than half of the robot’s mass. Less reduction gets it going sooner.',
    },
    {
      says: 'From rest each motor takes up to its stall current. Try a new robot on blocks, then slowly, with people and fingers clear.',
    },
  ],
  limits: [
    {
      asks: 'Does grip never limit?',
      answer: 'With strong grip the motors push all the way from rest.',
      at: { mu: '2' },
    },
    {
      asks: 'Do rotors and wheels weigh nothing?',
      answer: 'Then only the robot’s own mass counts.',
      at: { J: '0 g cm^2', J_wheel: '0 kg cm^2' },
    },
    {
      asks: 'Does it reach its final speed?',
      answer: 'Never quite: it takes three time constants to come within five per cent. So give a share of it.',
      at: { reach: '99 %' },
    },
    {
      asks: 'Does the load shift back?',
      answer:
        'The wheels are taken to share the weight evenly. Speeding up presses some wheels down and lifts others, so the first slip can come sooner.',
    },
    {
      asks: 'Is the stall torque that of your battery?',
      answer:
        'Give stall torque and no-load speed at the voltage the motors get. The battery sags while they start, so expect a little less.',
    },
    {
      asks: 'Does the driver limit the current?',
      answer: 'Then the push stays even up to some speed, as with grip. This takes no such limit.',
    },
  ],
});
