import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { browserCandidates, findDownloadedBrowser, isExecutable } from './browser.mjs';
import { say } from './say.mjs';

const LONGEST_DOWNLOAD_MS = 5 * 60_000;

/**
 * Gets a browser onto this machine when it has none.
 * @param {string} root
 * @returns {boolean} whether there is one
 */
export function ensureBrowser(root) {
  const chosen = process.env['CHROMIUM'];
  if (chosen && !isExecutable(chosen)) say(`CHROMIUM is ${chosen}, which is not an executable file: looking further`);
  if (systemHasBrowser() || downloadedBrowserRuns()) return true;
  say('this machine has no Chromium or Chrome: playwright-core downloads one, which may take minutes');
  if (downloadWithPlaywright(root)) return true;
  if (installWithApt()) return true;
  say('no browser. The tests of the site need one: install Chromium or Chrome, or set CHROMIUM to its executable.');
  return false;
}

function systemHasBrowser() {
  return browserCandidates().some(isExecutable);
}

/** @param {string} root */
function downloadWithPlaywright(root) {
  const cli = join(root, 'node_modules', 'playwright-core', 'cli.js');
  const run = spawnSync(process.execPath, [cli, 'install', '--no-shell', 'chromium'], {
    encoding: 'utf8',
    timeout: LONGEST_DOWNLOAD_MS,
  });
  if (run.status === 0 && downloadedBrowserRuns()) return true;
  say(`the download gave no browser that runs (${firstErrorIn(run.stderr) ?? 'no error given'})`);
  return false;
}

/** @param {string} output */
export function firstErrorIn(output) {
  return /^Error: (.+)$/m.exec(output)?.[1];
}

/** A downloaded browser may lack libraries of the system, so that it is there and yet does not run. */
function downloadedBrowserRuns() {
  const browser = findDownloadedBrowser();
  return browser !== undefined && spawnSync(browser, ['--version'], { stdio: 'ignore' }).status === 0;
}

function installWithApt() {
  if (process.getuid?.() !== 0 || !isDebian(osRelease())) {
    say('apt-get is left alone: this is not root on Debian');
    return false;
  }
  say('trying apt-get install chromium');
  if (apt('update') && apt('install', '-y', 'chromium') && systemHasBrowser()) return true;
  say('apt-get gave no browser');
  return false;
}

/** @param {...string} words */
function apt(...words) {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  return spawnSync('apt-get', words, { stdio: 'inherit', env }).status === 0;
}

function osRelease() {
  return existsSync('/etc/os-release') ? readFileSync('/etc/os-release', 'utf8') : '';
}

/** @param {string} osReleaseText */
export function isDebian(osReleaseText) {
  return /^ID="?debian"?$/m.test(osReleaseText);
}
