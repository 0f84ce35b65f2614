import { describe, expect, test } from 'vitest';
import { stepClimb } from '../../calculators/step-climbing/step-climb.ts';
import { stepPush } from '../../calculators/step-climbing/step-push.ts';
import { stepRunUp } from '../../calculators/step-climbing/step-run-up.ts';
import { fine, getsOver, rollsOver } from '../calculators/step-climbing/wheel-engine.ts';
import { worked } from '../calculators/wheel-kinematics/worked.ts';

/** How far from the law the engine may put the limit with short time steps, in push or in height. */
const off = 0.03;

describe('a free wheel pushed at a step, with short time steps', () => {
  test.each([0.05, 0.1, 0.15, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7])('step of %f of the radius', (h) => {
    const push = worked(stepPush, { r: 1, h, W: 1 }).number('push');
    const trial = { h, mu: 0.6, driven: false };
    expect(getsOver({ ...trial, push: push * (1 - off) }, fine)).toBe(false);
    expect(getsOver({ ...trial, push: push * (1 + off) }, fine)).toBe(true);
  });
});

const frictions = [0.3, 0.5, 0.7, 1];
const pushes = [0, 0.2, 0.4, 0.6];
const grid = frictions.flatMap((mu) => pushes.map((push): [number, number] => [mu, push]));

describe('a driven wheel at a step, with short time steps', () => {
  test.each(grid)('friction %f, push %f of the weight', (mu, push) => {
    const h = worked(stepClimb, { r: 1, h: 0.01, W: 1, H: push, mu }).number('h_most');
    const trial = { push, mu, driven: true };
    expect(getsOver({ ...trial, h: h * (1 + off) }, fine)).toBe(false);
    expect(getsOver({ ...trial, h: h * (1 - off) }, fine)).toBe(true);
  });
});

describe('a free disc that rolls at a step, with short time steps', () => {
  test.each([0.03, 0.06, 0.1, 0.15, 0.2, 0.25, 0.3, 0.35])('step of %f of the radius', (h) => {
    const speed = worked(stepRunUp, { r: 1, h, gyr: Math.SQRT1_2, g: 1 }).number('v_min');
    expect(rollsOver(h, speed * (1 - off), fine)).toBe(false);
    expect(rollsOver(h, speed * (1 + off), fine)).toBe(true);
  });
});
