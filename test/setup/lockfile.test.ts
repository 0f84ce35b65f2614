import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { firstDifference, whyStale } from '../../src/setup/lockfile.mjs';

const wanted = {
  '': { version: '0.1.0' },
  'node_modules/wheel': { version: '1.0.0', integrity: 'sha512-a' },
  'node_modules/wheel-for-windows': { version: '1.0.0', integrity: 'sha512-b', optional: true },
};
const installed = { 'node_modules/wheel': { version: '1.0.0', integrity: 'sha512-a' } };

describe('firstDifference', () => {
  test('none when only an optional package is left out', () => {
    expect(firstDifference(wanted, installed)).toBeUndefined();
  });

  test('a package that is not installed', () => {
    expect(firstDifference(wanted, {})).toBe('node_modules/wheel is not installed');
  });

  test.each([
    { version: '1.0.1', integrity: 'sha512-a' },
    { version: '1.0.0', integrity: 'sha512-z' },
  ])('a package that is another one: %j', (wheel) => {
    expect(firstDifference(wanted, { 'node_modules/wheel': wheel })).toBe('node_modules/wheel has changed');
  });

  test('a package too many', () => {
    const surplus = { ...installed, 'node_modules/rudder': { version: '2.0.0' } };
    expect(firstDifference(wanted, surplus)).toBe('node_modules/rudder is no longer wanted');
  });
});

describe('whyStale', () => {
  let root = '';
  const write = (path: string, content: unknown) => {
    const file = join(root, path);
    mkdirSync(join(file, '..'), { recursive: true });
    writeFileSync(file, JSON.stringify(content));
  };

  beforeEach(() => {
    root = mkdtempSync(join(tmpdir(), 'crabwise-lockfile-'));
    write('package-lock.json', { packages: wanted });
  });
  afterEach(() => {
    rmSync(root, { recursive: true });
  });

  test('before the first install', () => {
    expect(whyStale(root)).toBe('node_modules is missing');
  });

  test('after an install that was broken off', () => {
    write('node_modules/wheel/package.json', {});
    expect(whyStale(root)).toBe('node_modules is incomplete');
  });

  test('after a package was deleted by hand', () => {
    write('node_modules/.package-lock.json', { packages: installed });
    expect(whyStale(root)).toBe('node_modules/wheel is gone');
  });

  test('nothing after a whole install', () => {
    write('node_modules/.package-lock.json', { packages: installed });
    write('node_modules/wheel/package.json', {});
    expect(whyStale(root)).toBeUndefined();
  });
});
