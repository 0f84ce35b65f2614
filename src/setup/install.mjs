// Runs before anything is installed: Node built-ins only, and an old Node will do.
import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ensureDependencies } from './dependencies.mjs';
import { ensureBrowser } from './fetch-browser.mjs';
import { say } from './say.mjs';
import { isAtLeast, parseVersion } from './version.mjs';

const OLDEST_NODE = /** @type {const} */ ([20, 16, 0]);
const ROOT = resolve(dirname(fileURLToPath(import.meta.url)), '..', '..');

function nodeIsNewEnough() {
  const version = parseVersion(process.versions.node);
  if (version && isAtLeast(version, OLDEST_NODE)) return true;
  say(`Node ${process.versions.node} is too old: ${OLDEST_NODE.join('.')} or newer is needed to install.`);
  return false;
}

const wantsBrowser = process.argv.includes('--browser');
const ready = nodeIsNewEnough() && ensureDependencies(ROOT) && (!wantsBrowser || ensureBrowser(ROOT));
process.exitCode = ready ? 0 : 1;
