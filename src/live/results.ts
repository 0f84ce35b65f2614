import { printValue } from '../../calculators/line.ts';
import type { Program } from '../../calculators/program.ts';
import type { Values } from '../../calculators/formula/evaluate.ts';
import { fitRows, setText, wheelOf } from './slots.ts';

/** The results in the page, each in the unit its reader chose. */
export class ResultsView {
  readonly #root: HTMLElement;
  readonly #program: Program;
  readonly #wheels: HTMLElement[];

  constructor(root: HTMLElement, program: Program) {
    this.#root = root;
    this.#program = program;
    this.#wheels = [...root.querySelectorAll<HTMLElement>('[data-wheel-row]')];
  }

  show(values: Values): void {
    const listed = this.#program.steps.find((step) => step.list && this.#program.results.includes(step.name));
    const list = listed && values[listed.name];
    if (typeof list === 'object') fitRows(this.#wheels, list.length);
    for (const output of this.#root.querySelectorAll<HTMLElement>('[data-of]')) {
      const step = this.#program.steps.find((one) => one.name === output.dataset['of']);
      if (!step) continue;
      const row = output.closest<HTMLElement>('[data-wheel-row]');
      const value = row ? wheelOf(values[step.name], this.#wheels.indexOf(row)) : (values[step.name] ?? NaN);
      setText(output, printValue(value, step.quantity, this.unitOf(step.name, step.unit)));
    }
  }

  /** The unit chosen for a result, or its usual one. */
  unitOf(name: string, usual: string): string {
    const select = this.#root.querySelector<HTMLSelectElement>(`select[data-unit-of="${name}"]`);
    return select ? select.value : usual;
  }

  /** One sentence with the results that are single numbers, for the status line. */
  spoken(): string {
    return [...this.#root.querySelectorAll<HTMLElement>('[data-result-row]')]
      .slice(0, 3)
      .map(
        (row) =>
          `${row.querySelector('dt')?.dataset['means'] ?? ''}: ${row.querySelector('[data-of]')?.textContent ?? ''}`,
      )
      .join('; ');
  }
}
