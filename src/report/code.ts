import { asC } from '../../calculators/emit/c.ts';
import type { Emittable } from '../../calculators/emit/emittable.ts';
import { asPython } from '../../calculators/emit/python.ts';
import { asCells } from '../../calculators/emit/spreadsheet.ts';
import type { Entries } from '../../calculators/inputs.ts';
import type { Working } from '../../calculators/work.ts';
import { addressOf, entriesOf } from './address.ts';

/** The languages a calculator is written in, by the word that asks for each. */
export const languages = {
  c: { title: 'C for a microcontroller', write: asC },
  python: { title: 'Python', write: asPython },
  csv: { title: 'Spreadsheet cells', write: asCells },
} as const satisfies Record<string, { title: string; write: Write }>;

type Write = (calculator: Emittable, entries: Entries, address: string) => string;

export type LanguageName = keyof typeof languages;

export const languageNames = Object.keys(languages) as LanguageName[];

/** A piece of working as code, with its inputs for the example. */
export const asCode = (name: LanguageName, working: Working): string =>
  languages[name].write(working.calculator, entriesOf(working), addressOf(working));
