import { afterAll, describe, expect, test } from 'vitest';
import { toValues } from '../../../calculators/inputs.ts';
import { mixAndLimit } from '../../../calculators/wheel-kinematics/mix-and-limit.ts';
import { DraggedBody } from '../wheel-kinematics/dragged-body.ts';
import { wheelsRound } from '../wheel-kinematics/plane-robot.ts';
import { compile, type Answers } from './c-program.ts';
import type { Point } from './points.ts';
import { Scratch, toolOf } from './tools.ts';

/**
 * The C code for the demo robot as a microcontroller runs it: it sets a direction bit and a timer count for each motor. The
 * motors here stand still up to the least duty and then follow it in proportion. A body of the rigid-body engine planck,
 * which knows nothing of mixing, is dragged by the wheels.
 */
const usual = toValues(mixAndLimit.given, {});
const number = (name: string): number => Number(usual[name]);
const R = 0.2;
const topRim = 0.9;
/** A count is one of 255, so a command is off by at most half of one, over the stretch from the least duty up. */
const countError = 0.5 / number('full') / (1 - number('least'));

const gcc = toolOf('gcc');
const scratch = new Scratch();
afterAll(() => scratch.remove());

const headings = Array.from({ length: 24 }, (_, k) => (k * Math.PI) / 12);
const pushes = [0.3, 0.7, 1];
const turnings = [-1, -0.4, 0, 0.5, 1];

const points: Point[] = headings.flatMap((heading) =>
  pushes.flatMap((push) =>
    turnings.map((stick_turn) => ({
      ...usual,
      stick_x: push * Math.cos(heading),
      stick_y: push * Math.sin(heading),
      stick_turn,
    })),
  ),
);

/** What a motor does of its direction bit and timer count, as a share of full speed. */
function motorSpeed(direction: number, level: number): number {
  const duty = level / number('full');
  const moving = Math.max(0, (duty - number('least')) / (1 - number('least')));
  return direction === 1 ? moving : -moving;
}

function motionOf(answer: Answers['answers'][number]): { x: number; y: number; turn: number; top: number } {
  const { direction = [], level = [] } = answer ?? {};
  const levels = [level].flat();
  const speeds = [direction].flat().map((bit, wheel) => motorSpeed(bit, levels[wheel] ?? NaN));
  const body = new DraggedBody(
    wheelsRound(number('n'), number('alpha'), R).map(({ at, drive }) => ({ at, push: drive })),
  );
  body.roll(speeds.map((speed) => speed * topRim));
  const { travel, turn } = body.motion;
  return {
    x: travel[0] / topRim,
    y: travel[1] / topRim,
    turn: (turn * R) / topRim,
    top: Math.max(...speeds.map(Math.abs)),
  };
}

/** The stick without its dead band: straight from rest at its edge to all at its end. */
const beyond = (push: number): number => Math.max(0, Math.min(1, (push - number('dead')) / (1 - number('dead'))));

describe.skipIf(gcc.skip)(`the mixing code in C${gcc.note}`, () => {
  test('drives a body the way the sticks point, saturated or not', { timeout: 30_000 }, () => {
    const { answers } = compile(mixAndLimit, scratch)(points);
    expect(answers).toHaveLength(points.length);
    let saturated = 0;
    points.forEach((point, k) => {
      const { stick_x = 0, stick_y = 0, stick_turn = 0 } = point as Record<string, number>;
      const push = Math.hypot(stick_x, stick_y);
      const asked = [
        (beyond(push) * stick_x) / push,
        (beyond(push) * stick_y) / push,
        Math.sign(stick_turn) * beyond(Math.abs(stick_turn)),
      ] as const;
      const { x, y, turn, top } = motionOf(answers[k]);
      const size = Math.hypot(...asked);
      const share = (x * asked[0] + y * asked[1] + turn * asked[2]) / size ** 2;
      if (share < 0.98) {
        saturated++;
        expect(top).toBeCloseTo(1, 2);
      }
      // Travel and turning keep their direction and their proportion, whatever was scaled away.
      const allowed = 2 * countError;
      expect(Math.hypot(x - share * asked[0], y - share * asked[1], turn - share * asked[2])).toBeLessThan(allowed);
      expect(share).toBeLessThan(1 + allowed / size);
      expect(share).toBeGreaterThan(0.3);
    });
    expect(saturated).toBeGreaterThan(50);
    expect(points.length - saturated).toBeGreaterThan(50);
  });
});
