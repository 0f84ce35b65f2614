import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import { promisify } from 'node:util';
import { brotliCompress, constants } from 'node:zlib';

const TEXT_TYPES: Record<string, string> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.svg': 'image/svg+xml',
};
const FONT_TYPE = 'font/woff2';

interface Answer {
  readonly headers: Readonly<Record<string, string | number>>;
  readonly body: Buffer;
}

export interface Host {
  /** With a slash at the end. */
  readonly address: string;
  readonly close: () => void;
}

/** Serves a folder as a good web host does: texts compressed with brotli at its best, each of them only once. */
export async function serveCompressed(folder: string): Promise<Host> {
  const answers = new Map<string, Promise<Answer>>();
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const answer = answers.get(pathname) ?? prepare(folder, pathname);
    answers.set(pathname, answer);
    answer.then(
      ({ headers, body }) => response.writeHead(200, headers).end(body),
      () => response.writeHead(404).end(),
    );
  });
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    close: () => {
      server.close();
      server.closeAllConnections();
    },
  };
}

async function prepare(folder: string, pathname: string): Promise<Answer> {
  const file = join(folder, decodeURIComponent(pathname), pathname.endsWith('/') ? 'index.html' : '');
  const content = await readFile(file);
  const type = TEXT_TYPES[extname(file)];
  const body = type === undefined ? content : await compress(content);
  const encoding = type === undefined ? {} : { 'content-encoding': 'br' };
  return { headers: { 'content-type': type ?? FONT_TYPE, ...encoding, 'content-length': body.length }, body };
}

const compress = (content: Buffer): Promise<Buffer> =>
  promisify(brotliCompress)(content, {
    params: {
      [constants.BROTLI_PARAM_QUALITY]: constants.BROTLI_MAX_QUALITY,
      [constants.BROTLI_PARAM_SIZE_HINT]: content.length,
    },
  });
