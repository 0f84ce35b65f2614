import type { Given, LookUpStep, RootStep, Step } from '../calculator.ts';
import { toValues, type Entries } from '../inputs.ts';
import type { Entry } from '../quantity/parse.ts';
import { siOf } from '../si-of.ts';
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
      if (step.kind === 'root') return wheelsOf(step, sheet).flatMap((wheel) => rootRows(step, sheet, wheel));
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
    return step.kind === 'root' ? rootText(step, sheet, k) : lookUpText(step, sheet, k);
  };
  return {
    key: step.name,
    head: [step.name, describeStep(step), siUnit(step.quantity)],
    cells: perWheel(step.name, sheet, text),
  };
}

const halvings = 50;

const wheelsOf = (step: Step, { width }: Sheet): number[] => Array.from({ length: width(step.name) }, (_, k) => k);

/** A root has rows of its own; a list of roots has them for each wheel. */
const rootKey = ({ name, list }: Step, wheel: number, row: string): string =>
  `${name}${list ? ` ${wheel + 1}` : ''} ${row}`;
const end = (step: Step, wheel: number, column: number): string =>
  rootKey(step, wheel, column === low ? 'low end' : 'high end');
const halving = (step: Step, wheel: number, k: number): string => rootKey(step, wheel, `halving ${k}`);

/** Columns of a halving. What a trial is worked out by stands behind them. */
const low = 0;
const high = 1;
const middle = 2;
const miss = 3;
const firstBy = 4;

/** Columns of an end. */
const place = 0;
const missOfEnd = 1;
const firstByOfEnd = 2;

function rootText(step: RootStep, sheet: Sheet, wheel: number): string {
  const at = (key: string, column: number): string => sheet.places().fixed(key, column);
  const [atLow, atHigh] = [low, high].map((side) => at(end(step, wheel, side), missOfEnd));
  const found = `IF(SIGN(${atLow})*SIGN(${atHigh})<=0,${at(halving(step, wheel, halvings), middle)},NA())`;
  return `IF(${atLow}=0,${at(end(step, wheel, low), place)},${found})`;
}

/** How far off a trial is, and what that is worked out by: the texts of the cells of one row. */
function trialCells(step: RootStep, sheet: Sheet, wheel: number, key: string, trial: number, first: number) {
  const by = step.by ?? [];
  const at = (column: number): string => sheet.places().fixed(key, column);
  const writer = (): Writer =>
    sheet.writer(
      wheel,
      new Map([[step.name, at(trial)], ...by.map(({ name }, k): [string, string] => [name, at(first + k)])]),
    );
  const target = (): string => sheet.writer(wheel).formula({ kind: 'name', name: step.target });
  return {
    miss: () => `=${writer().formula(step.tree)} - ${target()}`,
    by: by.map(
      ({ tree }) =>
        () =>
          `=${writer().formula(tree)}`,
    ),
  };
}

/** Bisection, a row for each halving: low end, high end, middle, and how far off the middle is. */
function rootRows(step: RootStep, sheet: Sheet, wheel: number): GridRow[] {
  const at = (key: string, column: number): string => sheet.places().fixed(key, column);
  const atLow = (): string => at(end(step, wheel, low), missOfEnd);
  const same = (k: number): string => `SIGN(${at(halving(step, wheel, k), miss)})=SIGN(${atLow()})`;
  const bounds = (k: number): (() => string)[] => {
    if (k === 1) return [low, high].map((side) => () => `=${at(end(step, wheel, side), place)}`);
    const before = halving(step, wheel, k - 1);
    return [
      () => `=IF(${same(k - 1)},${at(before, middle)},${at(before, low)})`,
      () => `=IF(${same(k - 1)},${at(before, high)},${at(before, middle)})`,
    ];
  };
  const of = step.list ? `${step.name}, wheel ${wheel + 1}` : step.name;
  const through = step.by ? `, then ${step.by.map(({ name }) => name).join(' ')}` : '';
  const endRow = (side: number): GridRow => {
    const key = end(step, wheel, side);
    const cells = trialCells(step, sheet, wheel, key, place, firstByOfEnd);
    const from = side === low ? step.from : step.to;
    return {
      key,
      head: [of, `${side === low ? 'low' : 'high'} end, how far off it is${through}`, ''],
      cells: [() => `=${sheet.writer(wheel).formula(from)}`, cells.miss, ...cells.by],
    };
  };
  return [
    endRow(low),
    endRow(high),
    ...Array.from({ length: halvings }, (_, k): GridRow => {
      const key = halving(step, wheel, k + 1);
      const cells = trialCells(step, sheet, wheel, key, middle, firstBy);
      return {
        key,
        head: [of, `halving ${k + 1}: low end, high end, middle, how far off the middle is${through}`, ''],
        cells: [...bounds(k + 1), () => `=(${at(key, low)} + ${at(key, high)})/2`, cells.miss, ...cells.by],
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
