import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { poleContact } from '../../../calculators/wheel-kinematics/pole-contact.ts';
import { degree, worked } from './worked.ts';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

const inputs = fc
  .record({
    r: between(0.02, 0.1),
    zone: between(0.02, 0.9),
    round: between(0.02, 0.9),
    out: between(0, 0.15),
    n: fc.integer({ min: 3, max: 8 }),
  })
  .map(({ r, zone, round, out, n }) => ({ r, w: zone * r, crown: round * r, proud: out * r, n }));
type Inputs = typeof inputs extends fc.Arbitrary<infer T> ? T : never;

const holds = (law: (chosen: Inputs) => void): void => fc.assert(fc.property(inputs, law));

/** How far below the centre the roller of the pole at `pole` reaches: a circle round its own middle, full all round. */
const rollerDepth = ({ r, crown, proud }: Inputs, pole: number): number =>
  Math.max(
    ...Array.from({ length: 721 }, (_, k) => {
      const around = ((k - 360) * Math.PI) / 360;
      return (r - crown + proud) * Math.cos(pole) + crown * Math.cos(around);
    }),
  );

const shellPoints = 20_000;

/** How far below the centre the shell reaches, from points all round it but for the zones at the poles. */
function shellDepth({ r, w }: Inputs, pole: number): number {
  let deepest = -r;
  for (let k = 0; k < shellPoints; k++) {
    const fromPole = (k * 2 * Math.PI) / shellPoints;
    const isShell = Math.abs(r * Math.sin(fromPole)) >= w;
    if (isShell) deepest = Math.max(deepest, r * Math.cos(fromPole + pole));
  }
  return deepest;
}

const isCarried = (chosen: Inputs, pole: number): boolean =>
  Math.max(rollerDepth(chosen, pole), rollerDepth(chosen, pole + Math.PI)) > shellDepth(chosen, pole);

describe('figures of our own, from a script written apart from the calculator', () => {
  const ball = { r: 0.04, w: 0.006, crown: 0.005, n: 3 };

  test.each([
    [0, 0.05],
    [0.2, 0.072],
    [0.5, 0.107],
    [1, 0.15],
  ])('a ball of 40 mm, its roller %d mm proud', (proud, carried) => {
    const result = worked(poleContact, { ...ball, proud: proud / 1000 });
    expect(result.number('zone')).toBeCloseTo(0.096, 3);
    expect(result.number('carried')).toBeCloseTo(carried, 3);
  });
});

describe('a ball of many points, turned', () => {
  test('stands on a roller up to the angle said, and not beyond', () => {
    fc.assert(
      fc.property(inputs, (chosen) => {
        const chi = worked(poleContact, chosen).number('chi');
        // The shell’s edge is found to one of its points. Roller and edge part no slower than the edge turns down, so the
        // angle where they are level is found to one point too; two of them decide.
        const hair = (2 * 2 * Math.PI) / shellPoints;
        const inside = [0, 0.3, 0.6, 1].map((share) => share * (chi - hair)).filter((pole) => pole >= 0);
        const outside = [0, 0.1, 0.4, 1].map((share) => chi + hair + share * (Math.PI / 2 - chi - hair));
        expect(inside.map((pole) => isCarried(chosen, pole))).toEqual(inside.map(() => true));
        expect(outside.map((pole) => isCarried(chosen, pole))).toEqual(outside.map(() => false));
      }),
      { numRuns: 25 },
    );
  });

  test.each([0, 0.0002, 0.001, 0.003])('stands on a roller for the share of angles said, %d m proud', (proud) => {
    const chosen: Inputs = { r: 0.06, w: 0.009, crown: 0.008, proud, n: 3 };
    const angles = 240;
    const poles = Array.from({ length: angles }, (_, k) => ((k + 0.5) * 2 * Math.PI) / angles);
    const share = poles.filter((pole) => isCarried(chosen, pole)).length / angles;
    // The roller takes over and gives up twice each a turn; each of the four is found to one sample.
    expect(Math.abs(worked(poleContact, chosen).number('carried') - share)).toBeLessThanOrEqual(4 / angles);
  });

  test('the shell’s edge has the clearance said when the wheel stands on its pole', () => {
    holds((chosen) => {
      const clear = worked(poleContact, chosen).number('clear');
      const height = chosen.r + chosen.proud;
      // The edge is found to one sample, over which the shell falls by at most r a radian.
      const tolerance = (chosen.r * 2 * Math.PI) / shellPoints;
      expect(Math.abs(height - shellDepth(chosen, 0) - clear)).toBeLessThanOrEqual(tolerance);
    });
  });
});

describe('laws', () => {
  test('a roller further out carries no less', () => {
    holds((chosen) => {
      const further = worked(poleContact, { ...chosen, proud: chosen.proud + 1e-4 });
      expect(further.number('carried')).toBeGreaterThanOrEqual(worked(poleContact, chosen).number('carried') - 1e-12);
    });
  });

  test('a flush roller carries in the middle of the zone, but not all of it', () => {
    holds((chosen) => {
      const result = worked(poleContact, { ...chosen, proud: 0 });
      expect(result.number('carried')).toBeGreaterThan(0);
      expect(result.number('carried')).toBeLessThan(result.number('zone'));
    });
  });

  test('nothing jumps where the roller begins to carry beyond the zone', () => {
    holds((chosen) => {
      const { r, w, crown } = chosen;
      const beta = Math.asin(w / r);
      const proud = (r - crown) / Math.cos(beta) - (r - crown);
      const [before, after] = [0.999_999, 1.000_001].map((share) =>
        worked(poleContact, { ...chosen, proud: proud * share }).number('chi'),
      );
      expect(before).toBeCloseTo(beta, 4);
      expect(after).toBeCloseTo(beta, 4);
    });
  });

  test('some wheel stands on a pole as often as not all of them do not', () => {
    holds((chosen) => {
      const result = worked(poleContact, chosen);
      const carried = result.number('carried');
      const none = Array.from({ length: chosen.n }, () => 1 - carried).reduce((product, x) => product * x, 1);
      expect(result.number('some')).toBeCloseTo(1 - none, 12);
      expect(carried).toBeLessThanOrEqual(result.number('some') + 1e-12);
    });
  });
});

describe('limits', () => {
  test('a zone as wide as the ball, or a crown as round, is refused', () => {
    expect(() => worked(poleContact, { r: 0.01, w: 0.01, crown: 0.005 })).toThrow(/half-width/);
    expect(() => worked(poleContact, { r: 0.01, w: 0.005, crown: 0.01 })).toThrow(/crown radius/);
  });

  test('a zone of 30° either side takes a third of all angles', () => {
    const result = worked(poleContact, { r: 0.1, w: 0.05, crown: 0.01 });
    expect(result.number('beta') / degree).toBeCloseTo(30, 12);
    expect(result.number('zone')).toBeCloseTo(1 / 3, 12);
  });
});
