import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { TestProject } from 'vitest/node';
import { createStaticHost } from './static-host.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Where the built site is served, with a slash at the end. */
    address: string;
    /** The folder it is served from. */
    folder: string;
  }
}

/** SITE=<folder> npm run test:site tests a site built elsewhere. */
const BUILT_SITE = resolve(process.env['SITE'] ?? fileURLToPath(new URL('../../dist/', import.meta.url)));

// Not Astro's preview: its server ends the whole process, with code 0, when standard input ends.
export default async function serve(project: TestProject): Promise<() => void> {
  if (!existsSync(BUILT_SITE)) throw new Error(`There is no ${BUILT_SITE} to test: run npm run build first.`);
  const host = createStaticHost(BUILT_SITE);
  await new Promise<void>((listening) => host.listen(0, '127.0.0.1', listening));
  const place = host.address();
  if (place === null || typeof place === 'string') throw new Error('The server of dist/ has no port.');
  project.provide('address', `http://127.0.0.1:${place.port}/`);
  project.provide('folder', BUILT_SITE);
  return () => {
    host.close();
    host.closeAllConnections();
  };
}
