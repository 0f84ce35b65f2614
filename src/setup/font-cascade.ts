import { readDeclarations, readRules, splitAtCommas, unquoted } from './css-rules.ts';
import type { Declaration } from './css-rules.ts';
import { readWeight } from './font-faces.ts';

export interface FontStyle {
  readonly families: readonly string[];
  readonly weight: number;
  readonly italic: boolean;
}

/** What a rule says of the font: null stands for `inherit`. */
type FontSettings = { -readonly [K in keyof FontStyle]?: FontStyle[K] | null };

export interface FontRule {
  readonly selector: string;
  readonly specificity: number;
  readonly settings: FontSettings;
}

export const MATHS_FAMILY = /^KaTeX_/;

const INITIAL: FontStyle = { families: [], weight: 400, italic: false };
const INHERITED: FontSettings = { families: null, weight: null, italic: null };
const FONT_SIZE =
  /^(?:\.?\d[\d.]*[a-z%]|(?:calc|clamp|min|max|var)\(|(?:x{1,3}-)?(?:small|large)|medium|smaller|larger)/i;
/** Selectors of things that no element of a page at rest is. */
const NOT_AT_REST = /::|:(?:hover|focus|active|visited|target)/;
const INHERIT = /^(?:inherit|unset)$/i;

/** The rules that decide which maths font sets a text, weakest first. */
export function readMathsFontRules(css: string): FontRule[] {
  const rules = readRules(css).flatMap(({ prelude, body }) => {
    if (prelude.startsWith('@')) return [];
    const settings = fontSettings(readDeclarations(body));
    const isMaths = prelude.includes('.katex') || settings.families?.some((f) => MATHS_FAMILY.test(f));
    if (!isMaths || Object.keys(settings).length === 0) return [];
    const selectors = splitAtCommas(prelude).filter((selector) => !NOT_AT_REST.test(selector));
    return selectors.map((selector) => ({ selector, specificity: specificity(selector), settings }));
  });
  return rules.sort((a, b) => a.specificity - b.specificity);
}

/** Works out the font of any element of a page from the rules and from inline styles. */
export function fontStyleOf(document: Document, rules: readonly FontRule[]): (element: Element) => FontStyle {
  const settings = new Map<Element, FontSettings>();
  for (const rule of rules) {
    for (const element of document.querySelectorAll(rule.selector)) {
      settings.set(element, { ...settings.get(element), ...rule.settings });
    }
  }
  const known = new Map<Element, FontStyle>();
  const resolve = (element: Element): FontStyle => {
    const found = known.get(element);
    if (found) return found;
    const parent = element.parentElement ? resolve(element.parentElement) : INITIAL;
    const style = applied(parent, {
      ...attributeSettings(element),
      ...settings.get(element),
      ...inlineSettings(element),
    });
    known.set(element, style);
    return style;
  };
  return resolve;
}

function applied(parent: FontStyle, settings: FontSettings): FontStyle {
  return {
    families: settings.families ?? parent.families,
    weight: settings.weight ?? parent.weight,
    italic: settings.italic ?? parent.italic,
  };
}

function inlineSettings(element: Element): FontSettings {
  return fontSettings(readDeclarations(element.getAttribute('style') ?? ''));
}

/** SVG says its fonts in attributes of the same names as the CSS properties. */
function attributeSettings(element: Element): FontSettings {
  const names = ['font-family', 'font-weight', 'font-style'];
  return fontSettings(
    names.flatMap((property) => {
      const value = element.getAttribute(property);
      return value === null ? [] : [{ property, value }];
    }),
  );
}

function fontSettings(declarations: readonly Declaration[]): FontSettings {
  const settings: FontSettings = {};
  for (const { property, value } of declarations) {
    if (property === 'font') Object.assign(settings, shorthand(value));
    if (property === 'font-family') settings.families = INHERIT.test(value) ? null : readFamilies(value);
    if (property === 'font-style') settings.italic = INHERIT.test(value) ? null : isItalic(value);
    if (property === 'font-weight') settings.weight = INHERIT.test(value) ? null : weightOr400(value);
  }
  return settings;
}

function shorthand(value: string): FontSettings {
  if (INHERIT.test(value)) return INHERITED;
  const words = value.replace(/\s*\/\s*/g, '/').split(/\s+/);
  const size = words.findIndex((word) => FONT_SIZE.test(word));
  if (size < 0) return {};
  const before = words.slice(0, size);
  const weight = before.find((word) => word === 'bold' || /^\d+$/.test(word));
  return {
    families: readFamilies(words.slice(size + 1).join(' ')),
    weight: weight === undefined ? 400 : readWeight(weight),
    italic: before.some(isItalic),
  };
}

function readFamilies(list: string): string[] {
  return splitAtCommas(list).map(unquoted);
}

function isItalic(value: string): boolean {
  return /^(?:italic|oblique)/i.test(value);
}

function weightOr400(value: string): number {
  const weight = readWeight(value);
  return Number.isNaN(weight) ? 400 : weight;
}

function specificity(selector: string): number {
  const ids = selector.match(/#[\w-]+/g)?.length ?? 0;
  const classes = selector.match(/\.[\w-]+|\[[^\]]*\]|:(?!is|where|not|has)[\w-]+/g)?.length ?? 0;
  const types = selector.match(/(?:^|[\s>+~(,])[a-z][\w-]*/gi)?.length ?? 0;
  return ids * 10_000 + classes * 100 + types;
}
