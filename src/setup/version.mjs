/**
 * @typedef {readonly [major: number, minor: number, patch: number]} Version
 */

/**
 * @param {string} text such as `v24.21.0`
 * @returns {Version | undefined}
 */
export function parseVersion(text) {
  const match = /^v?(\d+)\.(\d+)\.(\d+)/.exec(text.trim());
  return match ? [Number(match[1]), Number(match[2]), Number(match[3])] : undefined;
}

/**
 * @param {Version} version
 * @param {Version} least
 */
export function isAtLeast(version, least) {
  const [major, minor, patch] = version;
  if (major !== least[0]) return major > least[0];
  if (minor !== least[1]) return minor > least[1];
  return patch >= least[2];
}
