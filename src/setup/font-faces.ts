import { readDeclarations, readRules, splitAtCommas, unquoted } from './css-rules.ts';

export type CodeRange = readonly [first: number, last: number];

/** An @font-face that has a woff2 source. */
export interface FontFace {
  readonly family: string;
  readonly italic: boolean;
  readonly weights: readonly [lightest: number, boldest: number];
  readonly ranges: readonly CodeRange[];
  readonly woff2: string;
  readonly start: number;
  readonly end: number;
}

const EVERY_CODE: CodeRange = [0, 0x10ffff];
const FONT_URL = /url\(\s*(["']?)([^"')]+?\.(?:woff2|woff|ttf|otf|eot))(?:[?#][^"')]*)?\1\s*\)/gi;
const SRC = /(src\s*:\s*)((?:url\([^)]*\)|[^;}])+)/gi;

export function readFontFaces(css: string): FontFace[] {
  return readRules(css).flatMap((rule) => {
    if (rule.prelude.toLowerCase() !== '@font-face') return [];
    const face = new Map(readDeclarations(rule.body).map((d) => [d.property, d.value] as const));
    const woff2 = fontFilesNamed(rule.body).find((file) => file.endsWith('.woff2'));
    if (woff2 === undefined) return [];
    return [
      {
        family: unquoted(face.get('font-family') ?? ''),
        italic: /^(?:italic|oblique)/.test(face.get('font-style') ?? ''),
        weights: readWeights(face.get('font-weight') ?? 'normal'),
        ranges: readRanges(face.get('unicode-range')),
        woff2,
        start: rule.start,
        end: rule.end,
      },
    ];
  });
}

/** Names, without folders, of the font files that a text points to. */
export function fontFilesNamed(css: string): string[] {
  return [...css.matchAll(FONT_URL)].map((match) => fileName(match[2] ?? ''));
}

/** Drops the faces not kept, and leaves the others with no source but woff2 and local. */
export function trimFontFaces(css: string, isKept: (face: FontFace) => boolean): string {
  return readFontFaces(css).reduceRight((text, face) => {
    const block = isKept(face) ? woff2Only(css.slice(face.start, face.end)) : '';
    return text.slice(0, face.start) + block + text.slice(face.end);
  }, css);
}

/** Tells faces apart that stand in different texts: the same key means the same face. */
export function faceKey({ family, italic, weights, ranges, woff2 }: FontFace): string {
  return JSON.stringify([family, italic, weights, ranges, woff2]);
}

export function covers(face: FontFace, code: number): boolean {
  return face.ranges.some(([first, last]) => first <= code && code <= last);
}

export function readWeight(value: string): number {
  if (value === 'normal') return 400;
  if (value === 'bold') return 700;
  return Number(value);
}

function readWeights(value: string): [number, number] {
  const [lightest = 400, boldest = lightest] = value.split(/\s+/).map(readWeight);
  return [lightest, boldest];
}

function readRanges(value: string | undefined): CodeRange[] {
  if (value === undefined) return [EVERY_CODE];
  return splitAtCommas(value).map((item) => {
    const [from = '', to = from] = item.replace(/^u\+/i, '').split('-');
    return [parseInt(from.replaceAll('?', '0'), 16), parseInt(to.replaceAll('?', 'f'), 16)];
  });
}

function woff2Only(block: string): string {
  return block.replace(SRC, (_, property: string, list: string) => {
    const kept = splitAtCommas(list).filter((source) => /^local\(|\.woff2\b/i.test(source));
    return property + kept.join(',');
  });
}

function fileName(url: string): string {
  return url.slice(url.lastIndexOf('/') + 1);
}
