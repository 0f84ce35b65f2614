import { describe, expect, test } from 'vitest';
import { drawn, placesOf, valuesOf, type Drawing, type Place } from './drawn.ts';

const valueOf = (id: string, texts: Readonly<Record<string, string>>, name: string): number =>
  Number(valuesOf(id, texts)[name]);

const centreOf = (drawing: Drawing, selector: string): Place => {
  const found = drawing.root.querySelector(selector);
  if (!found) throw new Error(`nothing drawn: ${selector}`);
  const [low, high] = placesOf(found);
  if (!low || !high) throw new Error(`no places: ${selector}`);
  return { x: (low.x + high.x) / 2, y: (low.y + high.y) / 2 };
};

describe('motor curves', () => {
  const id = 'motor-point';
  const shares = (texts: Readonly<Record<string, string>>, kind: string): Place => {
    const drawing = drawn(id, texts);
    const [corner, other] = placesOf(drawing.all('rect.body')[0] as Element);
    if (!corner || !other) throw new Error('no frame');
    const dot = centreOf(drawing, `circle.${kind}.dot`);
    return { x: (dot.x - corner.x) / (other.x - corner.x), y: (other.y - dot.y) / (other.y - corner.y) };
  };

  test.each([{}, { V: '6 V', I_0: '0.5 A', T: '0.2 N m' }, { T: '0 N m' }, { T: '5 N m' }])(
    'the dots stand where torque, speed, current and power are: %j',
    (texts) => {
      const value = (name: string): number => valueOf(id, texts, name);
      const stalled = Math.min(1, value('stall_share'));
      const speed = shares(texts, 'velocity');
      const current = shares(texts, 'force');
      const power = shares(texts, 'geometry');
      for (const { x } of [speed, current, power]) expect(x).toBeCloseTo(stalled, 4);
      expect(speed.y).toBeCloseTo(value('omega_m') / value('omega_free'), 4);
      expect(current.y).toBeCloseTo(value('I_m') / value('I_stall'), 4);
      expect(power.y).toBeCloseTo((0.8 * value('T_m') * value('omega_m')) / value('P_top'), 4);
    },
  );

  test('a load beyond stall is told', () => {
    expect(drawn(id, { T: '5 N m' }).words()).toContain('stalls');
    expect(drawn(id).words()).not.toContain('stalls');
  });
});

test('a thermometer shows end and limit over the air to one scale', () => {
  for (const texts of [{}, { I_m: '2.5 A' }, { I_m: '0.4 A' }]) {
    const value = (name: string): number => valueOf('motor-heat', texts, name);
    const drawing = drawn('motor-heat', texts);
    const [top, foot] = placesOf(drawing.all('rect.force')[0] as Element);
    const limit = drawing.path('.geometry.line')[0];
    if (!top || !foot || !limit) throw new Error('a mark is missing');
    const share = (value('Theta_end') - value('Theta_a')) / (value('Theta_max') - value('Theta_a'));
    expect((foot.y - top.y) / (foot.y - limit.y)).toBeCloseTo(share, 1);
  }
});

test('each pair of teeth stands above or below the speed wanted as it is faster or slower', () => {
  const drawing = drawn('gear-ratio');
  const line = drawing.path('.velocity.line')[0];
  const v_i = valuesOf('gear-ratio')['v_i'];
  if (!line || typeof v_i !== 'object') throw new Error('nothing to compare');
  const dots = drawing.all('circle.velocity.dot').map((dot) => Number(dot.getAttribute('cy')));
  expect(dots.length).toBe(v_i.length);
  dots.forEach((y, k) => expect(Math.sign(line.y - y)).toBe(Math.sign((v_i[k] ?? 0) - valueOf('gear-ratio', {}, 'v'))));
});
