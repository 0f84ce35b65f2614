import { defineCalculator } from '../calculator.ts';
import { C, p, z1, z2 } from '../givens.ts';
import { apart, exactLength, nearlyTouching, pitchCircles, shortestBelt } from './pitch-circles.ts';
import { freeSpan, spanAngle, teethInMesh } from './span-steps.ts';
import { lengthOfTeeth, ratioOfTeeth } from './tooth-steps.ts';

export const beltLength = defineCalculator({
  id: 'belt-length',
  edition: 1,
  module: 'belt-drives',
  title: 'Length of a toothed belt',
  question: 'Two pulleys and the distance between their shafts: which belt?',
  given: [p, z1, z2, C],
  steps: [
    ...pitchCircles,
    {
      ...ratioOfTeeth,
      why: 'The belt carries teeth over one by one, so both pulleys pass equally many.',
    },
    spanAngle,
    freeSpan,
    {
      name: 'wrap_1',
      means: 'wrap of pulley 1',
      quantity: 'angle',
      unit: 'deg',
      formula: '180deg - 2 * phi_b',
      why: 'Each span leans by the angle, so the smaller pulley loses it twice and the larger gains it twice.',
    },
    { name: 'wrap_2', means: 'wrap of pulley 2', quantity: 'angle', unit: 'deg', formula: '180deg + 2 * phi_b' },
    {
      name: 'L_open',
      means: 'exact length of the belt along its pitch line',
      quantity: 'length',
      unit: 'mm',
      formula: '2 * span + D1 * wrap_1 / 2 + D2 * wrap_2 / 2',
      why: 'Two spans and two arcs. An arc is the radius times the wrap in radians.',
    },
    {
      name: 'z_L',
      means: 'teeth that this length would have',
      quantity: 'ratio',
      unit: '',
      formula: 'L_open / p',
    },
    ...shortestBelt,
    {
      name: 'z_b',
      means: 'teeth of the belt: the nearest whole number',
      quantity: 'count',
      unit: '',
      formula: 'max(round(z_L), z_least)',
      why: 'A belt has whole teeth. One that would pull the pulleys into each other is passed over.',
    },
    { ...lengthOfTeeth, means: 'length of the belt with so many teeth' },
    {
      name: 'C_b',
      means: 'centre distance that this belt asks for',
      quantity: 'length',
      unit: 'mm',
      solve: exactLength('C_b'),
      equals: 'L_b',
      between: ['C_touch', 'L_b / 2'],
      why: 'The same length with the centre distance unknown. It cannot be turned round, so try values until it fits.',
    },
    {
      name: 'dC',
      means: 'how far the shafts must go apart for it (negative: together)',
      quantity: 'length',
      unit: 'mm',
      formula: 'C_b - C',
    },
    teethInMesh('min(wrap_1, wrap_2)'),
    {
      name: 'z_whole',
      means: 'whole teeth in mesh, as tables count them',
      quantity: 'count',
      unit: '',
      formula: 'floor(z_mesh)',
      brief: true,
    },
    {
      name: 'z_spare',
      means: 'of these, above the six that common practice asks for',
      quantity: 'ratio',
      unit: '',
      formula: 'z_whole - 6',
      why: 'Six share the pull well enough for a belt to carry all that its maker allows. Common practice, no source.',
      brief: true,
    },
  ],
  results: ['D1', 'D2', 'ratio_z', 'L_open', 'z_b', 'C_b', 'dC', 'span', 'wrap_1', 'wrap_2', 'z_whole', 'z_spare'],
  requires: [apart],
  cautions: [
    {
      when: 'z_whole < 6',
      says: 'The smaller pulley has {z_whole} whole teeth in mesh. Under six, the share of its pull that a belt may carry falls: take a larger pulley, or move the shafts apart.',
    },
    nearlyTouching,
    {
      when: 'abs(dC) > 0.0005 * C',
      says: 'No belt of whole teeth fits {C} exactly. The centre distance must change by {dC}. Leave a slot or a shim to tighten the belt.',
    },
    {
      says: 'A belt draws fingers, hair and sleeves in where it meets a pulley. Take the supply off before you reach for it, and put a cover over it.',
    },
  ],
  limits: [
    {
      asks: 'Are the pulleys alike?',
      answer: 'Then each is wrapped half round, and the belt is twice the centre distance and one circumference.',
      at: { z2: '18' },
    },
    {
      asks: 'Is the driving pulley the larger?',
      answer: 'The length is the same. The ratio is below one, so the wheel turns quicker than the motor.',
      at: { z1: '36', z2: '18' },
    },
    {
      asks: 'Do the belts you can buy skip tooth numbers?',
      answer:
        'They do. Take the nearest one on sale to the centre-distance calculator, and put the shafts where it asks.',
    },
    {
      asks: 'Is there an idler, or a crossed belt?',
      answer: 'Not in here. This is an open belt round two pulleys and nothing else.',
    },
    {
      asks: 'Is the belt on the pitch circle?',
      answer:
        'Its cord is, a little outside the tips of the pulley. A pulley measured with a calliper is smaller than its pitch diameter. That is why teeth and pitch are asked for.',
    },
  ],
});
