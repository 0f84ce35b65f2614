import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

const SITE_TESTS = 'test/site/**/*.test.ts';
/** Slow grids, beyond what every change must wait for. */
const VERIFICATION = 'test/verify/**/*.test.ts';

/** Begun last, one of the longest files would leave a core idle at the end; Vitest goes by size where it knows no times. */
class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const isLong = ({ moduleId }: TestSpecification): boolean => /(pages|calculators)-\d\.test\.ts$/.test(moduleId);
    const sorted = await super.sort(files);
    return [...sorted.filter(isLong), ...sorted.filter((file) => !isLong(file))];
  }
}

export default defineConfig({
  test: {
    sequence: { sequencer: LongestFirst },
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
