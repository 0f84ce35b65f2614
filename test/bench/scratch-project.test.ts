import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { withLessons } from './scratch-project.ts';

test.each([
  [`[{ lessons: ['a/b'] }]`, `[{ lessons: ['a/b','x','y',] }]`],
  [`[{ lessons: [] }]`, `[{ lessons: ['x','y',] }]`],
  [`[{ lessons: ['a/b'] }, { lessons: [\n'c/d',\n] }]`, `[{ lessons: ['a/b'] }, { lessons: ['c/d','x','y',] }]`],
])('lessons are added at the end of the course: %j', (before, after) => {
  expect(withLessons(before, ['x', 'y']).replace(/\[\s+/g, '[')).toBe(after);
});

test('the project lists its lessons in the way that the bench adds to', () => {
  const list = readFileSync(new URL('../../src/modules.ts', import.meta.url), 'utf8');
  expect(withLessons(list, ['bench/lesson-1'])).toContain(`'bench/lesson-1',]`);
});

test('a list that cannot be added to is an error', () => {
  expect(() => withLessons('export const modules = course();', ['x'])).toThrow('no list');
});
