import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { get, type IncomingMessage } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { brotliDecompressSync } from 'node:zlib';
import { buffer } from 'node:stream/consumers';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { serveCompressed, type Host } from './brotli-host.ts';

const folder = mkdtempSync(join(tmpdir(), 'crabwise-brotli-'));
const page = '<p>wheel</p>'.repeat(100);
const font = Buffer.from('a font is compressed already');
let host: Host | undefined;

const ask = (path: string): Promise<IncomingMessage> =>
  new Promise((resolve, reject) => get((host?.address ?? '') + path, resolve).on('error', reject));

beforeAll(async () => {
  writeFileSync(join(folder, 'index.html'), page);
  writeFileSync(join(folder, 'maths.woff2'), font);
  host = await serveCompressed(folder);
});
afterAll(() => {
  host?.close();
  rmSync(folder, { recursive: true });
});

test('a text is sent compressed, with its compressed length', async () => {
  const response = await ask('');
  const body = await buffer(response);
  expect(response.headers).toMatchObject({ 'content-encoding': 'br', 'content-type': 'text/html; charset=utf-8' });
  expect(Number(response.headers['content-length'])).toBe(body.length);
  expect(body.length).toBeLessThan(page.length / 10);
  expect(brotliDecompressSync(body).toString()).toBe(page);
});

test('a font is sent as it is', async () => {
  const response = await ask('maths.woff2');
  expect(await buffer(response)).toEqual(font);
  expect(response.headers['content-encoding']).toBeUndefined();
});

test('what is not there is not found', async () => {
  expect((await ask('nothing.css')).statusCode).toBe(404);
});
