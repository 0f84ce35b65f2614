import { readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseHTML } from 'linkedom';
import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import { readDeclarations, readRules } from '../../src/setup/css-rules.ts';
import { covers, readFontFaces, trimFontFaces } from '../../src/setup/font-faces.ts';
import type { FontFace } from '../../src/setup/font-faces.ts';
import { readMathsFontRules } from '../../src/setup/font-cascade.ts';
import { readFonts, subsetBytes } from '../../src/setup/font-files.ts';
import {
  codeOf,
  fontedCharacters,
  mathsRuns,
  proseCharacters,
  RUN_TIME_CHARACTERS,
  scriptCharacters,
  TEXT_CHARACTERS,
} from '../../src/setup/glyphs-used.ts';
import type { HasGlyph } from '../../src/setup/glyphs-used.ts';
import { rehashed, renamedScripts } from '../../src/setup/hashed-names.ts';
import { missingGlyphs } from '../../src/setup/missing-glyphs.ts';
import { subsetSiteFonts } from '../../src/setup/subset-fonts.ts';
import { planSubsets } from '../../src/setup/subset-plan.ts';
import type { SubsetPlan } from '../../src/setup/subset-plan.ts';
import { formula, KATEX_CSS, KATEX_FONTS, scratchSite } from './scratch-site.ts';

let katexCss: string;
let faces: FontFace[];
let hasGlyph: HasGlyph;

beforeAll(async () => {
  katexCss = await readFile(KATEX_CSS, 'utf8');
  faces = readFontFaces(katexCss);
  const fonts = await readFonts(new Map(faces.map(({ woff2 }) => [woff2, join(KATEX_FONTS, woff2)])), faces);
  hasGlyph = (face, code) => fonts.get(face.woff2)?.codes.has(code) ?? false;
});

const page = (body: string): Document => parseHTML(`<!doctype html><html><body>${body}</body></html>`).document;

/** The files that set each character of a page's maths, as file:character. */
const setting = (body: string, css = katexCss): string[] =>
  mathsRuns(page(body), readMathsFontRules(css))
    .flatMap((run) => fontedCharacters(run, faces, hasGlyph))
    .map(({ character, face }) => `${face?.woff2.replace(/^KaTeX_|\.woff2$/g, '') ?? 'none'}:${character}`);

const planFor = (body: string): SubsetPlan =>
  planSubsets(faces, mathsRuns(page(body), readMathsFontRules(katexCss)), { always: '', found: new Set() }, hasGlyph);

const keptIn = (plan: SubsetPlan, file: string): string =>
  [...plan].flatMap(([face, characters]) => (face.woff2 === file ? [...characters] : [])).join('');

describe('reading CSS', () => {
  it('lifts rules out of @media and out of the rules around them', () => {
    const rules = readRules('@media print{.a{color:red;.b &{x:y}}}/* } */@font-face{src:url(a.woff2)}');
    expect(rules.map(({ prelude }) => prelude)).toEqual(['.b :is(.a)', '.a', '@font-face']);
  });

  it('is not led astray by braces and semicolons in strings and addresses', () => {
    const [rule] = readRules('.a::before{content:"};{";background:url(data:x;y)}');
    expect(readDeclarations(rule?.body ?? '')).toEqual([
      { property: 'content', value: '"};{"' },
      { property: 'background', value: 'url(data:x;y)' },
    ]);
  });

  it('reads unicode-range in full and in the short form of minifiers', () => {
    const [face] = readFontFaces('@font-face{src:url(a.woff2);unicode-range:U+??,U+2000-206F,U+20ac}');
    const covered = ['A', 'ÿ', 'Ā', '—', '€', '₭'].map((character) => face && covers(face, codeOf(character)));
    expect(covered).toEqual([true, true, false, true, true, false]);
  });
});

describe('trimming @font-face', () => {
  const css =
    '@font-face{font-family:A;src:url(/f/a.woff2)format("woff2"),url(/f/a.woff)format("woff"),url(/f/a.ttf)}' +
    '@font-face{font-family:"B";font-weight:bold;src:local("B"),url("b.woff2") format("woff2")}' +
    '@font-face{font-family:C;src:local(Georgia);size-adjust:107%}.x{color:red}';

  it('leaves woff2 and local sources only', () => {
    expect(trimFontFaces(css, () => true)).toBe(
      '@font-face{font-family:A;src:url(/f/a.woff2)format("woff2")}' +
        '@font-face{font-family:"B";font-weight:bold;src:local("B"),url("b.woff2") format("woff2")}' +
        '@font-face{font-family:C;src:local(Georgia);size-adjust:107%}.x{color:red}',
    );
  });

  it('drops the faces not kept and nothing else', () => {
    expect(trimFontFaces(css, ({ family }) => family === 'B')).toBe(
      '@font-face{font-family:"B";font-weight:bold;src:local("B"),url("b.woff2") format("woff2")}' +
        '@font-face{font-family:C;src:local(Georgia);size-adjust:107%}.x{color:red}',
    );
  });

  it('finds all twenty faces of KaTeX', () => {
    expect(faces).toHaveLength(20);
    expect(trimFontFaces(katexCss, () => true)).not.toMatch(/\.(?:woff|ttf)\b/);
  });
});

describe('which font sets which character', () => {
  it('follows the classes of KaTeX', () => {
    expect(setting(formula(String.raw`\mathbf{R}x=\sin\beta`))).toEqual(
      expect.arrayContaining(['Main-Bold:R', 'Math-Italic:x', 'Main-Regular:=', 'Main-Regular:s', 'Math-Italic:β']),
    );
  });

  it('tells the sizes of brackets and of operators apart', () => {
    const big = formula(String.raw`\displaystyle\sum\left(\frac{\frac ab}{\frac cd}\right)`);
    expect(setting(big)).toEqual(expect.arrayContaining(['Size2-Regular:∑', 'Size3-Regular:(']));
    const tall = formula(String.raw`\left\{\begin{matrix}1\\2\\3\\4\\5\\6\end{matrix}\right.`);
    expect(setting(tall)).toEqual(expect.arrayContaining(['Size4-Regular:⎧', 'Size4-Regular:⎨', 'Size4-Regular:⎩']));
  });

  it('passes over the MathML copy, its TeX source and zero-width spaces', () => {
    const found = setting(formula(String.raw`\frac{a}{b}`)).join(' ');
    expect(found).toBe('Math-Italic:b Math-Italic:a');
  });

  it('stops a bold or italic sentence at the edge of a formula', () => {
    const css = `${katexCss} .katex{font-size:1.1em}`;
    expect(setting(`<p style="font:italic bold 1em Text">${formula('1')}</p>`, css)).toEqual(['Main-Regular:1']);
  });

  it('sees maths fonts asked for outside formulas, by rule, style and SVG attribute', () => {
    const css = `${katexCss}@media screen{svg .symbol{font:italic 12px/1 "KaTeX_Math",serif}}`;
    const body =
      '<svg><text class="symbol">ω</text><text font-family="KaTeX_Main">2</text></svg>' +
      '<b style="font-family:KaTeX_Main;font-weight:700">v</b><p>plain</p>';
    expect(setting(body, css)).toEqual(['Math-Italic:ω', 'Main-Regular:2', 'Main-Bold:v']);
  });

  it('says when no font can set a character', () => {
    const unknown = page(formula('x'));
    unknown.querySelector('.mathnormal')?.append('☃');
    expect(setting(unknown.body.innerHTML)).toContain('none:☃');
  });
});

describe('planning the subsets', () => {
  it('leaves out faces that nothing uses', () => {
    const files = [...planFor(formula('x+y')).keys()].map(({ woff2 }) => woff2);
    expect(files.sort()).toEqual(['KaTeX_Main-Regular.woff2', 'KaTeX_Math-Italic.woff2']);
  });

  it('keeps what scripts may write in the main face, and in any face that shows a digit', () => {
    const plan = planFor(formula(String.raw`a+b \mathbf{7}`));
    const written = Array.from('0123456789+−-.,()%°×/:=e');
    expect(Array.from(keptIn(plan, 'KaTeX_Main-Regular.woff2'))).toEqual(expect.arrayContaining(written));
    expect(Array.from(keptIn(plan, 'KaTeX_Main-Bold.woff2'))).toEqual(expect.arrayContaining(written));
    expect(keptIn(plan, 'KaTeX_Math-Italic.woff2')).toBe('ab');
  });

  it('cuts every font when the site has no formula', () => {
    expect(planFor('<p>Plain prose 123.</p>').size).toBe(0);
  });

  it('gives a text face what the site shows within its range', () => {
    const text = readFontFaces('@font-face{font-family:Text;src:url(KaTeX_Main-Regular.woff2);unicode-range:U+20-7F}');
    const plan = planSubsets(text, [], { always: 'ab', found: new Set('cé→\n') }, hasGlyph);
    expect(keptIn(plan, 'KaTeX_Main-Regular.woff2')).toBe('abc');
  });
});

describe('a character of a formula that no maths font has', () => {
  it('stays in the text face, which may stand behind the maths font', () => {
    const text = readFontFaces('@font-face{font-family:Text;src:url(text.woff2)}');
    const typed = page(formula('1'));
    typed.querySelector('.katex-html .mord')?.append('µ');
    const runs = mathsRuns(typed, readMathsFontRules(katexCss));
    const hasAny: HasGlyph = (face, code) => face.family === 'Text' || hasGlyph(face, code);
    const plan = planSubsets([...faces, ...text], runs, { always: '', found: new Set() }, hasAny);
    expect(keptIn(plan, 'text.woff2')).toBe('µ');
  });
});

describe('collecting prose', () => {
  it('takes words, attributes and what scripts may write, but not formulas and styles', () => {
    const body = `<p title="é">λ</p><style>.x{content:"ß"}</style><script>w("\\u2713ö")</script>${formula('\\Xi')}`;
    const found = proseCharacters(page(body));
    for (const character of 'éλ✓ö') expect(found).toContain(character);
    for (const character of 'ßΞ') expect(found).not.toContain(character);
  });

  it('reads escapes in scripts', () => {
    expect([...scriptCharacters(String.raw`"\u2192 \u{1f600} plain −"`)]).toEqual(['→', '😀', '−']);
  });

  it('always has printable ASCII, the signs of typeset prose, Greek, and what scripts write', () => {
    for (const character of ` ~–—‘’“”…·×−±°²³αω${RUN_TIME_CHARACTERS}`) expect(TEXT_CHARACTERS).toContain(character);
  });
});

describe('cutting a font', () => {
  it('keeps the glyphs it must and lets the others go', async () => {
    const font = await readFile(join(KATEX_FONTS, 'KaTeX_Main-Regular.woff2'));
    const bytes = await subsetBytes(font, new Set('01−×('));
    const path = join(await scratch(''), 'cut.woff2');
    await writeFile(path, bytes);
    const cut = await readFonts(new Map([['cut.woff2', path]]), readFontFaces('@font-face{src:url(cut.woff2)}'));
    const codes = [...(cut.get('cut.woff2')?.codes ?? [])].map((code) => String.fromCodePoint(code));
    // HarfBuzz adds the closing bracket: text that runs the other way shows it in place of the opening one.
    expect(codes.sort()).toEqual(['(', ')', '0', '1', '×', '−']);
    expect(bytes.byteLength).toBeLessThan(font.byteLength / 10);
  });

  it('leaves out the distances between pairs of letters when asked to', async () => {
    const file = '@fontsource/source-serif-4/files/source-serif-4-latin-400-italic.woff2';
    const font = await readFile(fileURLToPath(import.meta.resolve(file)));
    const letters = new Set('AVTo.');
    const [kerned, plain] = [await subsetBytes(font, letters), await subsetBytes(font, letters, false)];
    expect(plain.byteLength).toBeLessThan(kerned.byteLength);
  });
});

describe('naming files', () => {
  it('changes the hash with the content and leaves names without a hash alone', () => {
    expect(rehashed('a.b.AAAAAAAA.woff2', 'x')).toMatch(/^a\.b\.[\w-]{8}\.woff2$/);
    expect(rehashed('a.AAAAAAAA.css', 'x')).not.toBe(rehashed('a.AAAAAAAA.css', 'y'));
    expect(rehashed('print.css', 'x')).toBe('print.css');
  });

  it('renames scripts that name a renamed file through another script', () => {
    const scripts = new Map([
      ['one.AAAAAAAA.js', 'import "two.AAAAAAAA.js"'],
      ['two.AAAAAAAA.js', 'load("page.AAAAAAAA.css")'],
      ['three.AAAAAAAA.js', 'alone()'],
    ]);
    const renamed = renamedScripts(scripts, new Map([['page.AAAAAAAA.css', 'page.BBBBBBBB.css']]));
    expect([...renamed.keys()].sort()).toEqual(['one.AAAAAAAA.js', 'two.AAAAAAAA.js']);
  });
});

const scratched: string[] = [];

async function scratch(body: string): Promise<string> {
  const site = await scratchSite(body);
  scratched.push(site);
  return site;
}

afterEach(async () => {
  for (const site of scratched.splice(0)) await rm(site, { recursive: true });
});

describe('a built site', () => {
  const assets = async (site: string): Promise<string[]> => (await readdir(join(site, '_astro'))).sort();
  const body = `<p>Prose.</p>${formula(String.raw`v_i=\frac{1}{\cos\gamma}`)}`;

  it('is left with the fonts it uses, and every reference leads to a file', async () => {
    const site = await scratch(body);
    await subsetSiteFonts(site);
    const files = await assets(site);
    expect(files.map((file) => file.replace(/\.[\w-]{8}\./, '.'))).toEqual([
      'KaTeX_Main-Regular.woff2',
      'KaTeX_Math-Italic.woff2',
      'page.css',
      'script.js',
      'text.woff2',
    ]);
    expect(files.join(' ')).not.toContain('AAAAAAAA');
    const texts = await Promise.all(
      ['index.html', ...files.filter((file) => /\.(?:css|js)$/.test(file)).map((file) => join('_astro', file))].map(
        (file) => readFile(join(site, file), 'utf8'),
      ),
    );
    const named = texts.join('\n').matchAll(/_astro\/([\w.-]+\.(?:css|js|woff2|woff|ttf))/g);
    expect([...new Set([...named].map((match) => match[1]))].sort()).toEqual(files);
  });

  it('comes out the same each time, under other names when a formula changes', async () => {
    const [first, again, changed] = [await scratch(body), await scratch(body), await scratch(body + formula('q'))];
    for (const site of [first, again, changed]) await subsetSiteFonts(site);
    expect(await assets(again)).toEqual(await assets(first));
    const shared = (await assets(changed)).filter((file) => !file.startsWith('KaTeX_Main') && !file.startsWith('text'));
    for (const file of shared) expect(await assets(first)).not.toContain(file);
  });

  it('reports what became of each font', async () => {
    const reports = await subsetSiteFonts(await scratch(body));
    expect(reports).toHaveLength(3);
    for (const { bytesBefore, bytesAfter } of reports) expect(bytesAfter).toBeLessThan(bytesBefore);
  });

  it('misses no glyph, and the check finds one that is missing', async () => {
    const site = await scratch(body);
    await subsetSiteFonts(site);
    expect(await missingGlyphs(site)).toEqual([]);
    const path = join(site, 'index.html');
    await writeFile(path, (await readFile(path, 'utf8')) + formula(String.raw`\Xi q`));
    expect((await missingGlyphs(site)).map(({ page: where, character }) => [where, character])).toEqual([
      [path, 'q'],
      [path, 'Ξ'],
    ]);
  });
});
