import { expect, test } from 'vitest';
import type { Calculator } from '../../../calculators/calculator.ts';
import { dimensionOf } from '../../../calculators/formula/dimension.ts';
import { showDimension, type Dimension } from '../../../calculators/quantity/dimension.ts';
import { quantityOf } from '../../../calculators/quantity/units.ts';
import { bodyMotion } from '../../../calculators/wheel-kinematics/body-motion.ts';
import { rollRatio } from '../../../calculators/wheel-kinematics/roll-ratio.ts';
import { speedEnvelope } from '../../../calculators/wheel-kinematics/speed-envelope.ts';
import { wheelSpeeds } from '../../../calculators/wheel-kinematics/wheel-speeds.ts';

/** What each formula gives when its givens are metres, seconds and plain numbers; steps count as their own formulas. */
function dimensionsOf({ given, steps }: Calculator): Readonly<Record<string, string>> {
  const known: Record<string, Dimension> = Object.fromEntries(
    given.map(({ name, quantity }) => [name, quantityOf(quantity).dimension]),
  );
  for (const step of steps) {
    if (step.kind === 'formula') known[step.name] = dimensionOf(step.tree, known);
  }
  return Object.fromEntries(steps.map(({ name }) => [name, showDimension(known[name] ?? [NaN, 0, 0, 0, 0])]));
}

const grouped = (calculator: Calculator): Readonly<Record<string, string>> => {
  const found = dimensionsOf(calculator);
  const kinds = [...new Set(Object.values(found))].sort();
  return Object.fromEntries(
    kinds.map((kind) => [
      kind,
      Object.keys(found)
        .filter((name) => found[name] === kind)
        .sort()
        .join(' '),
    ]),
  );
};

test('roll-ratio', () => {
  expect(grouped(rollRatio)).toEqual({ '1': 'k_roll', 'm s^-1': 'v_free v_roll', 's^-1': 'omega_q omega_roll' });
});

test('wheel-speeds', () => {
  expect(grouped(wheelSpeeds)).toEqual({
    '1': 'alpha_i c_i i s_i share',
    'm s^-1': 'u u_free',
    's^-1': 'omega omega_abs omega_top',
  });
});

test('body-motion', () => {
  expect(grouped(bodyMotion)).toEqual({
    '1': 'alpha_i i i_res n res_share suspect theta',
    'm s^-1': 'res res_abs res_top u u_abs u_top u_x u_y v v_x v_y',
    's^-1': 'Omega',
  });
});

test('speed-envelope', () => {
  expect(grouped(speedEnvelope)).toEqual({
    '1': 'alpha_i i k k_top s_i theta_best theta_worst v_ratio',
    'm s^-1': 'u_max u_turn v_best v_corner v_cut v_far v_keep v_top v_worst',
    's^-1': 'Omega_limit',
  });
});
