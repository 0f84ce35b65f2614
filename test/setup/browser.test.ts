import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { browserCandidates, findBrowser, isExecutable, launchOptions } from '../../src/setup/browser.mjs';
import { firstErrorIn, isDebian } from '../../src/setup/fetch-browser.mjs';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'crabwise-browser-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

function program(name: string): string {
  const file = join(folder, name);
  writeFileSync(file, '#!/bin/sh\n');
  chmodSync(file, 0o755);
  return file;
}

describe('browserCandidates', () => {
  test('CHROMIUM first, then the usual places, then PATH', () => {
    const PATH = ['/a', '/b'].join(delimiter);
    const candidates = browserCandidates({ platform: 'linux', environment: { CHROMIUM: '/mine', PATH } });
    expect(candidates[0]).toBe('/mine');
    expect(candidates[1]).toBe('/usr/bin/chromium');
    expect(candidates.slice(-8, -5)).toEqual(['/a/chromium', '/b/chromium', '/a/google-chrome']);
  });

  test('without CHROMIUM and PATH only the usual places are left', () => {
    expect(browserCandidates({ platform: 'darwin', environment: {} })).toEqual([
      '/Applications/Chromium.app/Contents/MacOS/Chromium',
      '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    ]);
  });

  test('a platform without usual places has PATH alone', () => {
    expect(browserCandidates({ platform: 'freebsd', environment: { PATH: '/a' } })[0]).toBe('/a/chromium');
  });
});

describe('findBrowser', () => {
  test('takes CHROMIUM before anything else', () => {
    const mine = program('my-browser');
    expect(findBrowser({ platform: 'linux', environment: { CHROMIUM: mine, PATH: '' } })).toBe(mine);
  });

  test('passes over a CHROMIUM that is not there', () => {
    const onPath = program('chromium');
    const environment = { CHROMIUM: join(folder, 'gone'), PATH: folder };
    expect(findBrowser({ platform: 'freebsd', environment })).toBe(onPath);
  });
});

test('neither a folder nor a plain file counts as executable', () => {
  const text = join(folder, 'notes.txt');
  writeFileSync(text, 'not a program');
  chmodSync(text, 0o644);
  expect(isExecutable(folder)).toBe(false);
  expect(isExecutable(text)).toBe(false);
  expect(isExecutable(program('runs'))).toBe(true);
});

test('the sandbox is off for root only', () => {
  expect(launchOptions(true).chromiumSandbox).toBe(false);
  expect(launchOptions(false).chromiumSandbox).toBe(true);
});

test.each([
  ['PRETTY_NAME="Debian GNU/Linux 12 (bookworm)"\nID=debian\n', true],
  ['ID=ubuntu\nID_LIKE=debian\n', false],
  ['', false],
])('Debian is told from %j', (osRelease, expected) => {
  expect(isDebian(osRelease)).toBe(expected);
});

test('of a failed download only the first error is told', () => {
  const output = 'Error: no such host\n    at a.js:1\nError: no such host\n';
  expect(firstErrorIn(output)).toBe('no such host');
  expect(firstErrorIn('')).toBeUndefined();
});
