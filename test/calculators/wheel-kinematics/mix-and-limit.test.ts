import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bodyMotion } from '../../../calculators/wheel-kinematics/body-motion.ts';
import { mixAndLimit } from '../../../calculators/wheel-kinematics/mix-and-limit.ts';
import { rotate, type Vector } from './plane-robot.ts';
import { worked } from './worked.ts';

const stick = fc.double({ min: -1, max: 1, noNaN: true });
const band = fc.double({ min: 0, max: 0.9, noNaN: true });

const inputs = fc.record({
  stick_x: stick,
  stick_y: stick,
  stick_turn: stick,
  dead: band,
  least: band,
  full: fc.integer({ min: 1, max: 1_000_000 }),
  n: fc.integer({ min: 3, max: 8 }),
  alpha: fc.double({ min: -6, max: 6, noNaN: true }),
});
type Inputs = typeof inputs extends fc.Arbitrary<infer T> ? T : never;

const holds = (law: (chosen: Inputs) => void): void => fc.assert(fc.property(inputs, law));
const sizes = (list: readonly number[]): number[] => list.map(Math.abs);

describe('a second way, by rotation matrices', () => {
  /** Beyond the dead band a stick’s push is stretched to fill what is left; it points where it pointed. */
  function outside(push: Vector, dead: number): Vector {
    const length = Math.hypot(...push);
    const angle = Math.atan2(push[1], push[0]);
    return length <= dead ? [0, 0] : rotate([Math.min(1, (length - dead) / (1 - dead)), 0], angle);
  }

  /** The largest share of everything that no wheel refuses, by halving. */
  function largestShare(wanted: readonly number[]): number {
    const fits = (share: number): boolean => wanted.every((one) => Math.abs(share * one) <= 1);
    let [low, high] = [0, 1];
    if (fits(high)) return high;
    for (let k = 0; k < 60; k++) {
      const middle = (low + high) / 2;
      if (fits(middle)) low = middle;
      else high = middle;
    }
    return low;
  }

  function commands({ stick_x, stick_y, stick_turn, dead, n, alpha }: Inputs): number[] {
    const travel = outside([stick_x, stick_y], dead);
    const [turn] = outside([stick_turn, 0], dead);
    const wanted = Array.from({ length: n }, (_, k) => {
      const [, along] = rotate(travel, -(alpha + (2 * Math.PI * k) / n));
      return along + turn;
    });
    const share = largestShare(wanted);
    return wanted.map((one) => share * one);
  }

  test('gives the same commands', () => {
    holds((chosen) => {
      const command = worked(mixAndLimit, chosen).list('command');
      expect(command.length).toBe(chosen.n);
      commands(chosen).forEach((wanted, k) => {
        expect(command[k]).toBeCloseTo(wanted, 11);
      });
    });
  });
});

describe('laws', () => {
  test('no wheel is asked for more than all it has, and at the limit one is asked for that', () => {
    holds((chosen) => {
      const result = worked(mixAndLimit, chosen);
      const top = Math.max(...sizes(result.list('command')));
      expect(top).toBeLessThanOrEqual(1 + 1e-12);
      if (result.number('mix_top') > 1) expect(top).toBeCloseTo(1, 12);
      else expect(result.number('k_limit')).toBe(1);
    });
  });

  test('the commands together move the robot as asked, all parts scaled alike', () => {
    holds((chosen) => {
      const result = worked(mixAndLimit, chosen);
      const motion = worked(bodyMotion, { omega: result.list('command'), alpha: chosen.alpha, R: 1, r: 1 });
      const scale = result.number('k_limit');
      expect(motion.number('v_x')).toBeCloseTo(scale * result.number('want_x'), 11);
      expect(motion.number('v_y')).toBeCloseTo(scale * result.number('want_y'), 11);
      expect(motion.number('Omega')).toBeCloseTo(scale * result.number('want_turn'), 11);
      expect(motion.number('res_top')).toBeCloseTo(0, 11);
    });
  });

  test('the travel asked for points where the stick points', () => {
    holds((chosen) => {
      const result = worked(mixAndLimit, chosen);
      const [x, y] = [result.number('want_x'), result.number('want_y')];
      expect(x * chosen.stick_y - y * chosen.stick_x).toBeCloseTo(0, 12);
      expect(x * chosen.stick_x + y * chosen.stick_y).toBeGreaterThanOrEqual(0);
      expect(Math.hypot(x, y)).toBeLessThanOrEqual(1 + 1e-12);
    });
  });

  test('inside the dead band every motor is off', () => {
    holds((chosen) => {
      const shrink = 0.7 * chosen.dead;
      const result = worked(mixAndLimit, {
        ...chosen,
        stick_x: shrink * chosen.stick_x,
        stick_y: shrink * chosen.stick_y,
        stick_turn: shrink * chosen.stick_turn,
      });
      expect([...result.list('command'), ...result.list('duty'), ...result.list('level')].every((x) => x === 0)).toBe(
        true,
      );
    });
  });

  test('at the edge of the dead band nothing jumps', () => {
    holds((chosen) => {
      const angle = Math.atan2(chosen.stick_y, chosen.stick_x);
      const beyond = 1e-9;
      const [stick_x, stick_y] = rotate([chosen.dead + beyond, 0], angle);
      const stick_turn = Math.sign(chosen.stick_turn) * (chosen.dead + beyond);
      const command = worked(mixAndLimit, { ...chosen, stick_x, stick_y, stick_turn }).list('command');
      // Beyond the band either stick gives what it is beyond it, stretched by at most 1/(1 − 0.9).
      expect(Math.max(...sizes(command))).toBeLessThanOrEqual(2.001 * 10 * beyond);
    });
  });

  test('a duty is nil, or between the least that moves a motor and full', () => {
    holds((chosen) => {
      const result = worked(mixAndLimit, chosen);
      const [duty, level, direction] = [result.list('duty'), result.list('level'), result.list('direction')];
      result.list('command').forEach((command, k) => {
        const [d = NaN, l = NaN] = [duty[k], level[k]];
        if (command === 0) expect(d).toBe(0);
        else expect(d >= chosen.least && d <= 1 + 1e-12, String(d)).toBe(true);
        expect(Number.isInteger(l) && l >= 0 && l <= chosen.full, String(l)).toBe(true);
        expect(direction[k]).toBe(command < 0 ? 0 : 1);
      });
    });
  });
});

describe('limits', () => {
  const still = { stick_x: 0, stick_y: 0, stick_turn: 0, dead: 0.08, least: 0.12, full: 255, n: 3, alpha: 0 };

  test('full turning is full duty on every wheel', () => {
    const result = worked(mixAndLimit, { ...still, stick_turn: -1 });
    expect(result.list('command')).toEqual([-1, -1, -1]);
    expect(result.list('duty')).toEqual([1, 1, 1]);
    expect(result.list('level')).toEqual([255, 255, 255]);
    expect(result.list('direction')).toEqual([0, 0, 0]);
  });

  test('a stick in a corner counts as fully pushed', () => {
    const result = worked(mixAndLimit, { ...still, stick_x: 1, stick_y: 1 });
    expect(Math.hypot(result.number('want_x'), result.number('want_y'))).toBeCloseTo(1, 12);
  });

  test('a wheel whose axle lies along the travel gets nothing', () => {
    const result = worked(mixAndLimit, { ...still, stick_x: 1 });
    expect(result.list('command')[0]).toBe(0);
    expect(result.list('duty')[0]).toBe(0);
  });
});
