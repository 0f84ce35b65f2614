import { getCollection } from 'astro:content';
import { compareFile, type Row } from '../evidence/compare.ts';

/** Every published figure beside ours, by calculator. */
export async function evidence(): Promise<ReadonlyMap<string, readonly Row[]>> {
  const files = await getCollection('checks');
  return new Map(files.map(({ data }) => [data.calculator, compareFile(data)]));
}
