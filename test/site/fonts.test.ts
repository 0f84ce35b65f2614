import { expect, test } from 'vitest';
import { missingGlyphs } from '../../src/setup/missing-glyphs.ts';
import { folder } from './built.ts';

/** Raised digits of powers of ten: neither the text face nor the fonts of formulas have them, every system's own face has. */
const raised = /[⁰¹⁴⁵⁶⁷⁸⁹⁻]/;

test('the fonts can show every character of every formula', { timeout: 60_000 }, async () => {
  const missing = await missingGlyphs(folder);
  expect(missing.filter(({ character }) => !raised.test(character))).toEqual([]);
});
