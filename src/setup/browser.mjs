import { accessSync, constants, statSync } from 'node:fs';
import { createRequire } from 'node:module';
import { delimiter, join } from 'node:path';

/**
 * @typedef {object} Machine
 * @property {NodeJS.Platform} platform
 * @property {Record<string, string | undefined>} environment
 */

const THIS_MACHINE = /** @type {Machine} */ ({ platform: process.platform, environment: process.env });

// Not `chromium-browser`: where that is no real browser, it is a script that only says how to install one.
const COMMANDS = ['chromium', 'google-chrome', 'google-chrome-stable', 'chrome'];

/** @type {Partial<Record<NodeJS.Platform, string[]>>} */
const USUAL_PLACES = {
  linux: ['/usr/bin/chromium', '/usr/bin/google-chrome', '/opt/google/chrome/chrome', '/snap/bin/chromium'],
  darwin: [
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  ],
  win32: [
    'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
    'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
  ],
};

const QUIET_FLAGS = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/**
 * Where a browser may be, best first.
 * @param {Machine} machine
 * @returns {string[]}
 */
export function browserCandidates({ platform, environment } = THIS_MACHINE) {
  const chosen = environment['CHROMIUM'] ? [environment['CHROMIUM']] : [];
  return [...chosen, ...(USUAL_PLACES[platform] ?? []), ...onPath(platform, environment['PATH'] ?? '')];
}

/**
 * @param {NodeJS.Platform} platform
 * @param {string} path
 */
function onPath(platform, path) {
  const suffix = platform === 'win32' ? '.exe' : '';
  const folders = path.split(delimiter).filter((folder) => folder !== '');
  return COMMANDS.flatMap((command) => folders.map((folder) => join(folder, command + suffix)));
}

/**
 * @param {Machine} machine
 * @returns {string | undefined} the executable of the first browser found
 */
export function findBrowser(machine = THIS_MACHINE) {
  return browserCandidates(machine).find(isExecutable) ?? findDownloadedBrowser();
}

/** @returns {string | undefined} the executable of the browser that playwright-core has downloaded */
export function findDownloadedBrowser() {
  try {
    /** @type {unknown} */
    const playwright = createRequire(import.meta.url)('playwright-core');
    const { chromium } = /** @type {typeof import('playwright-core')} */ (playwright);
    const executable = chromium.executablePath();
    return isExecutable(executable) ? executable : undefined;
  } catch {
    return undefined;
  }
}

/** @param {string} file */
export function isExecutable(file) {
  try {
    accessSync(file, constants.X_OK);
    return statSync(file).isFile();
  } catch {
    return false;
  }
}

/** How playwright-core starts the browser. Chromium's sandbox cannot run as root, and must run otherwise. */
export function launchOptions(isRoot = process.getuid?.() === 0) {
  const executablePath = findBrowser();
  if (executablePath === undefined) throw new Error('No browser: run node src/setup/install.mjs --browser.');
  return { executablePath, chromiumSandbox: !isRoot, args: [...QUIET_FLAGS] };
}
