import astro from 'eslint-plugin-astro';
import { defineConfig, globalIgnores } from 'eslint/config';
import tseslint from 'typescript-eslint';
import architecture from './eslint.architecture.js';

const ASTRO_FILES = ['**/*.astro', '**/*.astro/*.js', '**/*.astro/*.ts'];

export default defineConfig(
  globalIgnores(['dist/', '.astro/', '.bench/', 'coverage/']),
  tseslint.configs.strictTypeChecked,
  {
    name: 'crabwise',
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    rules: {
      eqeqeq: 'error',
      'no-warning-comments': 'error',
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-confusing-void-expression': [
        'error',
        { ignoreArrowShorthand: true, ignoreVoidReturningFunctions: true },
      ],
      // Intl.Segmenter, which the rule proposes for strings, depends on the locale.
      '@typescript-eslint/no-misused-spread': ['error', { allow: [{ from: 'lib', name: 'string' }] }],
      '@typescript-eslint/no-unused-vars': ['error', { ignoreRestSiblings: true }],
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
    },
  },
  ...astro.configs['flat/recommended'],
  {
    name: 'crabwise/astro',
    files: ASTRO_FILES,
    // The types of .astro files are checked by `astro check`.
    extends: [tseslint.configs.disableTypeChecked],
  },
  ...architecture,
);
