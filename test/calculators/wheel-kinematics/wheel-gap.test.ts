import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { wheelGap } from '../../../calculators/wheel-kinematics/wheel-gap.ts';
import { worked } from './worked.ts';

const turn = 2 * Math.PI;
const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

/** A radius, and gaps that fit round it with some rim between. */
const inputs = fc
  .record({
    r: between(0.01, 0.5),
    gaps: fc.integer({ min: 2, max: 24 }),
    share: between(0.02, 0.98),
    v: between(0.01, 3),
  })
  .map(({ r, gaps, share, v }) => ({ r, gaps, v, gap: 2 * r * Math.sin((share * Math.PI) / gaps) }));
type Inputs = typeof inputs extends fc.Arbitrary<infer T> ? T : never;

const samples = 20_000;

/** Angles of the rim that is there, when the wheel has turned so far. Gap 0 is centred at 0. */
function rim({ r, gap, gaps }: Inputs): readonly number[] {
  const half = Math.asin(gap / 2 / r);
  const pitch = turn / gaps;
  const all = Array.from({ length: samples }, (_, k) => ((k + 0.5) * turn) / samples);
  return all.filter((angle) => Math.abs(angle - pitch * Math.round(angle / pitch)) >= half);
}

/** Height of the axle over the floor: the lowest point of the rim touches it. */
const height = (angles: readonly number[], r: number, turned: number): number =>
  angles.reduce((lowest, angle) => Math.max(lowest, r * Math.cos(angle - turned)), -r);

describe('a rim of many points, rolled', () => {
  test('is lowest over the middle of a gap, by the drop', () => {
    fc.assert(
      fc.property(inputs, (chosen) => {
        const angles = rim(chosen);
        const drop = worked(wheelGap, chosen).number('drop');
        // The edge is found to half a sample; the height over the floor changes by at most r a radian.
        const tolerance = (chosen.r * turn) / samples;
        expect(Math.abs(chosen.r - height(angles, chosen.r, 0) - drop)).toBeLessThanOrEqual(tolerance);
        const pitch = turn / chosen.gaps;
        const heights = Array.from({ length: 8 }, (_, k) => height(angles, chosen.r, (k * pitch) / 8));
        expect(Math.min(...heights)).toBeGreaterThanOrEqual(chosen.r - drop - tolerance);
        expect(Math.max(...heights)).toBeGreaterThanOrEqual(chosen.r - tolerance);
      }),
      { numRuns: 30 },
    );
  });

  test('lacks the share that is gap', () => {
    fc.assert(
      fc.property(inputs, (chosen) => {
        const lacking = 1 - rim(chosen).length / samples;
        // Each edge of each gap is found to one sample.
        const tolerance = (2 * chosen.gaps) / samples;
        expect(Math.abs(worked(wheelGap, chosen).number('gap_share') - lacking)).toBeLessThanOrEqual(tolerance);
      }),
      { numRuns: 30 },
    );
  });
});

describe('laws', () => {
  const holds = (law: (chosen: Inputs) => void): void => fc.assert(fc.property(inputs, law));

  test('half the gap has at most a quarter of the drop, and nearly that when it is narrow', () => {
    holds((chosen) => {
      const result = worked(wheelGap, chosen);
      expect(4 * result.number('drop_half')).toBeLessThanOrEqual(result.number('drop') * (1 + 1e-9));
      const narrow = worked(wheelGap, { ...chosen, gap: chosen.r / 50 });
      expect((4 * narrow.number('drop_half')) / narrow.number('drop')).toBeCloseTo(1, 4);
    });
  });

  test('it bumps once for each gap and turn', () => {
    holds((chosen) => {
      const turnsEachSecond = chosen.v / (turn * chosen.r);
      expect(worked(wheelGap, chosen).number('f_bump') / (chosen.gaps * turnsEachSecond)).toBeCloseTo(1, 12);
    });
  });
});

describe('limits', () => {
  test('no gap, no drop', () => {
    const result = worked(wheelGap, { gap: 0 });
    expect([result.number('drop'), result.number('drop_half'), result.number('gap_share')]).toEqual([0, 0, 0]);
  });

  test.each([3, 4, 6, 8, 12, 1000])('facets all round leave no rim: %d of them', (gaps) => {
    const gap = 2 * 0.05 * Math.sin(Math.PI / gaps);
    const result = worked(wheelGap, { r: 0.05, gap, gaps });
    expect(result.number('gap_share')).toBeCloseTo(1, 9);
    expect(result.number('drop')).toBeCloseTo(0.05 * (1 - Math.cos(Math.PI / gaps)), 12);
  });

  test('a gap as wide as the wheel, or too many of them, is refused', () => {
    expect(() => worked(wheelGap, { r: 0.05, gap: 0.1, gaps: 1 })).toThrow(/smaller than the wheel/);
    expect(() => worked(wheelGap, { r: 0.05, gap: 0.051, gaps: 6 })).toThrow(/do not fit/);
  });
});
