import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';
import { findCalculator } from '../calculators/catalogue.ts';
import { modules } from './modules.ts';
import { holdUnits } from './typeset/hold-units.ts';

const calculatorId = z.string().refine((id) => findCalculator(id) !== undefined, 'no such calculator');
const prose = z.string().transform(holdUnits);
const givenTexts = z.record(z.string(), z.coerce.string());

const lessons = defineCollection({
  loader: glob({ base: './content/lessons', pattern: '**/*.mdx' }),
  schema: z.strictObject({
    title: z.string(),
    /** The reader's question, as the home page asks it. */
    question: z.string().endsWith('?').transform(holdUnits),
    /** The answer in one plain sentence. */
    answer: z.string().max(220).transform(holdUnits),
    sources: z.array(z.string()).min(1),
  }),
});

const examples = defineCollection({
  loader: glob({ base: './content/examples', pattern: '*.yaml' }),
  schema: z.strictObject({
    title: z.string(),
    calculator: calculatorId,
    robot: z.string(),
    story: prose,
    find: prose,
    given: givenTexts,
    /** What the result means, a paragraph each, with `{name in unit}` for values. */
    means: z.array(prose).min(1),
    /** The measurement that would show the result wrong. */
    bench: prose.optional(),
    lesson: z.string().refine((id) => modules.some(({ lessons: ids }) => ids.includes(id)), 'no such lesson'),
    sources: z.array(z.string()).min(1),
  }),
});

const robots = defineCollection({
  loader: glob({ base: './content/robots', pattern: '*.yaml' }),
  schema: z.strictObject({ name: z.string(), invented: z.literal(true), story: prose, given: givenTexts }),
});

const sources = defineCollection({
  loader: glob({ base: './content/sources', pattern: '*.yaml' }),
  schema: z.strictObject({
    authors: z.string(),
    title: z.string(),
    edition: z.coerce.string().optional(),
    year: z.coerce.string(),
    publisher: z.string(),
    kind: z.enum(['book', 'open textbook', 'paper', 'standard', 'data sheet', 'lecture notes']),
    address: z.url().optional(),
    note: z.string().optional(),
  }),
});

/** Their shape is the business of src/evidence, which is stricter than a schema. */
const checks = defineCollection({
  loader: glob({ base: './content/checks', pattern: '*.yaml' }),
  schema: z.looseObject({ calculator: calculatorId }),
});

export const collections = { lessons, examples, robots, sources, checks };
