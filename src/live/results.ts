import { printValue } from '../../calculators/line.ts';
import type { ResultUnits } from '../../calculators/permalink.ts';
import type { Program } from '../../calculators/program.ts';
import type { Step } from '../../calculators/calculator.ts';
import type { Value, Values } from '../../calculators/formula/evaluate.ts';
import { symbolText } from '../../calculators/formula/symbols.ts';
import type { describeShares, printSpread, Spread } from '../../calculators/uncertainty.ts';
import { fitRows, TextPlace, wheelOf } from './slots.ts';

/** The reading of uncertainty is fetched only when an input has a ±. */
export interface Spreads {
  readonly of: ReadonlyMap<string, Spread>;
  readonly print: typeof printSpread;
  readonly describe: typeof describeShares;
}

/** A place where a result stands. */
interface Output {
  readonly place: TextPlace;
  readonly step: Step;
  /** Where its reader chooses the unit. */
  readonly unit: HTMLSelectElement | null;
  readonly wheel: number | undefined;
}

/** The results in the page, each in the unit its reader chose. */
export class ResultsView {
  readonly #root: HTMLElement;
  readonly #program: Program;
  readonly #wheels: HTMLElement[];
  readonly #shares: TextPlace | undefined;
  #outputs: readonly Output[] = [];

  constructor(root: HTMLElement, program: Program) {
    this.#root = root;
    this.#program = program;
    this.#wheels = [...root.querySelectorAll<HTMLElement>('[data-wheel-row]')];
    const shares = root.querySelector('[data-shares]');
    if (shares) this.#shares = new TextPlace(shares);
    this.#findOutputs();
  }

  /** @param spreads the ± of the results and how to print them, when an input has one. */
  show(values: Values, spreads?: Spreads): void {
    const listed = this.#program.steps.find((step) => step.list && this.#program.results.includes(step.name));
    const list = listed && values[listed.name];
    if (typeof list === 'object' && fitRows(this.#wheels, list.length)) this.#findOutputs();
    for (const { place, step, unit, wheel } of this.#outputs) {
      const of = (value: Value | undefined): Value => (wheel === undefined ? (value ?? NaN) : wheelOf(value, wheel));
      const value = of(values[step.name]);
      const chosen = unit?.value ?? step.unit;
      const spread = spreads?.of.get(step.name);
      place.show(
        spread && spreads
          ? spreads.print(value, of(spread.spread), step.quantity, chosen)
          : printValue(value, step.quantity, chosen),
      );
    }
    this.#showShares(spreads);
  }

  /** The units chosen in place of the usual ones. */
  units(): ResultUnits {
    const chosen = this.#outputs.flatMap(({ step, unit }): [string, string][] =>
      unit && unit.value !== step.unit ? [[step.name, unit.value]] : [],
    );
    return Object.fromEntries(chosen);
  }

  choose(units: ResultUnits): void {
    for (const { step, unit } of this.#outputs) if (unit) unit.value = units[step.name] ?? step.unit;
  }

  /** Looking for the places of the results takes longer than filling them. */
  #findOutputs(): void {
    this.#outputs = [...this.#root.querySelectorAll<HTMLElement>('[data-of]')].flatMap((element): Output[] => {
      const step = this.#program.steps.find((one) => one.name === element.dataset['of']);
      if (!step) return [];
      const row = element.closest<HTMLElement>('[data-wheel-row]');
      const unit = this.#root.querySelector<HTMLSelectElement>(`select[data-unit-of="${step.name}"]`);
      return [{ place: new TextPlace(element), step, unit, wheel: row ? this.#wheels.indexOf(row) : undefined }];
    });
  }

  #showShares(spreads: Spreads | undefined): void {
    const lines = this.#program.results.flatMap((name) => {
      const spread = spreads?.of.get(name);
      return spread && spreads ? [`${symbolText(name)}: ${spreads.describe(spread.shares)}`] : [];
    });
    this.#shares?.show(lines.length > 0 ? `Where the ± comes from. ${lines.join('; ')}.` : '');
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
