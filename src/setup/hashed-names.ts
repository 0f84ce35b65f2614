import { createHash } from 'node:crypto';

const HASHED_NAME = /^(.+)\.[\w-]{8}(\.\w+)$/;

/** The same file name with a hash of this content in place of the one it had. A name without a hash stays. */
export function rehashed(name: string, content: string | Uint8Array): string {
  const hash = createHash('sha256').update(content).digest('base64url').slice(0, 8);
  return name.replace(HASHED_NAME, `$1.${hash}$2`);
}

export function withNewNames(text: string, names: ReadonlyMap<string, string>): string {
  if (names.size === 0) return text;
  const old = [...names.keys()].map((name) => name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
  return text.replace(new RegExp(old.join('|'), 'g'), (name) => names.get(name) ?? name);
}

/** New names for the scripts that name a renamed file, directly or through another script. */
export function renamedScripts(
  scripts: ReadonlyMap<string, string>,
  names: ReadonlyMap<string, string>,
): Map<string, string> {
  const renamed = new Map<string, string>();
  const salt = [...names].flat().join('\n');
  const isStale = (source: string): boolean => [...names.keys(), ...renamed.keys()].some((n) => source.includes(n));
  for (let before = -1; before < renamed.size;) {
    before = renamed.size;
    for (const [name, source] of scripts) {
      if (!renamed.has(name) && isStale(source)) renamed.set(name, rehashed(name, source + salt));
    }
  }
  return renamed;
}
