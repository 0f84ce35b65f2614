import { printValue } from '../../calculators/line.ts';
import type { Program } from '../../calculators/program.ts';
import type { Values } from '../../calculators/formula/evaluate.ts';
import { symbolText } from '../../calculators/formula/symbols.ts';
import type { describeShares, printSpread, Spread } from '../../calculators/uncertainty.ts';
import { fitRows, setText, wheelOf } from './slots.ts';

/** The reading of uncertainty is fetched only when an input has a ±. */
export interface Spreads {
  readonly of: ReadonlyMap<string, Spread>;
  readonly print: typeof printSpread;
  readonly describe: typeof describeShares;
}

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

  /** @param spreads the ± of the results and how to print them, when an input has one. */
  show(values: Values, spreads?: Spreads): void {
    const listed = this.#program.steps.find((step) => step.list && this.#program.results.includes(step.name));
    const list = listed && values[listed.name];
    if (typeof list === 'object') fitRows(this.#wheels, list.length);
    for (const output of this.#root.querySelectorAll<HTMLElement>('[data-of]')) {
      const step = this.#program.steps.find((one) => one.name === output.dataset['of']);
      if (!step) continue;
      const row = output.closest<HTMLElement>('[data-wheel-row]');
      const value = row ? wheelOf(values[step.name], this.#wheels.indexOf(row)) : (values[step.name] ?? NaN);
      const unit = this.unitOf(step.name, step.unit);
      const spread = spreads?.of.get(step.name);
      setText(
        output,
        spread && spreads
          ? spreads.print(
              value,
              row ? wheelOf(spread.spread, this.#wheels.indexOf(row)) : spread.spread,
              step.quantity,
              unit,
            )
          : printValue(value, step.quantity, unit),
      );
    }
    this.#showShares(spreads);
  }

  /** The unit chosen for a result, or its usual one. */
  unitOf(name: string, usual: string): string {
    const select = this.#root.querySelector<HTMLSelectElement>(`select[data-unit-of="${name}"]`);
    return select ? select.value : usual;
  }

  #showShares(spreads: Spreads | undefined): void {
    const list = this.#root.querySelector('[data-shares]');
    if (!list) return;
    const lines = this.#program.results.flatMap((name) => {
      const spread = spreads?.of.get(name);
      return spread && spreads ? [`${symbolText(name)}: ${spreads.describe(spread.shares)}`] : [];
    });
    setText(list, lines.length > 0 ? `Where the ± comes from. ${lines.join('; ')}.` : '');
  }

  /** For the status line: the first results that are single numbers or, where there are none, what the wheels do. */
  spoken(): string {
    const singles = [...this.#root.querySelectorAll<HTMLElement>('[data-result-row] [data-of]')].slice(0, 3);
    const [first] = this.#root.querySelectorAll<HTMLElement>('[data-wheel-row] [data-of]');
    const told = singles.length > 0 || !first ? singles : [first];
    return told.map(({ dataset: { of = '' } }) => this.#spokenResult(of)).join('; ');
  }

  #spokenResult(name: string): string {
    const step = this.#program.steps.find((one) => one.name === name);
    const outputs = [...this.#root.querySelectorAll(`[data-of="${name}"]`)];
    return `${step?.means ?? ''}: ${outputs.map(({ textContent }) => textContent).join(', ')}`;
  }
}
