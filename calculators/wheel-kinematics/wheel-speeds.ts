import { defineCalculator } from '../calculator.ts';
import { alpha, n, Omega, R, r, theta, v } from '../givens.ts';
import { wheelSpeed } from './rim-steps.ts';
import { acrossShare, alongShare, wheelAngle, wheelNumber } from './wheel-steps.ts';

export const wheelSpeeds = defineCalculator({
  id: 'wheel-speeds',
  edition: 1,
  module: 'wheel-kinematics',
  title: 'Wheel speeds for a motion',
  question: 'I want to go that way, that fast, turning so: what does each wheel do?',
  given: [n, alpha, R, r, v, theta, Omega],
  steps: [
    wheelNumber,
    wheelAngle,
    alongShare,
    {
      name: 'u',
      means: 'rim speed of each wheel',
      quantity: 'velocity',
      unit: 'm/s',
      formula: 'v * s_i + R * Omega',
      why: 'Each wheel rolls its share of the travel; turning on the spot adds the same speed to every wheel, the yaw rate times its distance from the centre.',
    },
    wheelSpeed,
    {
      name: 'omega_abs',
      brief: true,
      means: 'size of each wheel speed',
      quantity: 'angular velocity',
      unit: 'rpm',
      formula: 'abs(omega)',
    },
    {
      name: 'omega_top',
      brief: true,
      means: 'speed of the fastest wheel',
      quantity: 'angular velocity',
      unit: 'rpm',
      formula: 'max(omega_abs)',
    },
    {
      name: 'share',
      means: 'share of the fastest wheel',
      brief: true,
      quantity: 'ratio',
      unit: '%',
      formula: 'if(omega_top > 0, omega / omega_top, 0)',
    },
    acrossShare,
    {
      name: 'u_free',
      means: 'free speed, which the rollers take',
      quantity: 'velocity',
      unit: 'm/s',
      formula: 'v * c_i',
      why: 'The part of the travel along the axle. Turning adds nothing here: it moves a wheel only along its drive direction.',
    },
  ],
  results: ['omega', 'share', 'u_free'],
  cautions: [
    {
      when: 'omega_top == 0',
      says: 'Nothing is asked of the wheels: give a speed or a yaw rate.',
    },
  ],
  limits: [
    {
      asks: 'Does the robot only turn?',
      answer: 'At v = 0 every wheel turns alike.',
      at: { v: '0 m/s', Omega: '90 deg/s' },
    },
    {
      asks: 'Does it travel along a wheel’s axle?',
      answer: 'That wheel stands still and its rollers take everything.',
      at: { theta: '0 deg' },
    },
    {
      asks: 'Are the wheels evenly spaced, all at one distance?',
      answer:
        'They are taken to be. A wheel out of place by a few millimetres turns the robot by a few per cent of what it should.',
    },
    {
      asks: 'Does a wheel slip?',
      answer: 'It is taken not to: these are the speeds that fit the floor, not what a motor can give.',
    },
  ],
});
