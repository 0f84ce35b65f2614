import { build, writeLessons, type ScratchProject } from './scratch-project.ts';
import { note, type Line } from './table.ts';

const MANY = 100;

/** What a build takes with one lesson of the bench and with many. To be called after a first build, which is slower. */
export async function buildLines(project: ScratchProject): Promise<Line[]> {
  const one = await timed(project, 1);
  const many = await timed(project, MANY);
  const each = (many - one) / (MANY - 1);
  return [
    note('build of the site and 1 lesson of the bench', `${one.toFixed(1)} s`),
    note(`build of the site and ${MANY} lessons of the bench`, `${many.toFixed(1)} s`),
    note('  for each further lesson', `${each.toFixed(2)} s`),
  ];
}

async function timed(project: ScratchProject, lessons: number): Promise<number> {
  await writeLessons(project, lessons);
  return build(project);
}
