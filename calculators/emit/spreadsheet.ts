import { siOf, type Given, type LookUpStep, type RootStep, type Step } from '../calculator.ts';
import { toValues, type Entries } from '../inputs.ts';
import type { Entry } from '../quantity/parse.ts';
import { solve } from '../solve.ts';
import { describeGiven, describeStep, mustHold, originOf, siUnit } from './about.ts';
import { ascii } from './ascii.ts';
import { Places, type GridRow } from './cell-grid.ts';
import { csv } from './csv.ts';
import type { Emittable } from './emittable.ts';
import { writerOf, type Writer } from './express.ts';
import { planOf, type Plan } from './plan.ts';
import { cellLanguage, dust, numberText } from './spreadsheet-language.ts';

/** What the rows of one sheet are written with. */
interface Sheet {
  readonly plan: Plan;
  readonly entries: Entries;
  /** How many columns a name takes: one, or one a wheel. */
  readonly width: (name: string) => number;
  readonly places: () => Places;
  /** Formulas for the wheel in column k; `own` puts other cells in the place of some names. */
  readonly writer: (k: number, own?: ReadonlyMap<string, string>) => Writer;
}

/**
 * A calculator as the cells of a spreadsheet, in CSV: formulas refer to one another by A1 addresses.
 * @param entries the numbers of the givens; their lists tell how many columns there are.
 * @param address where the working is found.
 */
export function asCells(calculator: Emittable, entries: Entries, address: string): string {
  const plan = planOf(calculator, new Set());
  const { values } = solve(calculator, toValues(calculator.given, entries));
  const width = (name: string): number => [values[name] ?? 0].flat().length;
  const most = Math.max(...[...plan.facts.lists].map(width), 1);
  const above = heading(calculator, address, plan.facts.lists.size > 0 ? most : undefined);
  let places: Places | undefined;
  const found = (): Places => (places ??= new Places(rows, above.length));
  const writer = (k: number, own?: ReadonlyMap<string, string>): Writer => {
    const cell = (name: string): string =>
      own?.get(name) ?? (plan.facts.lists.has(name) ? found().moving(name, k) : found().fixed(name));
    const range = (name: string): string => found().range(name, name, 0, width(name) - 1);
    return writerOf(cellLanguage({ cell, range, wheel: k + 1 }), plan.facts);
  };
  const rows = rowsOf({ plan, entries, width, places: found, writer });
  return csv([...above, ...rows.map(({ head, cells }) => [...head.map(ascii), ...cells.map((cell) => cell())])]);
}

/** What a list has one number for: the step that counts them says so. */
const memberName = ({ steps }: Emittable): string =>
  (steps.find(({ name }) => name === 'i')?.means ?? 'wheel').split(' ')[0] ?? '';

function heading(calculator: Emittable, address: string, members: number | undefined): string[][] {
  const member = memberName(calculator);
  const columns = Array.from({ length: (members ?? 1) - 1 }, (_, k) => `${member} ${k + 2}`);
  return [
    ...originOf(calculator, address, 'spreadsheet cells').map((line) => [line]),
    ['SI units throughout; angles in radians. The names of functions are the English ones.'],
    [`Rounding dust stays in the cells; comparisons take values within ${dust} of one another (SI) for equal.`],
    ...(members === undefined
      ? []
      : [[`The columns are for ${members} ${member}s. For another number, fetch the cells again.`]]),
    ['name', 'meaning', 'unit', members === undefined ? 'value' : `value, or ${member} 1`, ...columns],
  ];
}

const rowsOf = (sheet: Sheet): GridRow[] => {
  const { calculator } = sheet.plan;
  return [
    ...calculator.given.map((given) => givenRow(given, sheet)),
    ...calculator.steps.map((step) => stepRow(step, sheet)),
    ...calculator.requires.map(({ given, holds }, k): GridRow => ({
      key: `requirement ${k}`,
      head: [`check ${given}`, mustHold(holds), ''],
      cells: [() => `=${sheet.writer(0).condition(holds)}`],
    })),
    ...calculator.steps.flatMap((step) => {
      if (step.kind === 'root') return rootRows(step, sheet);
      return step.kind === 'look-up' ? tableRows(step, sheet) : [];
    }),
  ];
};

const givenRow = (given: Given, { entries }: Sheet): GridRow => {
  const entry = entries[given.name] ?? given.usual;
  return {
    key: given.name,
    head: [given.name, describeGiven(given), siUnit(given.quantity)],
    cells: numbers(given, entry).map((text) => () => text),
  };
};

/** Degrees stay degrees for the reader's eye. */
function numbers(given: Given, entry: Entry): string[] {
  if (entry.unit === 'deg') return [entry.value].flat().map((x) => `=RADIANS(${numberText(x)})`);
  return [siOf(entry, given.quantity)].flat().map(numberText);
}

const perWheel = (name: string, { width }: Sheet, text: (k: number) => string): (() => string)[] =>
  Array.from({ length: width(name) }, (_, k) => () => `=${text(k)}`);

function stepRow(step: Step, sheet: Sheet): GridRow {
  const text = (k: number): string => {
    if (step.kind === 'formula') return sheet.writer(k).formula(step.tree);
    return step.kind === 'root' ? rootText(step, sheet) : lookUpText(step, sheet, k);
  };
  return {
    key: step.name,
    head: [step.name, describeStep(step), siUnit(step.quantity)],
    cells: perWheel(step.name, sheet, text),
  };
}

const halvings = 50;
const ends = ({ name }: Step): string => `${name} ends`;
const halving = ({ name }: Step, k: number): string => `${name} halving ${k}`;

/** Columns of a halving. */
const low = 0;
const high = 1;
const middle = 2;
const miss = 3;

function rootText(step: RootStep, sheet: Sheet): string {
  const at = (key: string, column: number): string => sheet.places().fixed(key, column);
  const [atLow, atHigh] = [at(ends(step), low), at(ends(step), high)];
  const found = `IF(SIGN(${atLow})*SIGN(${atHigh})<=0,${at(halving(step, halvings), middle)},NA())`;
  return `IF(${atLow}=0,${at(halving(step, 1), low)},${found})`;
}

/** Bisection, a row for each halving: low end, high end, middle, and how far off the middle is. */
function rootRows(step: RootStep, sheet: Sheet): GridRow[] {
  const at = (key: string, column: number): string => sheet.places().fixed(key, column);
  const missAt = (cell: string): string => {
    const writer = sheet.writer(0, new Map([[step.name, cell]]));
    return `=${writer.formula(step.tree)} - ${sheet.writer(0).formula({ kind: 'name', name: step.target })}`;
  };
  const same = (k: number): string => `SIGN(${at(halving(step, k), miss)})=SIGN(${at(ends(step), low)})`;
  const bounds = (k: number): (() => string)[] => {
    if (k === 1) return [step.from, step.to].map((end) => () => `=${sheet.writer(0).formula(end)}`);
    const before = halving(step, k - 1);
    return [
      () => `=IF(${same(k - 1)},${at(before, middle)},${at(before, low)})`,
      () => `=IF(${same(k - 1)},${at(before, high)},${at(before, middle)})`,
    ];
  };
  return [
    {
      key: ends(step),
      head: [step.name, 'how far off both ends are', ''],
      cells: [low, high].map((end) => () => missAt(at(halving(step, 1), end))),
    },
    ...Array.from({ length: halvings }, (_, k): GridRow => {
      const key = halving(step, k + 1);
      return {
        key,
        head: [step.name, `halving ${k + 1}: low end, high end, middle, how far off the middle is`, ''],
        cells: [...bounds(k + 1), () => `=(${at(key, low)} + ${at(key, high)})/2`, () => missAt(at(key, middle))],
      };
    }),
  ];
}

const asked = ({ name }: Step): string => `${name} asked`;
const found = ({ name }: Step): string => `${name} found`;
const tableRow = ({ name }: Step, k: number): string => `${name} row ${k}`;
const slack = '1e-9';

function lookUpText(step: LookUpStep, { places }: Sheet, k: number): string {
  const { rows, between } = step.table;
  const column = (c: number): string => places().range(tableRow(step, 0), tableRow(step, rows.length - 1), c, c);
  const at = places().moving(asked(step), k);
  const row = places().moving(found(step), k);
  const read = (c: number, further = ''): string => `INDEX(${column(c)},${row}${further})`;
  if (between === 'rows only') return `IF(ABS(${read(0)} - ${at})<=${slack}*ABS(${at}),${read(1)},NA())`;
  const line = `${read(1)} + (${read(1, '+1')} - ${read(1)})*(${at} - ${read(0)})/(${read(0, '+1')} - ${read(0)})`;
  const last = places().fixed(tableRow(step, rows.length - 1));
  return `IF(${at}>${last} + ${slack}*ABS(${at}),NA(),${line})`;
}

/** What is asked of the table, the row it falls behind, and the table itself. */
function tableRows(step: LookUpStep, sheet: Sheet): GridRow[] {
  const { title, place, of, rows, between } = step.table;
  const places = (): Places => sheet.places();
  const match = (k: number): string => {
    const at = places().moving(asked(step), k);
    const column = places().range(tableRow(step, 0), tableRow(step, rows.length - 1), 0, 0);
    const row = `MATCH(${at} + ${slack}*ABS(${at}),${column},1)`;
    return between === 'rows only' ? row : `MIN(${rows.length - 1},${row})`;
  };
  return [
    {
      key: asked(step),
      head: [step.name, `what is looked up: ${of}`, ''],
      cells: perWheel(step.name, sheet, (k) => sheet.writer(k).formula(step.at)),
    },
    {
      key: found(step),
      head: [step.name, 'the row of the table before it', ''],
      cells: perWheel(step.name, sheet, match),
    },
    ...rows.map(([at, value], k): GridRow => ({
      key: tableRow(step, k),
      head: [step.name, `“${title}”, ${place}: ${of}, and the value`, ''],
      cells: [at, value].map((x) => () => numberText(x)),
    })),
  ];
}
