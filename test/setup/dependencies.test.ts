import { delimiter } from 'node:path';
import { expect, test } from 'vitest';
import { withoutPackageBins } from '../../src/setup/dependencies.mjs';

test('npm ci runs with no folder of node_modules on its PATH', () => {
  const before = ['/home/a/crabwise/node_modules/.bin', '/home/node_modules/.bin/', '/usr/bin', '/opt/.bin'];
  expect(withoutPackageBins(before.join(delimiter))).toBe(['/usr/bin', '/opt/.bin'].join(delimiter));
});
