import { parseHTML } from 'linkedom';
import { readMathsFontRules } from './font-cascade.ts';
import { mathsRuns, proseCharacters, scriptCharacters } from './glyphs-used.ts';
import type { TextRun } from './glyphs-used.ts';
import { siteCss, withEnding } from './site-files.ts';
import type { Texts } from './site-files.ts';

const CONTENT = /content\s*:([^;}]*)/g;
const CSS_ESCAPE = /\\([\da-f]{1,6})\s?/gi;

export interface PageRuns {
  readonly path: string;
  readonly runs: readonly TextRun[];
}

export function mathsRunsByPage(texts: Texts): PageRuns[] {
  const rules = readMathsFontRules(siteCss(texts));
  return [...withEnding(texts, '.html')].map(([path, html]) => ({
    path,
    runs: mathsRuns(parseHTML(html).document, rules),
  }));
}

/** What the text face may have to show: the pages' words, and what stylesheets and scripts may add to them. */
export function proseOf(texts: Texts): Set<string> {
  const pages = [...withEnding(texts, '.html').values()].map((html) => proseCharacters(parseHTML(html).document));
  const scripts = [...withEnding(texts, '.js', '.mjs').values()].map(scriptCharacters);
  return new Set([...pages, ...scripts, contentCharacters(siteCss(texts))].flatMap((set) => [...set]));
}

function contentCharacters(css: string): Set<string> {
  const contents = [...css.matchAll(CONTENT)].map((match) => match[1] ?? '').join('');
  return new Set(contents.replace(CSS_ESCAPE, (_, hex: string) => String.fromCodePoint(parseInt(hex, 16))));
}
