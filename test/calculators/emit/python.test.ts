import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Calculator } from '../../../calculators/calculator.ts';
import { catalogue } from '../../../calculators/catalogue.ts';
import { toValues } from '../../../calculators/inputs.ts';
import { expectSharp, judge, tipped, type Answer, type Measure } from './agreement.ts';
import { nearPoints, specialPoints, widePoints, type Point } from './points.ts';
import { askAll, printed } from './python-program.ts';
import { inDouble, Rounding } from './rounding.ts';
import { dust, dustPoints, smallCalculators } from './small-calculators.ts';
import { Scratch, toolOf } from './tools.ts';

/** Where terms cancel, double itself is not good to 1e-9: what three wheels disagree by, which is nothing. */
const measure: Measure = { rounding: new Rounding(inDouble), wanted: 1e-9, enough: 1e-9 };
const most = { loose: 0.1, open: 0.01 };

const python = toolOf('python3');
const scratch = new Scratch();
afterAll(() => scratch.remove());

describe.skipIf(python.skip)(`Python${python.note}`, { timeout: 30_000 }, () => {
  const all = [...catalogue, ...smallCalculators];
  const points = new Map<Calculator, { readonly near: readonly Point[]; readonly seldom: readonly Point[] }>();
  let answers = new Map<Calculator, Answer[]>();

  beforeAll(() => {
    for (const one of all) {
      points.set(one, { near: nearPoints(one, 140), seldom: [...widePoints(one, 70), ...specialPoints(one, 60)] });
    }
    answers = askAll(new Map([...points].map(([one, { near, seldom }]) => [one, [...near, ...seldom]])), scratch);
  }, 30_000);

  test.each(all.map((one): [string, Calculator] => [one.id, one]))('%s', (_, calculator) => {
    const { near = [], seldom = [] } = points.get(calculator) ?? {};
    const [example, ...told] = answers.get(calculator) ?? [];
    const usual = toValues(calculator.given, {});
    expect(judge(calculator, [usual], [example], measure).wrong).toEqual([]);
    expect(judge(calculator, seldom, told.slice(near.length), measure).wrong).toEqual([]);
    expectSharp(judge(calculator, near, told.slice(0, near.length), measure), most);
  });

  test('comparisons come out as ours where terms cancel but for rounding', () => {
    const [, ...told] = askAll(new Map([[dust, dustPoints]]), scratch).get(dust) ?? [];
    expect(tipped(dust, dustPoints, told, 1e-9)).toEqual([]);
  });

  test('run by itself, it prints its example', () => {
    for (const calculator of all.slice(0, 2)) {
      const text = printed(calculator, scratch);
      for (const name of calculator.results) expect(text).toContain(`'${name}':`);
    }
  });
});
