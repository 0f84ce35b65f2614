/** @param {string} line */
export function say(line) {
  process.stderr.write(`crabwise setup: ${line}\n`);
}
