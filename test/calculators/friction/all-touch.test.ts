import fc from 'fast-check';
import { expect, test } from 'vitest';
import { allTouch } from '../../../calculators/friction/all-touch.ts';
import { worked } from '../wheel-kinematics/worked.ts';
import { ring, springLoads } from './spring-legs.ts';
import { between } from '../evenly.ts';

test.each([3, 4, 5, 6, 8])('%i wheels, against springs that push and never pull', (n) => {
  fc.assert(
    fc.property(between(-0.004, 0.004), between(5000, 30_000), (e_floor, k_w) => {
      const legs = ring(n, 0, 0.2, (k) => (k === 0 ? e_floor : 0));
      const loads = springLoads(legs, k_w, 9 * 9.80665, 0, 0);
      fc.pre(loads.every(Number.isFinite) && loads.filter((load) => load === 0).length <= 1);
      worked(allTouch, { n, m: 9, k_w, e_floor })
        .list('N_i')
        .forEach((load, k) => expect(load).toBeCloseTo(loads[k] ?? NaN, 6));
    }),
  );
});

test('three wheels always touch with the same loads', () => {
  const result = worked(allTouch, { n: 3, e_floor: 0.05 });
  expect(result.number('spread')).toBe(0);
});

test('a stiff four-wheeled robot stands on three wheels at least, and no load is below zero', () => {
  const loads = worked(allTouch, { n: 4, k_w: 1e6, e_floor: 0.01 }).list('N_i');
  expect(loads.filter((load) => load > 1e-6).length).toBe(2);
  expect(Math.min(...loads)).toBeGreaterThan(-1e-6);
});
