import { describe, expect, test } from 'vitest';
import { stepClimb } from '../../../calculators/step-climbing/step-climb.ts';
import { stepPush } from '../../../calculators/step-climbing/step-push.ts';
import { stepRunUp } from '../../../calculators/step-climbing/step-run-up.ts';
import { worked } from '../wheel-kinematics/worked.ts';
import { coarse, fine, getsOver, rollsOver } from './wheel-engine.ts';

/** How far from the law the engine’s usual time step may put the limit, in push or in height. */
const off = 0.05;

describe('a free wheel pushed at a step in the rigid-body engine', () => {
  test.each([0.1, 0.3, 0.5])('needs the push that step-push says: step of %f of the radius', (h) => {
    const push = worked(stepPush, { r: 1, h, W: 1 }).number('push');
    const trial = { h, mu: 0.6, driven: false };
    expect(getsOver({ ...trial, push: push * (1 - off) }, coarse)).toBe(false);
    expect(getsOver({ ...trial, push: push * (1 + off) }, coarse)).toBe(true);
  });
});

describe('a driven wheel at a step in the rigid-body engine', () => {
  test.each([
    [0.6, 0],
    [0.6, 0.4],
    [1, 0.2],
    [0.3, 0.3],
  ])('climbs as high as step-climb says: friction %f, push %f of the weight', (mu, push) => {
    const h = worked(stepClimb, { r: 1, h: 0.01, W: 1, H: push, mu }).number('h_most');
    const trial = { push, mu, driven: true };
    expect(getsOver({ ...trial, h: h * (1 + off) }, coarse)).toBe(false);
    expect(getsOver({ ...trial, h: h * (1 - off) }, coarse)).toBe(true);
  });
});

describe('a free disc that rolls at a step in the rigid-body engine', () => {
  test.each([0.05, 0.1, 0.2, 0.3])('needs the speed that step-run-up says: step of %f of the radius', (h) => {
    const speed = worked(stepRunUp, { r: 1, h, gyr: Math.SQRT1_2, g: 1 }).number('v_min');
    expect(rollsOver(h, speed * (1 - off), fine)).toBe(false);
    expect(rollsOver(h, speed * (1 + off), fine)).toBe(true);
  });
});
