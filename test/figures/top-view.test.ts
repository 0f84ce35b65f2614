import { expect, test } from 'vitest';
import { drawn, type Arrow } from './drawn.ts';

const reach = ({ from, tip }: Arrow): readonly [x: number, y: number] => [
  Math.round(tip.x - from.x),
  Math.round(tip.y - from.y),
];

test('straight ahead is up the page, left is left', () => {
  const travel = (theta: string): (readonly [number, number])[] =>
    drawn('wheel-speeds', { theta, Omega: '0' }).arrows('velocity travel').map(reach);
  expect(travel('0 deg')).toEqual([[0, -50]]);
  expect(travel('90 deg')).toEqual([[-50, 0]]);
});

test('turning counter-clockwise, every rim arrow runs counter-clockwise; the other way, clockwise', () => {
  const rounds = (Omega: string): number[] =>
    drawn('wheel-speeds', { v: '0', Omega, n: '5' })
      .arrows('velocity')
      .slice(-5)
      .map(({ from, tip }) => Math.sign(from.y * (tip.x - from.x) - from.x * (tip.y - from.y)));
  expect(rounds('45 deg/s')).toEqual([1, 1, 1, 1, 1]);
  expect(rounds('-45 deg/s')).toEqual([-1, -1, -1, -1, -1]);
});
