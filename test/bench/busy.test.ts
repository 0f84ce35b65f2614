import { expect, test } from 'vitest';
import { busyNote } from './busy.ts';

test('a machine is busy when it has as much to do as it has processors', () => {
  expect(busyNote(1.9, 2)).toBeUndefined();
  expect(busyNote(2, 2)).toContain('load 2.0 on 2 processors');
});
