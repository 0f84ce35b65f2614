import { afterAll, describe, expect, test } from 'vitest';
import type { Calculator } from '../../../calculators/calculator.ts';
import { catalogue } from '../../../calculators/catalogue.ts';
import type { Value, Values } from '../../../calculators/formula/evaluate.ts';
import { toValues } from '../../../calculators/inputs.ts';
import { expectSharp, judge, tipped, type Measure } from './agreement.ts';
import { compile } from './c-program.ts';
import { nearPoints, specialPoints, widePoints, type Point } from './points.ts';
import { inFloat, Rounding } from './rounding.ts';
import { dust, dustPoints, smallCalculators } from './small-calculators.ts';
import { Scratch, toolOf } from './tools.ts';

/**
 * Two digits must be left. A difference of nearly equal numbers, such as the drop of a wheel over a narrow gap, may have less,
 * and so may what hangs on a comparison of equals.
 */
const measure: Measure = { rounding: new Rounding(inFloat), wanted: 0.01, enough: 0 };
const most = { loose: 0.2, open: 0.02 };

const asFloat = (value: Value): Value => (typeof value === 'number' ? Math.fround(value) : value.map(Math.fround));
const asFloats = (point: Values): Point =>
  Object.fromEntries(Object.entries(point).map(([name, value]) => [name, asFloat(value)]));

const gcc = toolOf('gcc');
const scratch = new Scratch();
afterAll(() => scratch.remove());

describe.skipIf(gcc.skip)(`C${gcc.note}`, { timeout: 30_000 }, () => {
  const all = [...catalogue, ...smallCalculators].map((one): [string, Calculator] => [one.id, one]);

  test.each(all)('%s', (_, calculator) => {
    const near = nearPoints(calculator, 140).map(asFloats);
    const seldom = [...widePoints(calculator, 70), ...specialPoints(calculator, 60)].map(asFloats);
    const usual = asFloats(toValues(calculator.given, {}));
    const { example, answers } = compile(calculator, scratch)([...near, ...seldom]);
    expect(judge(calculator, [usual], [example], measure).wrong).toEqual([]);
    expect(judge(calculator, seldom, answers.slice(near.length), measure).wrong).toEqual([]);
    expectSharp(judge(calculator, near, answers.slice(0, near.length), measure), most);
  });

  test('comparisons come out as ours where terms cancel but for rounding', () => {
    const { answers } = compile(dust, scratch)(dustPoints.map(asFloats));
    expect(tipped(dust, dustPoints, answers, 1e-5)).toEqual([]);
  });
});
