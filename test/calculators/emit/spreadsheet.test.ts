import { describe, expect, test } from 'vitest';
import type { Calculator } from '../../../calculators/calculator.ts';
import { catalogue } from '../../../calculators/catalogue.ts';
import { csv } from '../../../calculators/emit/csv.ts';
import { asCells } from '../../../calculators/emit/spreadsheet.ts';
import { usualEntries } from '../../../calculators/inputs.ts';
import { expectSharp, judge, tipped, type Measure } from './agreement.ts';
import { nearPoints, specialPoints, widePoints } from './points.ts';
import { readCsv } from './read-csv.ts';
import { inCells, Rounding } from './rounding.ts';
import { dust, dustPoints, smallCalculators } from './small-calculators.ts';
import { askCells } from './spreadsheet-program.ts';

const all = [...catalogue, ...smallCalculators].map((one): [string, Calculator] => [one.id, one]);

/** Where terms cancel, double itself is not good to 1e-9: what three wheels disagree by, which is nothing. */
const measure: Measure = { rounding: new Rounding(inCells), wanted: 1e-9, enough: 1e-9 };
const most = { loose: 0.1, open: 0.01 };

describe('spreadsheet cells', { timeout: 90_000 }, () => {
  test.each(all)('%s', (_, calculator) => {
    // The cells of a root found by further steps are thousands.
    const heavy = calculator.steps.some((step) => step.kind === 'root' && step.by);
    const near = nearPoints(calculator, heavy ? 32 : 60);
    const seldom = [...widePoints(calculator, 30), ...specialPoints(calculator, 40)];
    const answers = askCells(calculator, [...near, ...seldom]);
    expect(judge(calculator, seldom, answers.slice(near.length), measure).wrong).toEqual([]);
    expectSharp(judge(calculator, near, answers.slice(0, near.length), measure), most);
  });

  test('comparisons come out as ours where terms cancel but for rounding', () => {
    expect(tipped(dust, dustPoints, askCells(dust, dustPoints), 1e-9)).toEqual([]);
  });

  test.each(all)('%s: every cell is a field, and every row with a name has a value', (_, calculator) => {
    const rows = readCsv(asCells(calculator, usualEntries(calculator.given), '/calculators/x/?a=1,2'));
    const head = rows.findIndex(([first]) => first === 'name');
    expect(rows[1]?.[0]).toContain('/calculators/x/?a=1,2');
    expect(rows[head]?.slice(0, 3)).toEqual(['name', 'meaning', 'unit']);
    for (const row of rows.slice(head + 1)) expect(row.slice(3).every(Boolean)).toBe(true);
  });
});

test('CSV quotes what must be quoted', () => {
  const rows = [
    ['a', 'b, c', 'd "e"', ''],
    ['one\ntwo', 'three\r\nfour'],
  ];
  expect(csv(rows)).toBe('a,"b, c","d ""e""",\r\n"one\ntwo","three\r\nfour"\r\n');
  expect(readCsv(csv(rows))).toEqual(rows);
});
