import { describe, expect, test } from 'vitest';
import { drawn, placesOf, valuesOf, type Drawing, type Place } from './drawn.ts';

const far = (a: Place, b: Place): number => Math.hypot(a.x - b.x, a.y - b.y);

/** Teeth are the short strokes of one path. */
function strokes(drawing: Drawing, kind: string): number {
  const path = drawing.all('path').find((one) => {
    const places = placesOf(one);
    const [from, to] = places;
    return one.getAttribute('class') === `${kind} line` && places.length > 4 && from && to && far(from, to) < 7;
  });
  return path ? placesOf(path).length / 2 : 0;
}

describe.each([
  { id: 'belt-length', texts: {} },
  { id: 'belt-length', texts: { z1: '36', z2: '12', C: '60 mm' } },
  { id: 'belt-length', texts: { z1: '20', z2: '20', C: '90 mm' } },
  { id: 'belt-centre', texts: {} },
  { id: 'belt-centre', texts: { z1: '12', z2: '60', z_b: '70' } },
])('$id drawn for $texts', ({ id, texts }) => {
  const drawing = drawn(id, texts);
  const values = valuesOf(id, texts);
  const value = (name: string): number => Number(values[name]);

  test('has every tooth of the belt, and the whole ones in mesh apart', () => {
    const smaller = Math.min(value('z1'), value('z2'));
    const C = value(id === 'belt-length' ? 'C_b' : 'C');
    const lean = Math.asin(Math.abs(value('D2') - value('D1')) / (2 * C));
    const inMesh = Math.floor((smaller * (Math.PI - 2 * lean)) / (2 * Math.PI) + 1e-9);
    expect(strokes(drawing, 'velocity')).toBe(inMesh);
    expect(strokes(drawing, 'geometry')).toBe(value('z_b') - inMesh);
  });

  test('is to scale', () => {
    const circles = drawing.all('circle.wheel').map((circle) => Number(circle.getAttribute('r')));
    const shafts = drawing.all('circle.dot').map((circle) => Number(circle.getAttribute('cx')));
    const [r1 = NaN, r2 = NaN] = circles;
    const [x1 = NaN, x2 = NaN] = shafts;
    const C = value(id === 'belt-length' ? 'C_b' : 'C');
    expect(r1 / r2).toBeCloseTo(value('D1') / value('D2'), 2);
    expect((x2 - x1) / r1).toBeCloseTo((2 * C) / value('D1'), 1);
  });
});

test('teeth too close to tell apart are left out', () => {
  expect(strokes(drawn('belt-length', { p: '2 mm', C: '3 m' }), 'geometry')).toBe(0);
});
