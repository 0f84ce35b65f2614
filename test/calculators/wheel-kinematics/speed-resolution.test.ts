import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { speedResolution } from '../../../calculators/wheel-kinematics/speed-resolution.ts';
import { worked } from './worked.ts';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

const inputs = fc.record({
  counts: fc.integer({ min: 1, max: 4096 }),
  ratio: between(1, 100),
  r: between(0.01, 0.3),
  dt: between(0.001, 0.5),
  v: between(0.001, 3),
});
type Inputs = typeof inputs extends fc.Arbitrary<infer T> ? T : never;

/** Counts an encoder has given when the motor has turned so far, starting somewhere between two counts. */
const counted = (motorTurns: number, counts: number, phase: number): number => Math.floor(motorTurns * counts + phase);

/** The speed a program finds that subtracts the counts of two readings. */
function measured({ counts, ratio, r, dt, v }: Inputs, reading: number, phase: number): number {
  const motorTurns = (time: number): number => ((v * time) / (2 * Math.PI * r)) * ratio;
  const read = (time: number): number => counted(motorTurns(time), counts, phase);
  const wheelTurns = (read((reading + 1) * dt) - read(reading * dt)) / counts / ratio;
  return (wheelTurns * 2 * Math.PI * r) / dt;
}

describe('an encoder that counts', () => {
  test('measures a speed within one step, in whole steps', () => {
    fc.assert(
      fc.property(inputs, fc.nat(50), between(0, 1), (chosen, reading, phase) => {
        const step = worked(speedResolution, chosen).number('v_step');
        const speed = measured(chosen, reading, phase);
        expect(Math.abs(speed - chosen.v)).toBeLessThanOrEqual(step * (1 + 1e-9));
        expect(speed / step).toBeCloseTo(Math.round(speed / step), 6);
      }),
    );
  });

  test('jumps between the two steps next to the speed, and gives its mean in the long run', () => {
    const chosen: Inputs = { counts: 48, ratio: 30, r: 0.06, dt: 0.02, v: 0.6 };
    const result = worked(speedResolution, chosen);
    const many = Array.from({ length: 5000 }, (_, reading) => measured(chosen, reading, 0.3));
    const steps = new Set(many.map((speed) => Math.round(speed / result.number('v_step'))));
    expect([...steps].sort((a, b) => a - b)).toEqual([
      Math.floor(result.number('n_dt')),
      Math.ceil(result.number('n_dt')),
    ]);
    const mean = many.reduce((sum, x) => sum + x, 0) / many.length;
    expect(Math.abs(mean - chosen.v)).toBeLessThan(result.number('v_step') / many.length + 1e-12);
  });
});

describe('laws', () => {
  const holds = (law: (chosen: Inputs) => void): void => fc.assert(fc.property(inputs, law));

  test('reading half as often halves the step', () => {
    holds((chosen) => {
      const result = worked(speedResolution, chosen);
      const slower = worked(speedResolution, { ...chosen, dt: 2 * chosen.dt });
      expect(slower.number('v_step') * 2).toBeCloseTo(result.number('v_step'), 12);
      expect(slower.number('n_dt')).toBeCloseTo(2 * result.number('n_dt'), 6);
    });
  });

  test('the rim step is the wheel step times the radius, and a turn is all its counts', () => {
    holds((chosen) => {
      const result = worked(speedResolution, chosen);
      expect((result.number('omega_step') * chosen.r) / result.number('v_step')).toBeCloseTo(1, 12);
      const around = result.number('d_count') * result.number('wheel_counts');
      expect(around / (2 * Math.PI * chosen.r)).toBeCloseTo(1, 12);
    });
  });

  test('the counts between readings are one over the share of the step', () => {
    holds((chosen) => {
      const result = worked(speedResolution, chosen);
      expect(result.number('n_dt') * result.number('v_step')).toBeCloseTo(chosen.v, 12);
      // Below a thousandth of a count the share is held at 1000, where it has long lost its meaning.
      if (result.number('n_dt') > 1e-3) expect(result.number('n_dt') * result.number('dv_share')).toBeCloseTo(1, 9);
    });
  });
});

describe('limits', () => {
  test('at rest no count comes and no share is told', () => {
    const result = worked(speedResolution, { v: 0 });
    expect(result.number('n_dt')).toBe(0);
    expect(result.number('dv_share')).toBe(0);
  });
});
