import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Whether a program answers to `--version`. */
function isThere(program: string): boolean {
  try {
    execFileSync(program, ['--version'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
}

export interface Tool {
  readonly name: string;
  /** Where the tool is missing, its tests are left out; under CI=true they run, and fail. */
  readonly skip: boolean;
  /** For the title of the tests: says so when they are left out. */
  readonly note: string;
}

export function toolOf(name: string, environment: NodeJS.ProcessEnv = process.env): Tool {
  const skip = !isThere(name) && environment['CI'] !== 'true';
  return { name, skip, note: skip ? ` (left out: there is no ${name} here)` : '' };
}

/** A folder that is gone afterwards. */
export class Scratch {
  readonly folder = mkdtempSync(join(tmpdir(), 'crabwise-emit-'));

  write(name: string, text: string | Uint8Array): string {
    const path = join(this.folder, name);
    writeFileSync(path, text);
    return path;
  }

  remove(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }
}

export const run = (program: string, args: readonly string[], input?: string | Uint8Array): Buffer =>
  execFileSync(program, args, { input, maxBuffer: 64 * 1024 * 1024, stdio: ['pipe', 'pipe', 'pipe'] });
