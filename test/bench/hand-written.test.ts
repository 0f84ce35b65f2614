import { expect, test } from 'vitest';
import { withFormulas } from './hand-written.ts';

test('formulas are set where they stand, in the line or on their own', () => {
  const html = withFormulas('<p>Call it \\(v\\).</p><p>\\[u =\n v\\]</p>');
  expect(html.match(/class="katex"/g)).toHaveLength(2);
  expect(html.match(/class="katex-display"/g)).toHaveLength(1);
  expect(html).toMatch(/^<p>Call it <span class="katex">.*<\/span>\.<\/p><p><span class="katex-display">/);
  expect(html).not.toContain('\\(');
});

test('a formula that cannot be set is an error', () => {
  expect(() => withFormulas('\\(\\nonsense\\)')).toThrow('nonsense');
});
