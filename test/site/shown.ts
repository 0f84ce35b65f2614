/** What a calculator in a page shows, as texts. */
export interface Shown {
  readonly id: string;
  readonly fields: Readonly<Record<string, string>>;
  /** The sentences beside fields, by field; and the fields marked as wrong. */
  readonly problems: Readonly<Record<string, string>>;
  readonly invalid: readonly string[];
  readonly stale: boolean;
  readonly results: readonly ShownResult[];
  readonly steps: readonly ShownStep[];
  readonly cautions: readonly string[];
  readonly caption: string;
  readonly figure: string;
}

export interface ShownResult {
  readonly name: string;
  readonly wheel: string;
  /** The unit chosen, if there is a choice. */
  readonly unit: string | null;
  readonly text: string;
}

export interface ShownStep {
  readonly name: string;
  readonly value: string | null;
  readonly rows: readonly ShownRow[];
}

export interface ShownRow {
  readonly wheel: string;
  /** The numbers of the half that is read out, and of the half that is seen. */
  readonly heard: readonly ShownNumber[];
  readonly seen: readonly ShownNumber[];
  readonly result: string;
  readonly converted: string | null;
}

export interface ShownNumber {
  readonly name: string;
  readonly held: boolean;
  readonly text: string;
}

/** What a reader does at once: texts put into fields, words chosen, units chosen for results. */
export interface Act {
  readonly fields?: Readonly<Record<string, string>>;
  /** A unit by the name of its result; another than it has where none is named. */
  readonly units?: Readonly<Record<string, string | null>>;
}

/**
 * Runs in the page. Fills fields at once, as pasting does, or chooses words and units; reads what the calculator shows
 * after each act, and gives it as JSON. Many acts in one call: between calls the browser would lay out and paint.
 */
export function actAndRead(root: Element, acts: readonly Act[]): string {
  const all = <Kind extends Element = HTMLElement>(selector: string, within: Element = root): Kind[] => [
    ...within.querySelectorAll<Kind>(selector),
  ];
  const textOf = (element: Element | null | undefined): string => (element?.textContent ?? '').trim();
  const maybe = (selector: string, within: Element): string | null => {
    const [found] = all(selector, within);
    return found ? textOf(found) : null;
  };

  const numbers = (half: string, row: Element): ShownNumber[] => {
    const found = all(`${half} [data-n]`, row).map((slot) => ({
      name: slot.dataset['n'] ?? '',
      held: slot.hasAttribute('data-held'),
      text: slot.textContent,
    }));
    const written = new Map(found.map((one) => [JSON.stringify(one), one]));
    return [...written.keys()].sort().flatMap((key) => written.get(key) ?? []);
  };
  const row = (element: Element): ShownRow => ({
    wheel: maybe('[data-wheel]', element) ?? '',
    heard: numbers('math', element),
    seen: numbers('.katex-html', element),
    result: maybe('[data-result]', element) ?? '',
    converted: maybe('[data-converted]', element),
  });
  const fill = (name: string, text: string): void => {
    const [field] = all<HTMLInputElement | HTMLSelectElement>(`[name="${name}"]`);
    if (!field || field.disabled) throw new Error(`no field to fill: ${name}`);
    if (field.value === text) return;
    field.value = text;
    field.dispatchEvent(new Event('input', { bubbles: true }));
  };
  const chooseUnit = (name: string, wanted: string | null): void => {
    const [select] = all<HTMLSelectElement>(`select[data-unit-of="${name}"]`);
    const isWanted = (one: HTMLOptionElement): boolean => (wanted === null ? !one.selected : one.value === wanted);
    const unit = [...(select?.options ?? [])].find(isWanted);
    if (!select || select.disabled || !unit) throw new Error(`no other unit for ${name}`);
    select.value = unit.value;
    select.dispatchEvent(new Event('change', { bubbles: true }));
  };
  const problem = (field: Element): string =>
    textOf(root.ownerDocument.getElementById(field.getAttribute('aria-describedby') ?? ''));
  const { program } = JSON.parse(textOf(all('script[type="application/json"]')[0])) as { program: { id: string } };

  const read = (): Shown => {
    const fields = all<HTMLInputElement | HTMLSelectElement>('[name]');
    return {
      id: program.id,
      fields: Object.fromEntries(fields.map((field) => [field.name, field.value])),
      problems: Object.fromEntries(
        fields.filter((field) => problem(field) !== '').map((field) => [field.name, problem(field)]),
      ),
      invalid: fields.filter((field) => field.getAttribute('aria-invalid') === 'true').map(({ name }) => name),
      stale: root.hasAttribute('data-stale'),
      results: all('[data-of]').map((output) => {
        const name = output.dataset['of'] ?? '';
        const [unit] = all<HTMLSelectElement>(`[data-unit-of="${name}"]`);
        const wheel = textOf(output.closest('[data-wheel-row]')?.querySelector('[data-wheel]'));
        return { name, wheel, unit: unit ? unit.value : null, text: textOf(output) };
      }),
      steps: all('[data-step]').map((step) => ({
        name: step.dataset['step'] ?? '',
        value: maybe('[data-value]', step),
        rows: all('[data-row]', step).map(row),
      })),
      cautions: all('[data-cautions] li').map(textOf),
      caption: textOf(all('[data-caption]')[0]),
      figure: all('[data-drawing]')[0]?.innerHTML ?? '',
    };
  };
  const after = acts.map(({ fields = {}, units = {} }) => {
    for (const [name, text] of Object.entries(fields)) fill(name, text);
    for (const [name, unit] of Object.entries(units)) chooseUnit(name, unit);
    return read();
  });
  return JSON.stringify(after);
}
