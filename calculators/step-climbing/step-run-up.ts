import { defineCalculator } from '../calculator.ts';
import { g, r, v, h } from '../givens.ts';
import { contactAngle, lowerThanAxle } from './edge-steps.ts';
import { gyr } from './givens.ts';

export const stepRunUp = defineCalculator({
  id: 'step-run-up',
  edition: 1,
  module: 'step-climbing',
  title: 'A running start at an edge',
  question: 'A single wheel rolls at an edge: can its speed carry it over?',
  given: [r, h, gyr, v, g],
  steps: [
    contactAngle,
    {
      name: 'K',
      means: 'inertia about the edge, for each kilogram',
      quantity: 'area',
      unit: 'mm^2',
      formula: 'r^2 + gyr^2',
      why: 'The mass is spread about the axle by the radius of gyration, and the axle turns about the edge at the distance r.',
    },
    {
      name: 'kept',
      means: 'share of the speed that is left after the knock',
      quantity: 'ratio',
      unit: '',
      formula: '(K - r * h) / K',
      why: 'The knock acts at the edge, so the turning momentum about the edge is kept. Only the part of the motion that already turns about it survives.',
    },
    {
      name: 'v_up',
      means: 'speed just after the knock that carries it up',
      quantity: 'velocity',
      unit: 'm/s',
      formula: 'sqrt(2 * g * h / (1 + gyr^2 / r^2))',
      why: 'The energy of turning about the edge must lift the wheel by h.',
    },
    {
      name: 'v_min',
      means: 'speed it needs before the knock',
      quantity: 'velocity',
      unit: 'm/s',
      formula: 'v_up / kept',
    },
    {
      name: 'lost',
      means: 'share of its energy that the knock takes',
      quantity: 'ratio',
      unit: '%',
      formula: '1 - kept^2',
    },
    {
      name: 'v_after',
      means: 'speed just after the knock at the speed given',
      quantity: 'velocity',
      unit: 'm/s',
      formula: 'v * kept',
    },
    {
      name: 'h_valid',
      means: 'highest edge for which the wheel, at the speed it needs, stays on the edge',
      quantity: 'length',
      unit: 'mm',
      formula: 'r / (1 + 2 * r^2 / K)',
      why: 'After the knock the axle swings round the edge, and the weight must bend its path. Above this height it cannot, and the wheel leaves the edge.',
    },
  ],
  results: ['v_min', 'kept', 'lost', 'v_after', 'h_valid'],
  requires: [
    lowerThanAxle,
    {
      given: 'gyr',
      holds: 'gyr <= r',
      says: 'No wheel has more of its mass outside its rim: give at most the wheel radius r, which is {r}.',
    },
  ],
  cautions: [
    { when: 'v < v_min', says: 'At {v} it does not get over: it needs {v_min}.' },
    {
      when: 'h > h_valid',
      says: 'Above {h_valid} the model ends: the wheel would not stay at the edge after the knock.',
    },
    {
      when: 'v_after^2 > g * (r - h)',
      says: 'At {v} the wheel does not roll over the edge but jumps off it.',
    },
    {
      says: 'This is one free wheel, not a robot. A robot that rams an edge bends axles, jumps, and may hurt somebody: it is no plan for getting over.',
    },
  ],
  limits: [
    { asks: 'Is there no step?', answer: 'Any speed will do.', at: { h: '0 mm' } },
    { asks: 'Is all the mass in the rim?', answer: 'Then more of the speed survives.', at: { gyr: '60 mm' } },
    {
      asks: 'Does the edge grip?',
      answer: 'It must: a rim that slides over the edge keeps another share of its speed.',
    },
    {
      asks: 'Does the rim give?',
      answer: 'A soft tread spreads the knock over time and loses less. This is a hard one that does not bounce.',
    },
  ],
});
