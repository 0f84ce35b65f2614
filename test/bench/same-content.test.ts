import { expect, test } from 'vitest';
import { difference, type Content } from './same-content.ts';

const page: Content = { prose: 'Awheelrolls.', formulas: ['v', 'u=v'], results: ['1; 2'], words: 3, shapes: 5 };

test('pages that say the same do not differ, whatever their words and shapes', () => {
  expect(difference(page, { ...page, words: 4, shapes: 6 })).toBeUndefined();
});

test.each([
  [{ prose: 'Awheelslides.' }, 'prose: “Awheelrolls.”, by hand “Awheelslides.”'],
  [{ formulas: ['v', 'u=w'] }, 'formula: “u=v”, by hand “u=w”'],
  [{ formulas: ['v'] }, 'formula: “u=v”, by hand “none”'],
  [{ results: ['1; 3'] }, 'results: “1; 2”, by hand “1; 3”'],
])('%j is said to differ', (change, said) => {
  expect(difference(page, { ...page, ...change })).toBe(said);
});
