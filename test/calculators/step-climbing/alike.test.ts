import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clearance } from '../../../calculators/step-climbing/clearance.ts';
import { gapCrossing } from '../../../calculators/step-climbing/gap-crossing.ts';
import { roundObstacle } from '../../../calculators/step-climbing/round-obstacle.ts';
import { stepClimb } from '../../../calculators/step-climbing/step-climb.ts';
import { stepPush } from '../../../calculators/step-climbing/step-push.ts';
import { worked } from '../wheel-kinematics/worked.ts';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const wheels = fc.record({ r: between(0.02, 0.3), W: between(1, 100), H: between(0, 50), mu: between(0.1, 1.5) });

describe('a cable and a gap are as hard as some step', () => {
  test('a cable', () => {
    fc.assert(
      fc.property(wheels, between(0.02, 1.8), ({ r, W, H, mu }, share) => {
        const cable = worked(roundObstacle, { r, W, H, mu, d_c: share * r });
        const step = worked(stepClimb, { r, W, H, mu, h: cable.number('h_same') });
        expect(step.number('psi')).toBeCloseTo(cable.number('psi'), 9);
        expect(step.number('grip_used')).toBeCloseTo(cable.number('grip_used'), 6);
      }),
    );
  });

  test('the thickest cable and the widest gap are met at the contact of the highest step', () => {
    fc.assert(
      fc.property(wheels, ({ r, W, H, mu }) => {
        const h = worked(stepClimb, { r, W, H, mu, h: r / 10 }).number('h_most');
        const d = worked(roundObstacle, { r, W, H, mu, d_c: r / 10 }).number('d_held');
        const width = worked(gapCrossing, { r, W, H, mu, width: r / 10 }).number('width_most');
        expect((d * r) / (r + d / 2) / r).toBeCloseTo(h / r, 9);
        expect(width / r).toBeCloseTo((2 * Math.sqrt(2 * r * h - h * h)) / r, 6);
      }),
    );
  });

  test('a gap', () => {
    fc.assert(
      fc.property(wheels, between(0.02, 1.9), ({ r, W, H, mu }, share) => {
        const gap = worked(gapCrossing, { r, W, H, mu, width: share * r });
        const step = worked(stepPush, { r, W, h: gap.number('sink') });
        expect(step.number('push') / gap.number('push')).toBeCloseTo(1, 6);
      }),
    );
  });
});

test('the push of step-push is the one with which step-climb asks for no drive', () => {
  fc.assert(
    fc.property(wheels, between(0.01, 0.95), ({ r, W, mu }, share) => {
      const H = worked(stepPush, { r, W, h: share * r }).number('push');
      expect(worked(stepClimb, { r, W, H, mu, h: share * r }).number('f_drive') / W).toBeCloseTo(0, 9);
    }),
  );
});

/** The angle at which a line that touches the wheel below reaches a point of the body, found by halving. */
function touchingAngle(r: number, ahead: number, above: number): number {
  let [low, high] = [0, Math.PI / 2];
  for (let k = 0; k < 60; k++) {
    const angle = (low + high) / 2;
    const over = r + (above - r) * Math.cos(angle) - ahead * Math.sin(angle);
    if (over > 0) low = angle;
    else high = angle;
  }
  return low;
}

test('ramp and crest are where a line under the wheel reaches the body', () => {
  const bodies = fc.record({ r: between(0.03, 0.1), under: between(0.005, 0.1), ahead: between(1.1, 4) });
  fc.assert(
    fc.property(bodies, ({ r, under, ahead }) => {
      const [low, out] = [Math.min(under, 1.5 * r), ahead * r];
      const said = worked(clearance, { r, h: r / 10, under: low, overhang: out, base: 2 * out });
      const angle = touchingAngle(r, out, low);
      expect(said.number('approach')).toBeCloseTo(angle, 9);
      expect(said.number('breakover')).toBeCloseTo(2 * angle, 9);
    }),
  );
});
