import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import katex from 'katex';
import { describe, expect, test } from 'vitest';
import { calculatorOf } from '../../calculators/catalogue.ts';
import { readInputs } from '../../calculators/inputs.ts';
import { fromQuery } from '../../calculators/permalink.ts';
import { work } from '../../calculators/work.ts';
import { documentOf, fileAt, folder, pages } from './built.ts';
import { readServedCalculators } from './served-calculators.ts';

/** What a calculation or a template leaves when it goes wrong. A brace alone stands before the cases of a formula. */
const failures = /\bNaN\b|\bundefined\b|\[object|katex-error|ParseError/;
const templates = /\{.|.\}|\bnull\b|Infinity|∞/;

const all = (page: string, selector: string): Element[] => [...documentOf(page).querySelectorAll(selector)];

/** What is shown and what is read out: texts and attributes, without scripts and styles. */
function told(page: string): { text: string; isCode: boolean }[] {
  const elements = all(page, 'body *, title, meta[name]').filter(
    ({ localName }) => !/^(script|style)$/.test(localName),
  );
  return elements.flatMap((element) => {
    const own = [...element.childNodes].filter((node) => node.nodeType === 3).map((node) => node.textContent ?? '');
    const isCode = own.length > 0 && element.closest('pre, code') !== null;
    return [...own, ...[...element.attributes].map(({ value }) => value)].map((text) => ({ text, isCode }));
  });
}

/** An address as the page's visitor would get it, against the page's own. */
const resolved = (href: string, page: string): URL => new URL(href, new URL(page, 'http://site'));

const idsByPage = new Map<string, ReadonlySet<string>>();

function idsOf(page: string): ReadonlySet<string> {
  const ids = idsByPage.get(page) ?? new Set(all(page, '[id]').map((element) => element.id));
  idsByPage.set(page, ids);
  return ids;
}

function linkFault(href: string, page: string): string | undefined {
  const { protocol, host, pathname, hash, search } = resolved(href, page);
  if (host !== 'site') return protocol === 'https:' ? undefined : `not https: ${href}`;
  if (fileAt(pathname) === undefined) return `leads nowhere: ${href}`;
  if (hash !== '' && !idsOf(pathname).has(decodeURIComponent(hash.slice(1)))) return `no such place: ${href}`;
  return search === '' ? undefined : calculationFault(pathname, search);
}

/** A link with inputs must open a piece of working without a complaint. */
function calculationFault(pathname: string, search: string): string | undefined {
  const [, id = ''] = /^\/calculators\/([^/]+)\/$/.exec(pathname) ?? [];
  const calculator = calculatorOf(id);
  const { texts, problems } = fromQuery(calculator, new URLSearchParams(search));
  const inputs = readInputs(calculator.given, texts);
  const worked = inputs.ok && work(calculator, inputs.entries).ok;
  return worked && problems.length === 0 ? undefined : `no working: ${pathname}${search}`;
}

/** A word that runs into a link or into code: the compiler of pages drops a space at the end of a line. */
const run = /[A-Za-z,:]<(?:a href|code)[ >]|<\/(?:a|code)>[A-Za-z]/;

describe.each(pages)('%s', (page) => {
  test('no word runs into a link or into code', () => {
    const holders = all(page, 'p, li, td, figcaption').filter((one) => one.querySelector('a, code') !== null);
    const runs = holders.filter((element) => run.test(element.innerHTML));
    expect(runs.map((element) => element.textContent)).toEqual([]);
  });

  test('has a language, one heading of the first rank, a title and a description', () => {
    expect(documentOf(page).documentElement.getAttribute('lang')).toBe('en-GB');
    expect(all(page, 'h1').map((heading) => heading.textContent.trim() !== '')).toEqual([true]);
    expect(documentOf(page).title).not.toBe('');
    expect(all(page, 'meta[name=description]').map((meta) => meta.getAttribute('content'))).toEqual([
      expect.stringMatching(/\S/),
    ]);
  });

  test('shows nothing that a template left behind', () => {
    const left = told(page).filter(({ text, isCode }) => failures.test(text) || (!isCode && templates.test(text)));
    expect(left).toEqual([]);
  });

  test('has no id twice, and what refers to an id finds it', () => {
    const ids = all(page, '[id]').map((element) => element.id);
    expect(ids.filter((id, k) => id === '' || ids.indexOf(id) !== k)).toEqual([]);
    const referring = ['for', 'aria-describedby', 'aria-labelledby', 'aria-controls'].flatMap((name) =>
      all(page, `[${name}]`).flatMap((element) => (element.getAttribute(name) ?? '').split(/\s+/)),
    );
    expect(referring.filter((id) => !ids.includes(id))).toEqual([]);
  });

  test('links only to what is there, and outside only by https', () => {
    const hrefs = all(page, 'a[href]').map((link) => link.getAttribute('href') ?? '');
    expect([...new Set(hrefs)].flatMap((href) => linkFault(href, page) ?? [])).toEqual([]);
    expect(all(page, 'a:not([href])')).toEqual([]);
  });

  test('has a script only where something answers', () => {
    const answers = all(page, 'crab-calculator, crab-question').length > 0;
    expect(all(page, 'script').length > 0).toBe(answers);
  });

  test('loads only files of the site', () => {
    const files = [
      ...all(page, '[src]').map((element) => element.getAttribute('src') ?? ''),
      ...all(page, 'link[href]').map((element) => element.getAttribute('href') ?? ''),
    ].filter((file) => !file.startsWith('data:'));
    expect(files.filter((file) => fileAt(resolved(file, page).pathname) === undefined)).toEqual([]);
  });
});

readServedCalculators();

test('no two pages have one title', () => {
  const titles = pages.map((page) => documentOf(page).title);
  expect(titles.filter((title, k) => titles.indexOf(title) !== k)).toEqual([]);
});

test('every formula is set and styled by one version of KaTeX', () => {
  const css = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.css'))
    .map((file) => readFileSync(join(folder, file), 'utf8'))
    .join('\n');
  const original = readFileSync(fileURLToPath(import.meta.resolve('katex/dist/katex.css')), 'utf8');
  const styled = (sheet: string): Set<string> =>
    new Set([...sheet.matchAll(/\.([a-z][\w-]*)/gi)].map(([, name = '']) => name));
  const used = new Set(pages.flatMap((page) => all(page, '.katex, .katex *').flatMap((one) => [...one.classList])));
  const [known, kept] = [styled(original), styled(css)];
  expect([...used].filter((name) => known.has(name)).length).toBeGreaterThan(5);
  expect([...used].filter((name) => known.has(name) && !kept.has(name))).toEqual([]);
  expect([...used].filter((name) => name.startsWith('katex-') && !kept.has(name))).toEqual([]);
  expect(css).toContain(`content:"${katex.version}"`);
});
