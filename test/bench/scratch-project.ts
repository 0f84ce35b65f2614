import { spawn } from 'node:child_process';
import { cp, mkdir, mkdtemp, readdir, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const LESSON = fileURLToPath(new URL('lesson.mdx', import.meta.url));
const LEFT_OUT = new Set(['node_modules', 'dist', 'test', '.git', '.astro', '.bench', 'coverage']);

/** The last list of lessons in src/modules.ts. */
const LAST_LESSONS = /(lessons: \[)([^\]]*)(\](?![^]*lessons: \[))/;

/** A copy of the project, to build with lessons of the bench in it. The checkout is not written to. */
export interface ScratchProject {
  readonly folder: string;
  /** The built site. */
  readonly site: string;
  /** What the lesson of the bench and src/modules.ts said when the copy was made: the checkout may change meanwhile. */
  readonly lesson: string;
  readonly modules: string;
}

export async function createScratchProject(): Promise<ScratchProject> {
  const folder = await mkdtemp(join(tmpdir(), 'crabwise-bench-'));
  for (const name of await readdir(ROOT)) {
    if (!LEFT_OUT.has(name)) await cp(join(ROOT, name), join(folder, name), { recursive: true });
  }
  await linkPackages(folder);
  const modules = await readFile(join(folder, 'src', 'modules.ts'), 'utf8');
  return { folder, site: join(folder, 'dist'), lesson: await readFile(LESSON, 'utf8'), modules };
}

/** A folder of links, not one link: caches beside the packages stay in the copy. */
async function linkPackages(folder: string): Promise<void> {
  const packages = join(ROOT, 'node_modules');
  await mkdir(join(folder, 'node_modules'));
  for (const name of await readdir(packages)) {
    const isCache = name.startsWith('.') && name !== '.bin';
    if (!isCache) await symlink(join(packages, name), join(folder, 'node_modules', name), 'junction');
  }
}

const idOf = (k: number): string => `bench/lesson-${k + 1}`;

/** The address of a lesson of the bench in the built site. */
export const benchLesson = `lessons/${idOf(0)}/`;

/** Puts the bench's lesson at the end of the course, as often as asked for. */
export async function writeLessons({ folder, lesson, modules }: ScratchProject, count: number): Promise<void> {
  const ids = Array.from({ length: count }, (_, k) => idOf(k));
  const lessons = join(folder, 'content', 'lessons');
  await rm(join(lessons, 'bench'), { recursive: true, force: true });
  await mkdir(join(lessons, 'bench'));
  for (const id of ids) await writeFile(join(lessons, `${id}.mdx`), lesson);
  await writeFile(join(folder, 'src', 'modules.ts'), withLessons(modules, ids));
}

export function withLessons(modules: string, ids: readonly string[]): string {
  if (!LAST_LESSONS.test(modules)) throw new Error('There is no list of lessons in src/modules.ts.');
  const written = ids.map((id) => `'${id}',`).join('');
  return modules.replace(LAST_LESSONS, (_, open: string, old: string, close: string) => {
    const others = old.trim().replace(/,$/, '');
    return `${open}${others}${others === '' ? '' : ','}${written}${close}`;
  });
}

/** Builds the copy from nothing, as `npm run build` does. Hands back the seconds it took. */
export async function build({ folder, site }: ScratchProject): Promise<number> {
  for (const left of [site, join(folder, '.astro'), join(folder, 'node_modules', '.astro')]) {
    await rm(left, { recursive: true, force: true });
  }
  const start = performance.now();
  await run(folder);
  return (performance.now() - start) / 1000;
}

async function run(folder: string): Promise<void> {
  const child = spawn(process.execPath, [join('src', 'setup', 'astro.mjs'), 'build'], { cwd: folder });
  const output: string[] = [];
  for (const stream of [child.stdout, child.stderr]) {
    stream.setEncoding('utf8').on('data', (text: string) => output.push(text));
  }
  const code = await new Promise<number | null>((resolve, reject) => child.on('error', reject).on('close', resolve));
  if (code !== 0) throw new Error(`The build of the copy failed:\n${output.join('').slice(-3000)}`);
}
