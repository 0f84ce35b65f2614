import { describe, expect, test } from 'vitest';
import { drawn, valuesOf, type Arrow } from './drawn.ts';

const id = 'mix-and-limit';

const reachOf = ({ from, tip }: Arrow): { readonly x: number; readonly y: number } => ({
  x: tip.x - from.x,
  y: tip.y - from.y,
});
const longest = (arrows: readonly Arrow[]): number =>
  Math.max(...arrows.map(reachOf).map(({ x, y }) => Math.hypot(x, y)));

/** Half the track that stands for full command beside a wheel. */
const fullScale = 36;

describe('arrows of the wheels', () => {
  test('each is as long as its command is of full', () => {
    const arrows = drawn(id).arrows('velocity').slice(-3);
    const commands = valuesOf(id)['command'];
    expect(arrows.map(reachOf).map(({ x, y }) => Math.hypot(x, y) / fullScale)).toEqual(
      [commands].flat().map((command) => expect.closeTo(Math.abs(Number(command)), 2) as unknown),
    );
  });

  test('the opposite of every stick turns every arrow round', () => {
    const there = drawn(id).arrows('velocity').slice(-3).map(reachOf);
    const back = drawn(id, { stick_x: '-0.8', stick_y: '-0.6', stick_turn: '-0.3' })
      .arrows('velocity')
      .slice(-3)
      .map(reachOf);
    expect(back).toHaveLength(3);
    for (const [k, { x, y }] of back.entries()) {
      expect(x).toBeCloseTo(-(there[k]?.x ?? NaN), 1);
      expect(y).toBeCloseTo(-(there[k]?.y ?? NaN), 1);
    }
  });

  test('pushed to the left, wheel 1 in front drives to the left', () => {
    const [first] = drawn(id, { stick_x: '0', stick_y: '1', stick_turn: '0' }).arrows('velocity').map(reachOf);
    expect(first?.x).toBeCloseTo(-fullScale, 1);
    expect(first?.y).toBeCloseTo(0, 1);
  });

  test('sticks at rest: dots, no arrows', () => {
    const still = drawn(id, { stick_x: '0', stick_y: '0', stick_turn: '0' });
    expect(still.all('.head')).toEqual([]);
    expect(still.all('.velocity.dot').length).toBeGreaterThanOrEqual(3);
  });
});

describe('what is asked for beyond full', () => {
  const corner = { stick_x: '1', stick_y: '1', stick_turn: '1', n: '4' };

  test('is drawn dashed and longer; what is given never passes full scale', () => {
    const figure = drawn(id, corner);
    const wheels = figure.arrows('velocity').slice(-3);
    expect(longest(wheels)).toBeCloseTo(fullScale, 1);
    expect(longest(figure.arrows('velocity free'))).toBeGreaterThan(fullScale * 1.5);
  });

  test('is not drawn beside the wheels when nothing is scaled', () => {
    const asked = (texts: Record<string, string>): number => drawn(id, texts).arrows('velocity free').length;
    expect(asked(corner)).toBeGreaterThan(4);
    expect(asked({ stick_x: '0.3', stick_y: '0', stick_turn: '0.2' })).toBe(2);
  });

  test('keeps its direction: given and asked-for travel lie on one line', () => {
    const figure = drawn(id, corner);
    const [given] = figure.arrows('velocity travel').map(reachOf);
    const asked = figure.arrows('velocity free')[2];
    if (!given || !asked) throw new Error('no travel drawn');
    const wanted = reachOf(asked);
    expect(given.x * wanted.y - given.y * wanted.x).toBeCloseTo(0, 0);
    expect(Math.hypot(given.x, given.y)).toBeLessThan(Math.hypot(wanted.x, wanted.y));
  });
});
