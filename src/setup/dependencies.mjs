import { spawnSync } from 'node:child_process';
import { existsSync, realpathSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { whyStale } from './lockfile.mjs';
import { say } from './say.mjs';
import { isAtLeast, parseVersion } from './version.mjs';

const OLDEST_INSTALLED_NODE = /** @type {const} */ ([22, 12, 0]);
const ON_WINDOWS = process.platform === 'win32';

/**
 * Installs the packages when they are not those of package-lock.json.
 * @param {string} root
 * @returns {boolean} whether they are there and their Node runs
 */
export function ensureDependencies(root) {
  const reason = whyStale(root);
  if (reason !== undefined) {
    say(`${reason}: running npm ci`);
    if (!runNpmCi(root)) {
      say('npm ci failed. See its message above.');
      return false;
    }
  }
  return installedNodeIsNewEnough(root);
}

/** @param {string} root */
function runNpmCi(root) {
  const env = { ...process.env, PATH: withoutPackageBins(process.env['PATH'] ?? '') };
  const run = spawnSync('npm', ['ci', '--include=dev', '--loglevel=error'], {
    cwd: root,
    env,
    stdio: 'inherit',
    shell: ON_WINDOWS,
  });
  return run.status === 0;
}

/**
 * npm ci deletes node_modules: npm itself must not run on the Node in there.
 * @param {string} path
 */
export function withoutPackageBins(path) {
  return path
    .split(delimiter)
    .filter((folder) => !/[\\/]node_modules[\\/]\.bin[\\/]?$/.test(folder))
    .join(delimiter);
}

/** @param {string} root */
function installedNodeIsNewEnough(root) {
  const found = installedNodeVersion(join(root, 'node_modules', '.bin', 'node'));
  const version = parseVersion(found);
  if (!version) {
    say('node_modules/.bin/node does not run. Its install script puts it there: allow install scripts');
    say('(npm config get ignore-scripts must say false), delete node_modules, and try again.');
    return false;
  }
  if (isAtLeast(version, OLDEST_INSTALLED_NODE)) return true;
  say(
    `node_modules/.bin/node is ${found}, older than ${OLDEST_INSTALLED_NODE.join('.')}: delete node_modules, and try again.`,
  );
  return false;
}

/** @param {string} node */
function installedNodeVersion(node) {
  const isThisNode = existsSync(node) && realpathSync(node) === realpathSync(process.execPath);
  if (isThisNode) return process.versions.node;
  const run = spawnSync(ON_WINDOWS ? `"${node}"` : node, ['--version'], { encoding: 'utf8', shell: ON_WINDOWS });
  return run.status === 0 ? run.stdout.trim() : '';
}
