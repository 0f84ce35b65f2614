import { describe, expect, test } from 'vitest';
import { formatNumber } from '../../calculators/quantity/format.ts';
import { roundFactor } from '../../src/figures/enlarge.ts';
import { drawn, placesOf, valuesOf, type Arrow } from './drawn.ts';

const up = ({ from, tip }: Arrow): number => from.y - tip.y;

describe('angled rollers', () => {
  const id = 'angled-rollers';
  const rims = (texts: Readonly<Record<string, string>>): number[] =>
    drawn(id, texts).arrows('velocity').slice(-4).map(up);

  test('straight ahead, every rim arrow points ahead; backwards, back', () => {
    for (const rim of rims({ v_x: '0.4', v_y: '0', Omega: '0' })) expect(rim).toBeGreaterThan(0);
    for (const rim of rims({ v_x: '-0.4', v_y: '0', Omega: '0' })) expect(rim).toBeLessThan(0);
  });

  test('rim arrows are as long to each other as the rim speeds', () => {
    const texts = { v_x: '0.2', v_y: '0.7', Omega: '20 deg/s' };
    const speeds = [valuesOf(id, texts)['u'] ?? []].flat();
    const scale = (rims(texts)[0] ?? NaN) / (speeds[0] ?? NaN);
    expect(scale).toBeGreaterThan(0);
    expect(rims(texts)).toEqual(speeds.map((u) => expect.closeTo(u * scale, 0) as unknown));
  });

  test('the other mounting slants every roller the other way', () => {
    const slants = (pattern: string): number[] =>
      drawn(id, { pattern })
        .all('.roller')
        .map(placesOf)
        .map(([from, to]) => Math.sign(((to?.x ?? NaN) - (from?.x ?? NaN)) * ((to?.y ?? NaN) - (from?.y ?? NaN))));
    const there = slants('rollers point at the centre');
    expect(there.length).toBeGreaterThan(12);
    expect(slants('rollers point round the centre')).toEqual(there.map((slant) => -slant));
    // Front left, seen from above: from the front left to the rear right, so towards the centre.
    expect(there[0]).toBe(1);
  });

  test('the lever is drawn to the scale of the wheelbase, where the axes on the floor meet', () => {
    const figure = drawn(id);
    const [lever] = figure.all('.geometry.line').filter((line) => line.getAttribute('class') === 'geometry line');
    const [from, to] = lever ? placesOf(lever) : [];
    const axes = figure.all('.geometry.free.line').slice(0, 2).map(placesOf);
    const base = ((axes[1]?.[0]?.y ?? NaN) - (axes[0]?.[0]?.y ?? NaN)) / 2;
    const values = valuesOf(id);
    expect(((to?.x ?? NaN) - (from?.x ?? NaN)) / base).toBeCloseTo(
      Number(values['lever']) / Number(values['half_base']),
      2,
    );
    for (const axis of axes) expect(axis[1]).toEqual(to);
    for (const [start, end] of axes) {
      const slope = Math.abs(((end?.x ?? NaN) - (start?.x ?? NaN)) / ((end?.y ?? NaN) - (start?.y ?? NaN)));
      expect(slope).toBeCloseTo(Number(values['cot_gamma']), 2);
    }
  });
});

describe('rim gaps', () => {
  const id = 'wheel-gap';

  test('the drop in the enlargement is the drop by the factor that is named', () => {
    const figure = drawn(id, { gap: '20 mm' });
    const values = valuesOf(id, { gap: '20 mm' });
    const [, factor = ''] = /heights × (\S+)/.exec(figure.words().join(' ')) ?? [];
    const [from, to] = figure.path('.geometry.line');
    const rim = 74 / Number(values['r']);
    expect((to?.y ?? NaN) - (from?.y ?? NaN)).toBeCloseTo(Number(values['drop']) * rim * Number(factor), 1);
  });

  test('no gap: a whole rim and no enlargement', () => {
    const figure = drawn(id, { gap: '0 mm' });
    expect(figure.all('.rim')).toHaveLength(1);
    expect(figure.all('.rim[stroke-dasharray]')).toEqual([]);
    expect(figure.words()).toContain('no gap, no drop');
  });

  test.each([
    [1, '1'],
    [1.99, '1'],
    [2, '2'],
    [49.9, '20'],
    [50, '50'],
    [0.7, '0.5'],
    [0.003, '0.002'],
    [987654, '500000'],
  ])('an enlargement of at most %d is named as %s', (most, named) => {
    expect(formatNumber(roundFactor(most), 3)).toBe(named);
  });
});

describe('pole zones', () => {
  const id = 'pole-contact';
  const width = (texts: Readonly<Record<string, string>>, kind: string): number => {
    const xs = drawn(id, texts)
      .path(`.${kind}.band`)
      .map(({ x }) => x);
    return Math.max(...xs) - Math.min(...xs);
  };

  test('a roller that stands further out carries a wider share; the zone stays', () => {
    expect(width({ proud: '1 mm' }, 'force')).toBeGreaterThan(width({ proud: '0.1 mm' }, 'force') * 1.5);
    expect(width({ proud: '1 mm' }, 'geometry')).toBeCloseTo(width({ proud: '0.1 mm' }, 'geometry'), 1);
  });

  test('both poles have a zone and a carried share', () => {
    // One sample of each stands in the key.
    expect(drawn(id).all('.geometry.band')).toHaveLength(3);
    expect(drawn(id).all('.force.band')).toHaveLength(3);
  });
});

describe('count ruler', () => {
  const id = 'speed-resolution';

  test('the arrow ends between the whole numbers about the count', () => {
    const figure = drawn(id);
    const [travel] = figure.arrows('velocity travel');
    const places = figure.all('text').flatMap((text) => {
      const [at] = placesOf(text);
      return at && /^\d+$/.test(text.textContent) ? [{ count: Number(text.textContent), x: at.x }] : [];
    });
    const below = Math.floor(Number(valuesOf(id)['n_dt']));
    const x = (count: number): number => places.find((place) => place.count === count)?.x ?? NaN;
    expect(travel?.tip.x).toBeGreaterThan(x(below));
    expect(travel?.tip.x).toBeLessThan(x(below + 1));
  });

  test('the two readings that are possible are a step apart; at rest there is one, nought', () => {
    const dots = (texts: Readonly<Record<string, string>>): number[] =>
      drawn(id, texts)
        .all('.velocity.dot')
        .slice(-2)
        .map((dot) => Number(dot.getAttribute('cy')));
    const [low = NaN, high = NaN] = dots({});
    expect(low - high).toBe(22);
    const [one, other] = dots({ v: '0 m/s' });
    expect(one).toBe(other);
  });

  test('too long numbers are left out', () => {
    expect(
      drawn(id, { dt: '100 s', v: '100 m/s' })
        .words()
        .filter((words) => /^\d+$/.test(words)),
    ).toEqual([]);
  });
});
