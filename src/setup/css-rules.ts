/** A style rule or @font-face, lifted out of any @media, @supports or @layer around it. */
export interface CssRule {
  readonly prelude: string;
  readonly body: string;
  readonly start: number;
  readonly end: number;
}

export interface Declaration {
  readonly property: string;
  readonly value: string;
}

interface OpenBlock {
  readonly prelude: string;
  readonly start: number;
  readonly bodyStart: number;
}

const STRING = String.raw`"(?:\\.|[^"\\])*"|'(?:\\.|[^'\\])*'`;
const COMMENT = String.raw`\/\*.*?\*\/`;
const BRACKETED = String.raw`\((?:${STRING}|[^()"']|\((?:${STRING}|[^()"'])*\))*\)|\[[^\]]*\]`;

const MARK_OR_INERT = new RegExp(String.raw`${COMMENT}|${STRING}|url\([^"')]*\)|\\.|[{};]`, 'gs');
const BETWEEN_SEMICOLONS = new RegExp(`(?:${STRING}|${BRACKETED}|[^;])+`, 'gs');
const BETWEEN_COMMAS = new RegExp(`(?:${STRING}|${BRACKETED}|[^,])+`, 'gs');
const NESTED_BLOCK = /[^;{}]*\{[^{}]*\}/g;
const GROUPING = /^@(?:media|supports|layer|container|scope|starting-style)\b/i;

/** Every style rule and @font-face of a stylesheet, with its place in the text. */
export function readRules(css: string): CssRule[] {
  const rules: CssRule[] = [];
  const open: OpenBlock[] = [];
  let head = 0;
  for (const { 0: mark, index } of css.matchAll(MARK_OR_INERT)) {
    if (!'{};'.includes(mark)) continue;
    if (mark === '{') {
      const start = head + leadingBlank(css.slice(head, index));
      open.push({ prelude: withoutComments(css.slice(start, index)), start, bodyStart: index + 1 });
    }
    if (mark === '}') {
      const block = open.pop();
      const rule = block && closedRule(css, block, index, open);
      if (rule) rules.push(rule);
    }
    head = index + 1;
  }
  return rules;
}

export function readDeclarations(body: string): Declaration[] {
  return (outerText(withoutComments(body)).match(BETWEEN_SEMICOLONS) ?? []).flatMap((text) => {
    const colon = text.indexOf(':');
    if (colon < 0) return [];
    const value = text.slice(colon + 1).replace(/!\s*important\s*$/i, '');
    return [{ property: text.slice(0, colon).trim().toLowerCase(), value: value.trim() }];
  });
}

export function splitAtCommas(list: string): string[] {
  return (list.match(BETWEEN_COMMAS) ?? []).map((item) => item.trim());
}

export function unquoted(text: string): string {
  return text.trim().replace(/^(["'])(.*)\1$/s, '$2');
}

function closedRule(css: string, block: OpenBlock, closing: number, around: readonly OpenBlock[]): CssRule | undefined {
  if (GROUPING.test(block.prelude)) return undefined;
  const parents = around.map(({ prelude }) => prelude).filter((text) => !GROUPING.test(text));
  if (parents.some((text) => text.startsWith('@'))) return undefined;
  return {
    prelude: [...parents, block.prelude].reduce(nestedSelector),
    body: css.slice(block.bodyStart, closing),
    start: block.start,
    end: closing + 1,
  };
}

function nestedSelector(parent: string, child: string): string {
  const scope = `:is(${parent})`;
  return child.includes('&') ? child.replaceAll('&', scope) : `${scope} ${child}`;
}

function outerText(body: string): string {
  const outer = body.replace(NESTED_BLOCK, '');
  return outer === body ? body : outerText(outer);
}

function withoutComments(text: string): string {
  return text.replace(/\/\*.*?\*\//gs, '').trim();
}

function leadingBlank(text: string): number {
  return /^(?:\s|\/\*.*?\*\/)*/s.exec(text)?.[0].length ?? 0;
}
