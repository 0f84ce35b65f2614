import { describe, expect, test } from 'vitest';
import { drawn, valuesOf, type Place } from './drawn.ts';

const far = ({ x, y }: Place): number => Math.hypot(x, y);

describe('grip by heading', () => {
  test.each(['3', '4'])('%s wheels, equal loads: the most any control could get lies on the first slip', (n) => {
    const figure = drawn('most-grip', { n, z: '0 mm' });
    expect(figure.path('.geometry.keep')).toEqual(figure.path('.force.area'));
  });

  test('five wheels: it lies outside, by the ratio of the two on each heading', () => {
    const at = { n: '5', z: '0 mm', theta: '90 deg' };
    const figure = drawn('most-grip', at);
    const [most, slip] = [figure.path('.geometry.keep'), figure.path('.force.area')];
    expect(most).toHaveLength(slip.length);
    most.forEach((place, k) => expect(far(place)).toBeGreaterThan(far(slip[k] ?? { x: NaN, y: NaN })));
    const { a_most, a_slip } = valuesOf('most-grip', at);
    const here = (most.length - 1) / 4;
    expect(far(most[here] ?? { x: NaN, y: NaN }) / far(slip[here] ?? { x: NaN, y: NaN })).toBeCloseTo(
      Number(a_most) / Number(a_slip),
      3,
    );
  });
});

describe('loads on a floor that is not flat', () => {
  const circle = (element: Element, name: string): number => Number(element.getAttribute(name));

  test('the area of a disc is the load', () => {
    const at = { n: '5', e_floor: '1 mm' };
    const { N_i } = valuesOf('all-touch', at);
    const areas = drawn('all-touch', at)
      .all('circle.force')
      .map((disc) => circle(disc, 'r') ** 2);
    const loads = [N_i ?? NaN].flat();
    expect(areas).toHaveLength(5);
    areas.forEach((area, k) => expect(area / (areas[0] ?? NaN)).toBeCloseTo((loads[k] ?? NaN) / (loads[0] ?? NaN), 2));
  });

  test('the ring stands about wheel 1 alone', () => {
    const figure = drawn('all-touch');
    const [ring, ...others] = figure.all('circle.geometry');
    const [first] = figure.all('circle.force');
    expect(others).toEqual([]);
    if (!ring || !first) throw new Error('nothing drawn');
    expect(['cx', 'cy'].map((name) => circle(ring, name))).toEqual(['cx', 'cy'].map((name) => circle(first, name)));
  });
});
