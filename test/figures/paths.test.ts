import { describe, expect, test } from 'vitest';
import { drawn, placesOf, valuesOf, type Drawing, type Place } from './drawn.ts';

describe('reckoned paths', () => {
  const id = 'dead-reckoning';

  /** For each panel: the top of the true path, its foot, and the end of the path as reckoned. */
  function panels(drawing: Drawing): { readonly goal: Place; readonly start: Place; readonly end: Place }[] {
    const reckoned = drawing.all('.velocity.line.free').map((path) => placesOf(path).at(-1));
    return drawing.arrows('velocity travel').flatMap(({ from, tip }, k) => {
      const end = reckoned[k];
      return end ? [{ goal: tip, start: from, end }] : [];
    });
  }

  test.each([{}, { e_r: '-3 %', e_d: '-4 %' }, { turns: '7', e_R: '3 %', e_d: '5 %', s: '20 m' }])(
    'the ends lie as far off as the formulas say, to scale: %o',
    (texts: Readonly<Record<string, string>>) => {
      const values = valuesOf(id, texts);
      const found = panels(drawn(id, texts));
      expect(found).toHaveLength(3);
      const off = ['y_turn_first', 'y_turn_mixed', 'y_one'].map((name) => Number(values[name]) / Number(values['s']));
      expect(found.map(({ goal, start, end }) => (goal.x - end.x) / (start.y - goal.y))).toEqual(
        off.map((share) => expect.closeTo(share, 2) as unknown),
      );
    },
  );

  test('an error to the left is drawn to the left, its opposite to the right', () => {
    for (const { goal, end } of panels(drawn(id))) expect(end.x).toBeLessThan(goal.x);
    for (const { goal, end } of panels(drawn(id, { e_r: '-1 %', e_R: '2 %', e_d: '-1 %' }))) {
      expect(end.x).toBeGreaterThan(goal.x);
    }
  });

  test('without errors every path ends where the robot is', () => {
    for (const { goal, end } of panels(drawn(id, { e_r: '0', e_R: '0', e_d: '0' }))) expect(end).toEqual(goal);
  });
});

describe('bent path', () => {
  const id = 'straightness';
  const endOf = (texts: Readonly<Record<string, string>>): Place => {
    const end = drawn(id, texts).path('.velocity.shaft.travel').at(-1);
    if (!end) throw new Error('no path');
    return end;
  };

  test('straight ahead is up the page, and it strays to the left or right by the sign of the result', () => {
    const left = endOf({ theta: '0', e_w: '0, -2, 0 %' });
    const right = endOf({ theta: '0', e_w: '0, 2, 0 %' });
    expect(Number(valuesOf(id, { theta: '0', e_w: '0, -2, 0 %' })['y_left'])).toBeGreaterThan(0);
    expect(left.y).toBeLessThan(0);
    expect(left.x).toBeLessThan(0);
    expect(right.x).toBeCloseTo(-left.x, 1);
  });

  test('the end is as far off the line as the formula says, to scale', () => {
    const texts = { theta: '0', e_w: '3, -1, 2, 1 %', s: '6 m' };
    const values = valuesOf(id, texts);
    const end = endOf(texts);
    expect(-end.x / -end.y).toBeCloseTo(Number(values['y_left']) / Number(values['s']), 2);
  });

  test('the wheels that matter most are ringed, and no others', () => {
    const rings = (texts: Readonly<Record<string, string>>): number => drawn(id, texts).all('circle.geometry').length;
    expect(rings({ theta: '90 deg' })).toBe(1);
    expect(rings({ theta: '0 deg' })).toBe(2);
    expect(rings({ theta: '45 deg', e_w: '1, 0, 0, 0 %' })).toBe(4);
  });
});
