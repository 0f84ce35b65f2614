import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * @typedef {{ version?: string, integrity?: string, optional?: boolean, devOptional?: boolean }} LockedPackage
 * @typedef {Record<string, LockedPackage>} LockedPackages
 */

/**
 * Why node_modules does not hold what package-lock.json asks for; undefined when it does.
 * The contents are compared, not the times: a checkout changes the times alone.
 * @param {string} root
 * @returns {string | undefined}
 */
export function whyStale(root) {
  if (!existsSync(join(root, 'node_modules'))) return 'node_modules is missing';
  const installed = readPackages(join(root, 'node_modules', '.package-lock.json'));
  if (!installed) return 'node_modules is incomplete';
  const wanted = readPackages(join(root, 'package-lock.json'));
  if (!wanted) throw new Error('package-lock.json is missing or unreadable.');
  return firstDifference(wanted, installed) ?? firstGone(root, installed);
}

/**
 * @param {LockedPackages} wanted
 * @param {LockedPackages} installed
 * @returns {string | undefined}
 */
export function firstDifference(wanted, installed) {
  for (const [path, want] of Object.entries(wanted)) {
    if (path === '') continue;
    const have = installed[path];
    if (!have && !want.optional && !want.devOptional) return `${path} is not installed`;
    if (have && (have.version !== want.version || have.integrity !== want.integrity)) return `${path} has changed`;
  }
  const surplus = Object.keys(installed).find((path) => !(path in wanted));
  return surplus && `${surplus} is no longer wanted`;
}

/**
 * @param {string} root
 * @param {LockedPackages} installed
 */
function firstGone(root, installed) {
  const gone = Object.keys(installed).find((path) => !existsSync(join(root, path, 'package.json')));
  return gone && `${gone} is gone`;
}

/**
 * @param {string} file
 * @returns {LockedPackages | undefined}
 */
function readPackages(file) {
  try {
    /** @type {unknown} */
    const lock = JSON.parse(readFileSync(file, 'utf8'));
    return /** @type {{ packages?: LockedPackages }} */ (lock).packages;
  } catch {
    return undefined;
  }
}
