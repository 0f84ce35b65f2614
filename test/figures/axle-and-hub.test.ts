import { describe, expect, test } from 'vitest';
import { drawn, valuesOf, type Arrow, type Place } from './drawn.ts';

const lengthOf = ({ from, tip }: Arrow): number => Math.hypot(tip.x - from.x, tip.y - from.y);

describe('an axle with its loads', () => {
  const id = 'shaft-overhang';
  const cases = [{}, { psi: '30 deg', L_b: '30 mm' }, { F1: '90 N', F2: '140 N', psi: '-120 deg' }];

  /** From the side and again along the axle: inner bearing, outer bearing, load 1, load 2. */
  const forces = (texts: Readonly<Record<string, string>>): readonly (readonly [string, Arrow, Arrow])[] => {
    const figure = drawn(id, texts);
    const [inner, outer, innerEnd, outerEnd] = figure.arrows('force travel');
    const [one, two, oneEnd, twoEnd] = figure.arrows('force');
    if (!inner || !outer || !innerEnd || !outerEnd || !one || !two || !oneEnd || !twoEnd) {
      throw new Error('an arrow is missing');
    }
    return [
      ['R_in', inner, innerEnd],
      ['R_out', outer, outerEnd],
      ['F1', one, oneEnd],
      ['F2', two, twoEnd],
    ];
  };

  test.each(cases)('its forces are drawn to one scale, twice: %j', (texts) => {
    const all = forces(texts);
    const size = (name: string): number => Number(valuesOf(id, texts)[name]);
    const scale = lengthOf(all[1]?.[1] as Arrow) / size('R_out');
    for (const [name, side, end] of all) {
      expect(lengthOf(side)).toBeCloseTo(size(name) * scale, 1);
      expect(lengthOf(end)).toBeCloseTo(size(name) * scale, 1);
    }
  });

  test.each(cases)('seen along the axle they leave nothing over: %j', (texts) => {
    const left = forces(texts).reduce(
      (sum, [, , { from, tip }]) => ({ x: sum.x + tip.x - from.x, y: sum.y + tip.y - from.y }),
      { x: 0, y: 0 },
    );
    expect(Math.hypot(left.x, left.y)).toBeLessThan(0.1);
  });

  const moment = (texts: Readonly<Record<string, string>>): readonly Place[] => drawn(id, texts).path('.geometry.area');

  test('the moment is deepest under the outer bearing, and nothing at the ends', () => {
    const places = moment({});
    const [first] = places;
    const deepest = places.reduce((best, one) => (one.y > best.y ? one : best));
    const [, outer] = drawn(id, {}).arrows('force travel');
    expect(deepest.x).toBeCloseTo(outer?.tip.x ?? NaN, 1);
    expect(places.at(-1)?.y).toBe(first?.y);
  });

  test('loads that pull against each other put it under load 1', () => {
    const texts = { psi: '180 deg', F1: '150 N', a1: '20 mm' };
    const deepest = moment(texts).reduce((best, one) => (one.y > best.y ? one : best));
    const [one] = drawn(id, texts).arrows('force');
    expect(deepest.x).toBeCloseTo(one?.tip.x ?? NaN, 1);
  });
});

describe('a hub on its shaft', () => {
  const id = 'hub-grip';
  const bars = (figure: ReturnType<typeof drawn>): readonly Arrow[] =>
    [...figure.arrows('force'), ...figure.arrows('force travel')].filter(
      ({ from, tip }) => from.y === tip.y && from.x === -34,
    );

  test('the torques are drawn to one scale with the one wanted', () => {
    const figure = drawn(id);
    const values = valuesOf(id);
    const held = ['T_screws', 'T_flat', 'T_press', 'T_warm'].map((name) => Number(values[name]));
    const lengths = bars(figure).map(lengthOf);
    const scale = Math.max(...lengths) / Math.max(...held);
    const rising = (list: readonly number[]): number[] => [...list].sort((a, b) => a - b);
    rising(held).forEach((one, k) => {
      expect((rising(lengths)[k] ?? NaN) / scale).toBeCloseTo(one, 1);
    });
    const [wanted] = figure.path('path.geometry.line');
    expect(((wanted?.x ?? NaN) + 34) / scale).toBeCloseTo(Number(values['T']), 1);
  });

  test('there are as many screws as given', () => {
    expect(drawn(id, { screws: '3' }).all('.force.area').length).toBe(3);
  });

  test('the flat is as wide and as deep as it is', () => {
    const figure = drawn(id, { hold: 'a flat on the shaft', h_f: '2 mm' });
    const scale = 112 / 24;
    const [from, to] = figure.path('path.pile');
    const width = 1e3 * Number(valuesOf(id, { h_f: '2 mm' })['w_f']);
    expect((from?.x ?? NaN) - (to?.x ?? NaN)).toBeCloseTo(width * scale, 1);
    expect(from?.y).toBeCloseTo(-74 - 2 * scale, 1);
  });

  test('a press fit is pressed from all round', () => {
    const figure = drawn(id, { hold: 'a press fit' });
    const inward = figure.arrows('force').filter(({ from, tip }) => {
      const [far, near] = [Math.hypot(from.x, from.y + 74), Math.hypot(tip.x, tip.y + 74)];
      return near < far && far <= 56;
    });
    expect(inward.length).toBe(12);
  });
});
