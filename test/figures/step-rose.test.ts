import { expect, test } from 'vitest';
import { drawn, valuesOf, type Arrow } from './drawn.ts';

const id = 'step-by-heading';
const lengthOf = ({ from, tip }: Arrow): number => Math.hypot(tip.x - from.x, tip.y - from.y);

test.each([{}, { theta: '65 deg' }, { theta: '0 deg', h: '3 mm' }, { q: '15 mm', theta: '25 deg' }])(
  'the arrow ends on the curve, and the circle is the step to the same scale: %j',
  (texts) => {
    const figure = drawn(id, texts);
    const [arrow] = figure.arrows('geometry travel');
    const circle = figure.all('circle.keep')[0];
    if (!arrow || !circle) throw new Error('nothing drawn');
    const values = valuesOf(id, texts);
    const scale = lengthOf(arrow) / Number(values['h_most']);
    expect(Number(circle.getAttribute('r')) / scale).toBeCloseTo(Number(values['h']), 4);
    const near = figure.path('.geometry.area').map(({ x, y }) => Math.hypot(x - arrow.tip.x, y - arrow.tip.y));
    expect(Math.min(...near)).toBeLessThan(0.1);
  },
);

test('sectors carry the number of the wheel that stops the robot', () => {
  const labels = (texts: Readonly<Record<string, string>>): string[] =>
    drawn(id, texts)
      .all('text.label')
      .map((label) => label.textContent);
  const [wheels, sectors] = [labels({}).slice(0, 3), labels({}).slice(3)];
  expect(wheels).toEqual(['1', '2', '3']);
  expect(sectors).toHaveLength(6);
  for (const wheel of wheels) expect(sectors.filter((one) => one === wheel)).toHaveLength(2);
});

test('dots stand where a motor stops it: nowhere with a strong one, everywhere with a weak one, else in places', () => {
  const dots = (T_w: string): number => drawn(id, { T_w }).all('.dot').length;
  const strong = dots('20 N m');
  expect(strong).toBe(0);
  expect(dots('0.1 N m')).toBe(73);
  expect(dots('0.9 N m')).toBeGreaterThan(0);
  expect(dots('0.9 N m')).toBeLessThan(73);
});
