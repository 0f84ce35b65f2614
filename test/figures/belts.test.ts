import { describe, expect, test } from 'vitest';
import { drawn, valuesOf, type Arrow } from './drawn.ts';

const lengthOf = ({ from, tip }: Arrow): number => Math.hypot(tip.x - from.x, tip.y - from.y);
const leanOf = ({ from, tip }: Arrow): number => Math.atan2(from.y - tip.y, tip.x - from.x);

describe('belt pulls', () => {
  const id = 'belt-tension';
  const arrows = (texts: Readonly<Record<string, string>>): Arrow[] => {
    const figure = drawn(id, texts);
    return [...figure.arrows('force'), ...figure.arrows('force travel')];
  };

  test.each([{}, { pre: '1.4' }, { z1: '40', z2: '15', pre: '0.9' }])(
    'both pulls and the load are as long to each other as they are large, and point where they pull: %j',
    (texts) => {
      const [tight, slack, load] = arrows(texts);
      if (!tight || !slack || !load) throw new Error('an arrow is missing');
      const size = (name: string): number => Number(valuesOf(id, texts)[name]);
      const scale = lengthOf(load) / size('F_shaft');
      expect(lengthOf(tight)).toBeCloseTo(size('F_t') * scale, 0);
      expect(lengthOf(slack)).toBeCloseTo(size('F_s') * scale, 0);
      expect(leanOf(tight)).toBeCloseTo(size('phi_b'), 2);
      expect(leanOf(slack)).toBeCloseTo(-size('phi_b'), 1);
      expect(leanOf(load)).toBeCloseTo(size('lean'), 2);
    },
  );

  test('a slack side without a pull has no arrow and hangs', () => {
    expect(arrows({ pre: '0.3' }).length).toBe(2);
    const belt = (texts: Readonly<Record<string, string>>): string =>
      drawn(id, texts).all('path.rim')[0]?.getAttribute('d') ?? '';
    expect(belt({ pre: '0.3' })).toContain('Q');
    expect(belt({ pre: '0.6' })).not.toContain('Q');
  });
});

test('the pulls of a span are drawn to one scale', () => {
  const texts = { f: '100 Hz' };
  const figure = drawn('belt-note', texts);
  const [heard, octave, wanted] = ['force travel', 'force', 'geometry'].map((kind) => figure.arrows(kind)[0]);
  if (!heard || !octave || !wanted) throw new Error('an arrow is missing');
  expect(lengthOf(heard) / lengthOf(octave)).toBeCloseTo(4, 1);
  expect(lengthOf(heard) / lengthOf(wanted)).toBeCloseTo(Number(valuesOf('belt-note', texts)['F_share']), 1);
});

describe('a rope round a post', () => {
  const id = 'belt-grip';

  test('its pulls are drawn to one scale', () => {
    const figure = drawn(id, { F_s: '40 N' });
    const [slack] = figure.arrows('force');
    const [held] = figure.arrows('force travel');
    if (!slack || !held) throw new Error('an arrow is missing');
    expect(lengthOf(held) / lengthOf(slack)).toBeCloseTo(Number(valuesOf(id, {})['k_grip']), 1);
  });

  test.each([90, 180, 360, 700])('its ends part by the angle it goes round: %i°', (wrap) => {
    const figure = drawn(id, { wrap: `${wrap} deg`, F_s: '60 N' });
    const [slack] = figure.arrows('force');
    const [held] = figure.arrows('force travel');
    if (!slack || !held) throw new Error('an arrow is missing');
    // Unbent, the ends point away from each other; the slack one is turned by the wrap, clockwise on the page.
    const turned = leanOf(slack) + Math.PI - leanOf(held);
    expect(Math.cos(turned - (wrap * Math.PI) / 180)).toBeCloseTo(1, 3);
  });
});
