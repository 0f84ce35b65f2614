import { describe, expect, test } from 'vitest';
import { drawn, valuesOf, type Arrow } from './drawn.ts';

const lengthOf = ({ from, tip }: Arrow): number => Math.hypot(tip.x - from.x, tip.y - from.y);
const listed = (values: ReturnType<typeof valuesOf>, name: string): readonly number[] => [values[name] ?? NaN].flat();

describe.each([
  ['drive-force', 'F_all'],
  ['parking', 'F_up'],
])('pushes of the wheels: %s', (id, whole) => {
  test.each([{}, { n: '4', alpha: '20 deg' }, { alpha: '10 deg', slope: '9 deg' }])('to one scale: %j', (texts) => {
    const figure = drawn(id, texts);
    const values = valuesOf(id, texts);
    const [push] = figure.arrows('force travel');
    if (!push) throw new Error('an arrow is missing');
    const scale = lengthOf(push) / Number(values[whole]);
    const drawnLengths = figure.arrows('force').map((one) => lengthOf(one) / scale);
    listed(values, 'f_i').forEach((force, k) => {
      expect(drawnLengths[k]).toBeCloseTo(Math.abs(force), 0);
    });
  });
});

test('the slope pulls downhill, the other way from uphill', () => {
  const [pull] = drawn('parking', { up: '0 deg' }).arrows('force travel');
  expect(pull && pull.tip.y > pull.from.y).toBe(true);
});

describe('speeding up', () => {
  const curve = (texts: Record<string, string>) => drawn('speed-up', texts).path('.travel.line');

  test('climbs all the way and ends at the share asked for', () => {
    const places = curve({ reach: '80 %' });
    places.slice(1).forEach(({ y }, k) => {
      expect(y).toBeLessThanOrEqual(places[k]?.y ?? NaN);
    });
    const [floor, end] = [places[0], places.at(-1)];
    const final = drawn('speed-up', { reach: '80 %' }).path('.velocity.free')[0];
    if (!floor || !end || !final) throw new Error('nothing drawn');
    expect((floor.y - end.y) / (floor.y - final.y)).toBeCloseTo(0.8, 2);
  });

  test('grip is marked only where it is the limit', () => {
    expect(drawn('speed-up', {}).all('.force.dot').length).toBe(1);
    expect(drawn('speed-up', { mu: '3' }).all('.force.dot').length).toBe(0);
  });
});

test('the three ways to a stop are drawn to one scale, the longest heavy', () => {
  const texts = { C_rr: '0.2' };
  const figure = drawn('stopping', texts);
  const values = valuesOf('stopping', texts);
  const [coast] = figure.arrows('velocity travel');
  const [grip, motor] = figure.arrows('velocity');
  if (!coast || !grip || !motor) throw new Error('an arrow is missing');
  const scale = lengthOf(coast) / Number(values['s_coast']);
  expect(lengthOf(grip) / scale).toBeCloseTo(Number(values['s_grip']), 2);
  expect(lengthOf(motor) / scale).toBeCloseTo(Number(values['s_motor']), 2);
});
