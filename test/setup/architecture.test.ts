import { Linter } from 'eslint';
import { describe, expect, test } from 'vitest';
import tseslint from 'typescript-eslint';
import architecture from '../../eslint.architecture.js';

const linter = new Linter({ configType: 'flat' });
const parsing: Linter.Config = {
  files: ['**/*.ts'],
  languageOptions: { parser: tseslint.parser },
  plugins: { '@typescript-eslint': tseslint.plugin },
};

function complaints(filename: string, code: string): string[] {
  return linter
    .verify(code, [parsing, ...architecture], { filename })
    .map((message) => message.ruleId ?? message.message);
}

const IMPORTS = '@typescript-eslint/no-restricted-imports';

describe.each([
  ['calculators/a.ts', './b.ts'],
  ['calculators/kinematics/a.ts', '../quantity/b.ts'],
  ['calculators/kinematics/deep/a.ts', '../../quantity/b.ts'],
  ['src/figures/a.ts', './b.ts'],
  ['src/figures/a.ts', '../../calculators/quantity/b.ts'],
  ['src/figures/robot/a.ts', '../b.ts'],
  ['src/figures/robot/a.ts', '../../../calculators/quantity/b.ts'],
  ['src/live/a.ts', '../figures/b.ts'],
  ['src/live/a.ts', '../../calculators/kinematics/b.ts'],
  ['src/pages/a.ts', 'katex'],
  ['src/command/a.ts', 'node:fs'],
])('%s', (file, target) => {
  test(`may import ${target}`, () => {
    expect(complaints(file, `import { b } from '${target}';\nb();`)).toEqual([]);
  });
});

describe.each([
  ['calculators/a.ts', '../src/figures/b.ts'],
  ['calculators/kinematics/a.ts', '../../src/figures/b.ts'],
  ['calculators/kinematics/deep/a.ts', '../../../content/b.ts'],
  ['calculators/a.ts', 'node:fs'],
  ['calculators/a.ts', 'fs'],
  ['calculators/a.ts', 'astro:content'],
  ['calculators/a.ts', 'astro/config'],
  ['calculators/a.ts', 'katex'],
  ['calculators/a.ts', '@observablehq/plot'],
  ['src/figures/a.ts', '../live/b.ts'],
  ['src/figures/robot/a.ts', '../../live/b.ts'],
  ['src/figures/a.ts', '../../calculators/kinematics/b.ts'],
  ['src/figures/robot/a.ts', '../../../calculators/kinematics/b.ts'],
  ['src/figures/a.ts', '@observablehq/plot'],
  ['src/live/a.ts', 'katex'],
  ['src/live/a.ts', 'katex/contrib/auto-render'],
  ['src/live/a.ts', 'node:fs'],
  ['src/live/deep/a.ts', 'fs/promises'],
  ['src/live/a.ts', '@observablehq/plot'],
])('%s', (file, target) => {
  test(`may not import ${target}`, () => {
    expect(complaints(file, `import { b } from '${target}';\nb();`)).toEqual([IMPORTS]);
    expect(complaints(file, `export { b } from '${target}';`)).toEqual([IMPORTS]);
  });
});

test('src/live may load Plot on demand and import its types, but not KaTeX', () => {
  expect(complaints('src/live/a.ts', `await import('@observablehq/plot');`)).toEqual([]);
  expect(complaints('src/live/a.ts', `import type { Markish } from '@observablehq/plot';`)).toEqual([]);
  expect(complaints('src/live/a.ts', `await import('katex');`)).toEqual(['no-restricted-syntax']);
});

describe.each(['calculators/quantity/a.ts', 'src/figures/a.ts', 'src/live/a.ts', 'src/pages/a.ts'])('%s', (file) => {
  test.each(['Math.random();', 'new Date();', 'Date.now();', 'new Intl.NumberFormat();', '(1).toLocaleString();'])(
    'may not say %s',
    (code) => {
      expect(complaints(file, code)).toHaveLength(1);
    },
  );
});
