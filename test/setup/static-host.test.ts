import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { createStaticHost } from '../site/static-host.ts';

describe('the host of the site tests', () => {
  const outside = mkdtempSync(join(tmpdir(), 'crabwise-host-'));
  const folder = join(outside, 'dist');
  const host = createStaticHost(folder);
  let address = '';
  const get = (path: string) => fetch(address + path, { redirect: 'manual' });

  beforeAll(async () => {
    mkdirSync(join(folder, 'lesson one'), { recursive: true });
    writeFileSync(join(outside, 'secret.txt'), 'secret');
    writeFileSync(join(folder, 'index.html'), 'home');
    writeFileSync(join(folder, '404.html'), 'lost');
    writeFileSync(join(folder, 'lesson one', 'index.html'), 'lesson');
    writeFileSync(join(folder, 'style.css'), 'p {}');
    await new Promise<void>((listening) => host.listen(0, '127.0.0.1', listening));
    address = `http://127.0.0.1:${(host.address() as AddressInfo).port}`;
  });
  afterAll(() => {
    host.close();
    host.closeAllConnections();
    rmSync(outside, { recursive: true });
  });

  test.each([
    ['/', 200, 'home', 'text/html; charset=utf-8'],
    ['/lesson%20one/', 200, 'lesson', 'text/html; charset=utf-8'],
    ['/style.css?v=1', 200, 'p {}', 'text/css; charset=utf-8'],
    ['/nowhere/', 404, 'lost', 'text/html; charset=utf-8'],
    ['/style.css/', 404, 'lost', 'text/html; charset=utf-8'],
    ['/..%2fsecret.txt', 404, 'lost', 'text/html; charset=utf-8'],
  ])('%s is answered with %i', async (path, status, body, type) => {
    const response = await get(path);
    expect(response.status).toBe(status);
    expect(await response.text()).toBe(body);
    expect(response.headers.get('content-type')).toBe(type);
  });

  test('a folder without its slash is sent on to the address with it', async () => {
    const response = await get('/lesson%20one?part=2');
    expect(response.status).toBe(301);
    expect(response.headers.get('location')).toBe('/lesson%20one/?part=2');
  });
});
