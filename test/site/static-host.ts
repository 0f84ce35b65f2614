import { readFile, stat } from 'node:fs/promises';
import { createServer, type Server, type ServerResponse } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';

const CONTENT_TYPES: Record<string, string> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.mjs': 'text/javascript; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
  '.xml': 'application/xml',
};

type Kind = 'file' | 'folder' | 'nothing';

/** Serves a folder as a plain web host does: index.html for a folder, 404.html for what is not there. */
export function createStaticHost(folder: string): Server {
  return createServer((request, response) => {
    answer(folder, request.url ?? '/', response).catch((error: unknown) => {
      response.writeHead(500).end(String(error));
    });
  });
}

async function answer(folder: string, url: string, response: ServerResponse): Promise<void> {
  const { pathname, search } = new URL(url, 'http://localhost');
  const path = join(folder, normalize(decodeURIComponent(pathname)));
  const kind = await kindOf(path);
  if (kind === 'folder' && !pathname.endsWith('/')) {
    response.writeHead(301, { location: `${pathname}/${search}` }).end();
    return;
  }
  const file = kind === 'folder' ? join(path, 'index.html') : path;
  if ((await kindOf(file)) === 'file') await send(response, 200, file);
  else await sendNotFound(folder, response);
}

async function kindOf(path: string): Promise<Kind> {
  try {
    return (await stat(path)).isDirectory() ? 'folder' : 'file';
  } catch {
    return 'nothing';
  }
}

async function sendNotFound(folder: string, response: ServerResponse): Promise<void> {
  const page = join(folder, '404.html');
  if ((await kindOf(page)) === 'file') await send(response, 404, page);
  else response.writeHead(404).end();
}

async function send(response: ServerResponse, status: number, file: string): Promise<void> {
  const body = await readFile(file);
  const type = CONTENT_TYPES[extname(file)] ?? 'application/octet-stream';
  // Names with a hash of the content never change their meaning: a visitor's browser keeps the files.
  const kept = file.includes(`${sep}_astro${sep}`) ? { 'cache-control': 'max-age=31536000, immutable' } : {};
  response.writeHead(status, { 'content-type': type, 'content-length': body.length, ...kept }).end(body);
}
