import { covers } from './font-faces.ts';
import type { FontFace } from './font-faces.ts';
import { fontStyleOf, MATHS_FAMILY } from './font-cascade.ts';
import type { FontRule, FontStyle } from './font-cascade.ts';

/** A text and the font that the maths rules give it. */
export interface TextRun {
  readonly text: string;
  readonly style: FontStyle;
  readonly inFormula: boolean;
}

export interface FontedCharacter {
  readonly character: string;
  readonly face: FontFace | undefined;
}

export type HasGlyph = (face: FontFace, code: number) => boolean;

const DIGITS = '0123456789';

/** What a script may write into a formula or a sentence after the page has loaded. */
export const RUN_TIME_CHARACTERS = `${DIGITS}+−-.,()%°·×⁄/:= e⁰¹²³⁴⁵⁶⁷⁸⁹⁻`;

const PRINTABLE_ASCII = String.fromCharCode(...Array.from({ length: 95 }, (_, i) => 32 + i));
const GREEK_LETTERS = 'αβγδεζηθικλμνξοπρςστυφχψω';
export const TEXT_CHARACTERS = `${PRINTABLE_ASCII}–—‘’“”…·×−±°²³${GREEK_LETTERS}\u00a0\u2009\u202f${RUN_TIME_CHARACTERS}`;

const TEXT_NODE = 3;
const INVISIBLE = /[\p{Default_Ignorable_Code_Point}\p{Cc}]/u;
const WRITTEN_AS_ESCAPE = /\\u\{?([\da-f]{4,6})\}?/gi;
const BEYOND_ASCII = /[^\0-\x7f]/gu;

/** The texts of a page that a maths font sets, one run for each font: formulas, and others that ask for it by name. */
export function mathsRuns(document: Document, rules: readonly FontRule[]): TextRun[] {
  const styleOf = fontStyleOf(document, rules);
  const runs = new Map<string, TextRun>();
  for (const { text, element } of textNodes(document)) {
    if (element.closest('.katex-mathml')) continue;
    const style = styleOf(element);
    const inFormula = element.closest('.katex-html') !== null;
    if (!inFormula && !style.families.some((family) => MATHS_FAMILY.test(family))) continue;
    const key = JSON.stringify([style, inFormula]);
    runs.set(key, { text: (runs.get(key)?.text ?? '') + text, style, inFormula });
  }
  return [...runs.values()];
}

/** Every character that the text face may have to show on a page. */
export function proseCharacters(document: Document): Set<string> {
  const found = new Set<string>();
  for (const element of document.querySelectorAll('*')) {
    if (element.closest('.katex')) continue;
    for (const { value } of element.attributes) addTo(found, value);
  }
  for (const { text, element } of textNodes(document)) {
    if (element.closest('.katex, style')) continue;
    addTo(found, element.closest('script') ? scriptCharacters(text) : text);
  }
  return found;
}

/** A script may write any of its strings to the page: take all it has beyond ASCII. */
export function scriptCharacters(source: string): Set<string> {
  const written = source.replace(WRITTEN_AS_ESCAPE, (escape, hex: string) => {
    const code = parseInt(hex, 16);
    return code > 0x10ffff ? escape : String.fromCodePoint(code);
  });
  return new Set(written.match(BEYOND_ASCII));
}

/** For each character of a run, the face that shows it, as a browser would choose. */
export function fontedCharacters(run: TextRun, faces: readonly FontFace[], hasGlyph: HasGlyph): FontedCharacter[] {
  const candidates = run.style.families.flatMap((family) => bestFace(faces, family, run.style) ?? []);
  return [...new Set(run.text)].filter(isVisible).map((character) => {
    const code = codeOf(character);
    return { character, face: candidates.find((face) => covers(face, code) && hasGlyph(face, code)) };
  });
}

export function hasDigit(characters: Iterable<string>): boolean {
  return [...characters].some((character) => DIGITS.includes(character));
}

export function isVisible(character: string): boolean {
  return !INVISIBLE.test(character);
}

export function codeOf(character: string): number {
  return character.codePointAt(0) ?? 0;
}

function bestFace(faces: readonly FontFace[], family: string, style: FontStyle): FontFace | undefined {
  const mismatch = (face: FontFace): number =>
    (face.italic === style.italic ? 0 : 10_000) + distance(style.weight, face.weights);
  return faces.filter((face) => face.family === family).sort((a, b) => mismatch(a) - mismatch(b))[0];
}

function distance(weight: number, [lightest, boldest]: readonly [number, number]): number {
  return Math.max(lightest - weight, weight - boldest, 0);
}

function* textNodes(node: Node): Generator<{ text: string; element: Element }> {
  for (const child of node.childNodes) {
    if (child.nodeType === TEXT_NODE) {
      if (child.parentElement) yield { text: child.textContent ?? '', element: child.parentElement };
    } else yield* textNodes(child);
  }
}

function addTo(set: Set<string>, characters: Iterable<string>): void {
  for (const character of characters) set.add(character);
}
