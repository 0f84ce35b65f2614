import { describe, expect, test } from 'vitest';
import { drawn, valuesOf, type Arrow } from './drawn.ts';

const lengthOf = ({ from, tip }: Arrow): number => Math.hypot(tip.x - from.x, tip.y - from.y);

/** Weight, push and the force of the edge. */
function forces(id: string, texts: Readonly<Record<string, string>>): [Arrow, Arrow, Arrow] {
  const [weight, push, edge] = drawn(id, texts).arrows('force');
  if (!weight || !push || !edge) throw new Error('an arrow is missing');
  return [weight, push, edge];
}

describe.each([
  ['step-climb', { h: '30 mm', H: '20 N' }],
  ['round-obstacle', { d_c: '25 mm', H: '30 N' }],
  ['gap-crossing', { width: '70 mm', H: '15 N' }],
])('forces on a wheel: %s', (id, texts) => {
  const [weight, push, edge] = forces(id, texts);
  const values = valuesOf(id, texts);
  const [W, H, psi] = [Number(values['W']), Number(values['H']), Number(values['psi'])];

  test('are drawn to one scale, and add up to nothing', () => {
    expect(lengthOf(push) / lengthOf(weight)).toBeCloseTo(H / W, 1);
    expect(edge.tip.x - edge.from.x).toBeCloseTo(-lengthOf(push), 0);
    expect(edge.tip.y - edge.from.y).toBeCloseTo(-lengthOf(weight), 0);
  });

  test('meet the wheel at the contact angle', () => {
    const axle = weight.from;
    expect(Math.atan2(edge.from.x - axle.x, edge.from.y - axle.y)).toBeCloseTo(psi, 2);
  });

  test('leave the line to the axle by the grip that is used', () => {
    const lean = Math.atan2(edge.from.x - edge.tip.x, edge.from.y - edge.tip.y);
    expect(Math.tan(psi - lean)).toBeCloseTo(Number(values['grip_used']), 1);
  });
});

test('a free wheel is pushed along the line from the edge to the axle', () => {
  const [weight, , edge] = forces('step-push', { h: '20 mm' });
  const lean = Math.atan2(edge.from.x - edge.tip.x, edge.from.y - edge.tip.y);
  expect(lean).toBeCloseTo(Math.atan2(edge.from.x - weight.from.x, edge.from.y - weight.from.y), 2);
});

test('the lines of a ramp and a crest end at the body', () => {
  const drawing = drawn('clearance', {});
  const body = drawing.all('rect.body')[0];
  if (!body) throw new Error('no body');
  const of = (name: string): number => Number(body.getAttribute(name));
  const underside = of('y') + of('height');
  const ends = drawing
    .all('path.line')
    .map((line) => (line.getAttribute('d') ?? '').split('L')[1]?.split(' ').map(Number) ?? []);
  expect(ends.length).toBe(3);
  for (const [, y] of ends) expect(y).toBeCloseTo(underside, 1);
  expect(ends[0]?.[0]).toBeCloseTo(of('x') + of('width'), 1);
});
