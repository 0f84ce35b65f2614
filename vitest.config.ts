import { defineConfig } from 'vitest/config';

const SITE_TESTS = 'test/site/**/*.test.ts';
/** Slow grids, beyond what every change must wait for. */
const VERIFICATION = 'test/verify/**/*.test.ts';

export default defineConfig({
  test: {
    // Vitest picks a terser reporter by itself in some environments: one report everywhere.
    reporters: ['default'],
    // The usual leaves one core idle, and the tests in a browser wait more than they work.
    maxWorkers: '100%',
    projects: [
      {
        test: {
          name: 'unit',
          include: ['test/**/*.test.ts'],
          exclude: [SITE_TESTS, VERIFICATION],
          setupFiles: ['test/setup.ts'],
        },
      },
      {
        test: {
          name: 'verify',
          include: [VERIFICATION],
          setupFiles: ['test/setup.ts'],
          testTimeout: 120_000,
        },
      },
      {
        test: {
          name: 'site',
          include: [SITE_TESTS],
          globalSetup: ['test/site/serve.ts'],
          setupFiles: ['test/setup.ts'],
          testTimeout: 30_000,
          hookTimeout: 30_000,
        },
      },
    ],
  },
});
