import { defineCalculator } from '../calculator.ts';
import { E1, E2, F_n, nu1, nu2, r1, r2 } from './givens.ts';

export const contactPatch = defineCalculator({
  id: 'contact-patch',
  edition: 1,
  module: 'friction',
  title: 'Contact patch of a roller',
  question: 'Does the tread squash?',
  given: [F_n, r1, r2, E1, nu1, E2, nu2],
  steps: [
    {
      name: 'E_c',
      means: 'modulus of the two together',
      quantity: 'pressure',
      unit: 'MPa',
      formula: '2 / ((1 - nu1^2) / E1 + (1 - nu2^2) / E2)',
      why: 'The softer one decides: their yields add up.',
    },
    {
      name: 'r_small',
      means: 'smaller of the two radii',
      brief: true,
      quantity: 'length',
      unit: 'mm',
      formula: 'min(r1, r2)',
    },
    {
      name: 'r_large',
      means: 'larger of the two radii',
      brief: true,
      quantity: 'length',
      unit: 'mm',
      formula: 'max(r1, r2)',
    },
    { name: 'k_r', means: 'how unlike they are', quantity: 'ratio', unit: '', formula: 'r_large / r_small' },
    {
      name: 'r_c',
      means: 'radius of the two curves together',
      quantity: 'length',
      unit: 'mm',
      formula: 'r_large * r_small / (r_large + r_small)',
    },
    {
      name: 'k_e',
      means: 'length of the patch over its width',
      quantity: 'ratio',
      unit: '',
      formula: 'k_r^(2 / pi)',
      why: 'A close approximation. For a ball it is one, and all that follows is exact.',
    },
    {
      name: 'k_E',
      means: 'factor of the patch',
      quantity: 'ratio',
      unit: '',
      formula: '1 + (pi / 2 - 1) / k_r',
    },
    {
      name: 'k_F',
      means: 'factor of the sink',
      quantity: 'ratio',
      unit: '',
      formula: 'pi / 2 + (pi / 2 - 1) * ln(k_r)',
    },
    {
      name: 'd_long',
      means: 'length of the patch, along the larger radius',
      quantity: 'length',
      unit: 'mm',
      formula: '2 * (6 * k_e^2 * k_E * F_n * r_c / (pi * E_c))^(1 / 3)',
      why: 'Eight times the load makes the patch only twice as long.',
    },
    { name: 'd_short', means: 'width of the patch', quantity: 'length', unit: 'mm', formula: 'd_long / k_e' },
    {
      name: 'p_peak',
      means: 'pressure in the middle of the patch',
      quantity: 'pressure',
      unit: 'MPa',
      formula: '6 * F_n / (pi * d_long * d_short)',
      why: 'One and a half times the mean pressure over the ellipse.',
    },
    {
      name: 'sink',
      means: 'how much the axle sinks',
      quantity: 'length',
      unit: 'mm',
      formula: 'k_F * (9 / (2 * k_E * r_c) * (F_n / (pi * k_e * E_c))^2)^(1 / 3)',
    },
    {
      name: 'k_patch',
      means: 'half the patch over the smaller radius',
      quantity: 'ratio',
      unit: '%',
      formula: 'd_long / 2 / r_small',
    },
  ],
  results: ['d_long', 'd_short', 'p_peak', 'sink', 'k_patch'],
  cautions: [
    {
      when: 'k_patch > 0.2',
      says: 'The patch is large for the roller: half of it is {k_patch} of the smaller radius. The theory is for small patches; take the result as a rough size.',
    },
    {
      when: 'E1 < E2 / 100 or E2 < E1 / 100',
      says: 'One of the two is far softer. A tread that is thinner than a few patches on a hard core squashes less and presses harder than this says.',
    },
    {
      when: 'k_r > 20',
      says: 'The radii are so unlike that it is nearly a line contact. For that the theory gives no sink, so trust the pressure more than the sink.',
    },
  ],
  limits: [
    {
      asks: 'Is the roller a ball?',
      answer: 'Then the patch is round and the formulas are exact.',
      at: { r1: '60 mm', r2: '60 mm' },
    },
    {
      asks: 'Is it a slim barrel?',
      answer: 'Then the patch is a long, narrow ellipse with more pressure in it.',
      at: { r1: '8 mm', r2: '60 mm' },
    },
    {
      asks: 'Is the floor a carpet?',
      answer: 'A carpet does not spring like a solid. The wheel sinks into the pile first.',
    },
    {
      asks: 'Does it also drive or slide?',
      answer: 'A push along the floor changes stress inside and near the surface, not the size of the patch.',
    },
  ],
});
