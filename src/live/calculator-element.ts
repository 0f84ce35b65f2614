import type { Given } from '../../calculators/calculator.ts';
import { givenText, readGiven, type Entries } from '../../calculators/inputs.ts';
import { evaluate, type Values } from '../../calculators/formula/evaluate.ts';
import { fill } from '../../calculators/fill.ts';
import { fromQuery, toQuery } from '../../calculators/permalink.ts';
import { solve, useRootFinder } from '../../calculators/solve.ts';
import { holdUnits } from '../typeset/hold-units.ts';
import { drawingOf, type Draw } from './drawings.ts';
import { Fields, nudge } from './fields.ts';
import { lineOf, type PageData } from './page-data.ts';
import { Picture } from './picture.ts';
import { ResultsView } from './results.ts';
import { setText, StepView, TextPlace } from './slots.ts';
import { Turning } from './turning.ts';

/** As a person would write it where it can be read, else as it came, with the problem beside it. */
function tidyText(given: Given, text: string): string {
  const read = readGiven(given, text);
  return typeof read === 'string' ? text : givenText(given, read);
}

/** Wakes a calculator that the server rendered: fields answer, and everything below follows. */
class CalculatorElement extends HTMLElement {
  #data: PageData | undefined;
  #fields: Fields | undefined;
  #results: ResultsView | undefined;
  #steps: StepView[] = [];
  #turning: Turning | undefined;
  #draw: Draw | undefined;
  #picture: Picture | undefined;
  #caption: TextPlace | undefined;
  #cautions: Element | null = null;
  #warned: string | undefined;
  #listening: AbortController | undefined;
  #last: Entries | undefined;
  #values: Values | undefined;
  #later: ReturnType<typeof setTimeout> | undefined;
  #showCode: (() => void) | undefined;

  connectedCallback(): void {
    const json = this.querySelector('script[type="application/json"]')?.textContent;
    if (!json) return;
    const data = JSON.parse(json) as PageData;
    if (!data.program.steps.some((step) => step.kind === 'root' && step.by)) return this.#wake(data);
    void import('../../calculators/root-by.ts').then(({ findRootBy }) => {
      useRootFinder(findRootBy);
      if (this.isConnected) this.#wake(data);
    });
  }

  #wake(data: PageData): void {
    const { program, figure, lines } = data;
    this.#data = data;
    this.#fields = new Fields(this, program);
    this.#results = new ResultsView(this, program);
    this.#steps = program.steps.flatMap((step) => {
      const block = this.querySelector<HTMLElement>(`[data-step="${step.name}"]`);
      return block ? [new StepView(block, step, lineOf(step, lines[step.name]))] : [];
    });
    const frame = this.querySelector('[data-drawing]');
    if (frame) this.#picture = new Picture(frame);
    const caption = this.querySelector('[data-caption]');
    if (caption) this.#caption = new TextPlace(caption);
    this.#cautions = this.querySelector('[data-cautions]');
    this.#listen(data);
    this.#fields.enable();
    if (this.hasAttribute('data-address')) this.#readAddress();
    this.#update();
    if (figure) {
      void drawingOf(program, figure).then((draw) => {
        this.#draw = draw;
        this.#showFigure();
      });
    }
    this.querySelector('[data-code-blocks]')?.addEventListener('toggle', () => void this.#wakeCode(data), {
      capture: true,
      once: true,
    });
    this.dataset['awake'] = '';
  }

  disconnectedCallback(): void {
    this.#listening?.abort();
    clearTimeout(this.#later);
  }

  #listen({ figure }: PageData): void {
    this.#listening?.abort();
    this.#listening = new AbortController();
    const { signal } = this.#listening;
    this.addEventListener('input', () => this.#update(), { signal });
    this.addEventListener('change', () => this.#update(), { signal });
    this.addEventListener('keydown', (event) => this.#nudge(event), { signal });
    for (const use of ['pointerdown', 'click'])
      this.addEventListener(use, () => this.#showLink(), { capture: true, signal });
    this.querySelector('[data-copy]')?.addEventListener('click', () => void this.#copyAddress(), { signal });
    const handle = this.querySelector<HTMLElement>('[data-turn]');
    if (!handle || !figure?.turn) return;
    const { given } = figure.turn;
    this.#turning = new Turning(handle, signal, (degrees) => {
      this.#fields?.set(given, `${String(degrees).replace('-', '−')}°`);
      this.#update();
    });
  }

  #readAddress(): void {
    if (!this.#data || !location.search) return;
    const { texts, units, problems } = fromQuery(this.#data.program, new URLSearchParams(location.search));
    for (const given of this.#data.program.given) {
      const text = texts[given.name];
      if (text !== undefined) this.#fields?.set(given.name, tidyText(given, text));
    }
    this.#results?.choose(units);
    const note = this.querySelector('[data-link-problems]');
    if (note) note.textContent = problems.join(' ');
  }

  #update(): void {
    if (!this.#data || !this.#fields) return;
    const { program } = this.#data;
    const inputs = this.#fields.read();
    if (!inputs.ok) return this.#refuse(inputs.problems);
    const { values, refusal } = solve(program, inputs.values);
    if (refusal) {
      const message = fill(refusal.says, [...program.given, ...program.steps], values);
      return this.#refuse([{ given: refusal.given ?? program.given[0]?.name ?? '', message }]);
    }
    this.#fields.show([]);
    this.removeAttribute('data-stale');
    this.#last = inputs.entries;
    this.#values = values;
    this.#results?.show(values);
    if (Object.values(inputs.entries).some((entry) => entry.spread !== undefined))
      void this.#showSpreads(inputs.entries);
    for (const step of this.#steps) step.show(values);
    this.#showCautions(values);
    this.#showFigure();
    this.#afterwards();
  }

  /** The numbers shown stay those of the last inputs that could be used, and are marked so. */
  #refuse(problems: readonly { readonly given: string; readonly message: string }[]): void {
    this.#fields?.show(problems);
    this.setAttribute('data-stale', '');
  }

  async #showSpreads(entries: Entries): Promise<void> {
    const values = this.#values;
    const { spreadsOf, printSpread, describeShares } = await import('../../calculators/uncertainty.ts');
    if (!values || values !== this.#values || !this.#data) return;
    const of = spreadsOf(this.#data.program, entries, values);
    this.#results?.show(values, { of, print: printSpread, describe: describeShares });
  }

  #showCautions(values: Values): void {
    const list = this.#cautions;
    if (!list || !this.#data) return;
    const { program } = this.#data;
    const texts = program.cautions
      .filter(({ when }) => when === undefined || evaluate(when, values) === 1)
      .map(({ says }) => holdUnits(fill(says, [...program.given, ...program.steps], values)));
    if (texts.join() === this.#warned) return;
    this.#warned = texts.join();
    list.replaceChildren(
      ...texts.map((text) => {
        const item = document.createElement('li');
        item.textContent = text;
        return item;
      }),
    );
  }

  #showFigure(): void {
    if (!this.#picture || !this.#data?.figure || !this.#values || !this.#draw) return;
    const { program, figure } = this.#data;
    this.#picture.show(this.#draw(this.#values));
    this.#caption?.show(holdUnits(fill(figure.caption, [...program.given, ...program.steps], this.#values)));
    if (figure.turn) this.#turning?.show((Number(this.#values[figure.turn.given]) * 180) / Math.PI);
  }

  /** What is shown, as the query string of a link. */
  #query(): string {
    return this.#data && this.#last ? `?${toQuery(this.#data.program, this.#last, this.#results?.units())}` : '';
  }

  /** A link says what is shown when it is used; until then it may be a moment behind. */
  #showLink(): void {
    const query = this.#query();
    if (!query) return;
    for (const link of this.querySelectorAll<HTMLAnchorElement>('a[data-link]')) link.search = query;
  }

  /** What may follow a moment later: the address, the plot, the spoken result. */
  #afterwards(): void {
    clearTimeout(this.#later);
    if (!this.hasAttribute('data-awake')) return this.#showLink();
    this.#later = setTimeout(() => {
      this.#showLink();
      this.#writeAddress();
      void this.#showPlot();
      this.#showCode?.();
      const status = this.querySelector('[data-status]');
      if (status) setText(status, this.#results?.spoken() ?? '');
    }, 300);
  }

  /** Some browsers throw when the address changes too often; it is then written with the next change. */
  #writeAddress(): void {
    const search = this.#query();
    if (!this.hasAttribute('data-address') || !search || search === location.search) return;
    try {
      history.replaceState(history.state, '', search);
    } catch {
      return;
    }
  }

  async #showPlot(): Promise<void> {
    const frame = this.querySelector<HTMLElement>('[data-plot]');
    const values = this.#values;
    if (!frame || !values || !this.#data) return;
    const chosen = (name: string): string => this.querySelector<HTMLSelectElement>(`[data-plot-${name}]`)?.value ?? '';
    const [{ plotOf }, library] = await Promise.all([import('../plot/plot-of.ts'), import('@observablehq/plot')]);
    if (values !== this.#values) return;
    const spec = { of: chosen('of'), against: chosen('against') };
    frame.replaceChildren(plotOf(library, document, this.#data.program, spec, values));
  }

  async #wakeCode({ program }: PageData): Promise<void> {
    const { followWith } = await import('./code-blocks.ts');
    this.#showCode = followWith(this, program, () => this.#last);
  }

  #nudge(event: KeyboardEvent): void {
    const field = event.target;
    if (!(field instanceof HTMLInputElement) || (event.key !== 'ArrowUp' && event.key !== 'ArrowDown')) return;
    const next = nudge(field.value, event.key === 'ArrowUp', event.shiftKey);
    if (next === undefined) return;
    event.preventDefault();
    field.value = next;
    this.#update();
  }

  async #copyAddress(): Promise<void> {
    if (!this.#data) return;
    const path = `/calculators/${this.#data.program.id}/${this.#query()}`;
    const status = this.querySelector('[data-copied]');
    try {
      await navigator.clipboard.writeText(new URL(path, location.href).href);
      if (status) setText(status, 'Copied.');
    } catch {
      if (status) setText(status, 'Copying is not allowed here; copy it from the address bar.');
    }
  }
}

customElements.define('crab-calculator', CalculatorElement);
