/** Runs in the page. What a reader cannot see, cannot reach or sees on top of something else, a sentence each. */
export function layoutFaults(paper: boolean): string[] {
  /** The boxes of formulas stand out below their ink by a little. */
  const slack = 4;
  const root = document.documentElement;
  const faults: string[] = [];
  const say = (what: string, where: string): void => {
    faults.push(`${what}: “${where.trim().replace(/\s+/g, ' ').slice(0, 60)}”`);
  };

  interface Surroundings {
    /** Folded away, for the ear only, or a link that comes into sight with the focus. */
    readonly hidden: boolean;
    /** The nearest element that scrolls sideways, that scrolls at all, and the nearest block. */
    readonly scroller: Element | undefined;
    readonly window: Element | undefined;
    readonly block: Element;
  }
  interface Placed {
    readonly box: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
    readonly block: Element;
    readonly words: string;
  }
  const known = new Map<Element, Surroundings>();
  const placed: Placed[] = [];

  const look = (element: Element): Surroundings => {
    const found = known.get(element);
    if (found) return found;
    const { position, width, display, overflowX, overflowY } = getComputedStyle(element);
    const outer = element.parentElement && element !== document.body ? look(element.parentElement) : undefined;
    const folded = element.parentElement?.matches('details:not([open])') === true && !element.matches('summary');
    const small = position === 'absolute' && parseFloat(width) <= 1;
    const surroundings = {
      hidden: outer?.hidden === true || folded || small || element.matches('body > a[href="#main"]'),
      scroller: /auto|scroll/.test(overflowX) && outer ? element : outer?.scroller,
      window: /auto|scroll/.test(overflowX + overflowY) && outer ? element : outer?.window,
      block: /^(inline|contents)/.test(display) && outer ? outer.block : element,
    };
    known.set(element, surroundings);
    return surroundings;
  };
  const isVisible = (element: Element): boolean =>
    element.checkVisibility({ visibilityProperty: true }) && !look(element).hidden;

  const judgeSide = (box: DOMRect, element: Element, words: string): void => {
    const { scroller } = look(element);
    const start = scroller ? scroller.getBoundingClientRect().left - scroller.scrollLeft : 0;
    const end = scroller ? start + scroller.scrollWidth : root.clientWidth;
    if (box.left < start - 1 || box.right > end + 1) say('text out of sight', words);
  };
  /** Only what is not scrolled out of sight can lie on something else. */
  const place = (box: DOMRect, element: Element, words: string): void => {
    const { window, block } = look(element);
    const frame = window?.getBoundingClientRect() ?? box;
    const [left, right] = [Math.max(box.left, frame.left), Math.min(box.right, frame.right)];
    const [top, bottom] = [Math.max(box.top, frame.top), Math.min(box.bottom, frame.bottom)];
    if (left < right && top < bottom) placed.push({ box: { left, right, top, bottom }, block, words });
  };
  const judgeText = (text: Node): void => {
    const parent = text.parentElement;
    const words = (text.textContent ?? '').trim();
    if (!parent || words === '' || !isVisible(parent) || parent.matches('details:not([open])')) return;
    const range = document.createRange();
    range.selectNodeContents(text);
    for (const box of range.getClientRects()) {
      if (box.width === 0 || box.height === 0) continue;
      judgeSide(box, parent, words);
      if (!parent.closest('svg')) place(box, parent, words);
    }
  };
  const judgeBox = (element: HTMLElement): void => {
    const { display, overflowX, overflowY } = getComputedStyle(element);
    if (display === 'inline') return;
    const words = element.textContent;
    const wide = element.scrollWidth > element.clientWidth + 1;
    if (/hidden|clip/.test(overflowX) && wide) say('cut off at the side', words);
    if (/hidden|clip/.test(overflowY) && element.scrollHeight > element.clientHeight + slack)
      say('cut off below', words);
    if (!/auto|scroll/.test(overflowX) || !wide) return;
    if (paper) say('wider than the paper', words);
    const named = element.hasAttribute('role') && Boolean(element.getAttribute('aria-label'));
    if (element.tabIndex < 0 || !named) say('scrolls, but not by keyboard or without a name', words);
  };
  const judgeOverlaps = (): void => {
    placed.sort((a, b) => a.box.top - b.box.top);
    placed.forEach((one, k) => {
      for (let j = k + 1; j < placed.length; j++) {
        const other = placed[j];
        if (!other || other.box.top > one.box.bottom - slack) break;
        const across = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
        if (across <= slack || one.block.contains(other.block) || other.block.contains(one.block)) continue;
        say(`text over text (“${one.words.slice(0, 40)}”)`, other.words);
      }
    });
  };

  if (root.scrollWidth > root.clientWidth) say(`${root.scrollWidth} px wide in ${root.clientWidth}`, document.title);
  const unread = 'script, style, noscript, select, textarea, .katex';
  const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT | NodeFilter.SHOW_ELEMENT, (node) =>
    node instanceof Element && node.matches(unread) ? NodeFilter.FILTER_REJECT : NodeFilter.FILTER_ACCEPT,
  );
  while (texts.nextNode()) if (texts.currentNode instanceof Text) judgeText(texts.currentNode);
  for (const formula of document.querySelectorAll('.katex')) {
    const visible = formula.querySelector('.katex-html');
    if (visible && isVisible(visible)) judgeSide(visible.getBoundingClientRect(), visible, formula.textContent);
  }
  for (const element of document.body.querySelectorAll<HTMLElement>('*:not(.katex *, svg, svg *)')) {
    if (!isVisible(element)) continue;
    if (element instanceof HTMLInputElement) {
      if (element.scrollWidth > element.clientWidth + 1) say('text wider than its field', element.value);
    } else judgeBox(element);
  }
  judgeOverlaps();
  return [...new Set(faults)].slice(0, 12);
}

/** Runs in the page. Lays out at once what the browser would leave until it comes near. */
export function layOut(): void {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync('* { content-visibility: visible !important; }');
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
}

/** Runs in the page. */
export function unfold(): void {
  for (const details of document.querySelectorAll('details')) details.open = true;
}
