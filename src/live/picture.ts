import { setText } from './slots.ts';

/** A drawing in the page. */
export class Picture {
  readonly #frame: Element;
  #tags: readonly string[] = [];
  #elements: readonly Element[] = [];

  constructor(frame: Element) {
    this.#frame = frame;
  }

  /** Changes what differs from the last drawing: to parse it anew takes three times as long. */
  show(drawing: string): void {
    const tags = drawing.match(/<\w[^<]*/g) ?? [];
    const changed = tags.flatMap((tag, k) => (tag === this.#tags[k] ? [] : [k]));
    const alike = tags.length === this.#tags.length && changed.every((k) => shape(tags[k]) === shape(this.#tags[k]));
    if (!alike) {
      this.#frame.innerHTML = drawing;
      this.#elements = [...this.#frame.querySelectorAll('*')];
    } else for (const k of changed) write(this.#elements[k], tags[k] ?? '', this.#tags[k] ?? '');
    this.#tags = tags;
  }
}

/** A tag without what may change in place. */
const shape = (tag = ''): string => tag.replace(/"[^"]*"|>[^&]*$/g, '');

function write(element: Element | undefined, tag: string, before: string): void {
  if (!element) return;
  for (const [pair, name = '', value = ''] of tag.matchAll(/ ([\w-]+)="([^"]*)"/g)) {
    if (!before.includes(pair)) element.setAttribute(name, value);
  }
  const text = tag.slice(tag.indexOf('>') + 1);
  if (text) setText(element, text);
}
