import { describe, expect, test } from 'vitest';
import { isAtLeast, parseVersion } from '../../src/setup/version.mjs';

describe('parseVersion', () => {
  test('reads what node --version prints', () => {
    expect(parseVersion('v24.21.0\n')).toEqual([24, 21, 0]);
  });

  test('reads a version without the v, and leaves out what follows the patch', () => {
    expect(parseVersion('22.12.0-nightly')).toEqual([22, 12, 0]);
  });

  test.each(['', 'node', 'v24', 'command not found: 1.2.3'])('finds no version in "%s"', (text) => {
    expect(parseVersion(text)).toBeUndefined();
  });
});

describe('isAtLeast', () => {
  test.each([
    [[22, 12, 0], true],
    [[22, 12, 1], true],
    [[22, 13, 0], true],
    [[24, 0, 0], true],
    [[22, 11, 9], false],
    [[21, 99, 99], false],
    [[9, 12, 0], false],
  ] as const)('%j against 22.12.0 is %s', (version, expected) => {
    expect(isAtLeast(version, [22, 12, 0])).toBe(expected);
  });
});
