import { HyperFormula } from 'hyperformula';
import type { Calculator } from '../../../calculators/calculator.ts';
import { asCells } from '../../../calculators/emit/spreadsheet.ts';
import type { Answer } from './agreement.ts';
import { entriesOf, type Point } from './points.ts';
import { readCsv } from './read-csv.ts';

/** Without the engine's own forgiveness for rounding: not every spreadsheet has one. */
const options = { licenseKey: 'gpl-v3', smartRounding: false };

const firstValue = 3;

/** A sheet of one calculator, for lists of one length. */
class Sheet {
  readonly #calculator: Calculator;
  readonly #engine: HyperFormula;
  readonly #rows: readonly (readonly string[])[];

  constructor(calculator: Calculator, rows: string[][]) {
    this.#calculator = calculator;
    this.#rows = rows;
    this.#engine = HyperFormula.buildFromArray(rows, options);
  }

  /** Whether these rows differ from the sheet's in nothing but the values of the givens. */
  fits(rows: readonly (readonly string[])[]): boolean {
    const givens = new Set(this.#calculator.given.map(({ name }) => name));
    const fixed = (all: readonly (readonly string[])[]): string =>
      JSON.stringify(all.map((row) => (givens.has(row[0] ?? '') ? [...row.slice(0, firstValue), row.length] : row)));
    return fixed(rows) === fixed(this.#rows);
  }

  /** Types the givens' values in, as a reader would, and reads the results. */
  ask(rows: readonly (readonly string[])[]): Answer {
    this.#engine.batch(() => {
      for (const { name } of this.#calculator.given) {
        const row = rows.findIndex(([head]) => head === name);
        const cells = (rows[row] ?? []).slice(firstValue);
        this.#engine.setCellContents({ sheet: 0, row, col: firstValue }, [cells]);
      }
    });
    const checks = this.#rows.flatMap(([head = ''], row) => (head.startsWith('check ') ? [row] : []));
    if (checks.some((row) => this.#cells(row)[0] !== true)) return undefined;
    const steps = this.#calculator.steps.map(({ name, list }) => {
      const cells = this.#cells(this.#rows.findIndex(([head]) => head === name));
      const numbers = cells.map((cell) => (typeof cell === 'number' ? cell : NaN));
      return [name, list ? numbers : (numbers[0] ?? NaN)] as const;
    });
    return steps.flat(2).some(Number.isNaN) ? undefined : Object.fromEntries(steps);
  }

  #cells(row: number): unknown[] {
    const width = this.#rows[row]?.length ?? 0;
    return Array.from({ length: width - firstValue }, (_, k) =>
      this.#engine.getCellValue({ sheet: 0, row, col: firstValue + k }),
    );
  }

  close(): void {
    this.#engine.destroy();
  }
}

/** What the cells give at each point: nothing where a check fails or a step has no value. */
export function askCells(calculator: Calculator, points: readonly Point[]): Answer[] {
  const sheets: Sheet[] = [];
  const answers = points.map((point) => {
    const rows = readCsv(asCells(calculator, entriesOf(calculator, point), ''));
    let sheet = sheets.find((one) => one.fits(rows));
    if (!sheet) sheets.push((sheet = new Sheet(calculator, rows)));
    return sheet.ask(rows);
  });
  for (const sheet of sheets) sheet.close();
  return answers;
}
