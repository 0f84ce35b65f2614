import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { calculatorOf } from '../../calculators/catalogue.ts';
import type { Value } from '../../calculators/formula/evaluate.ts';
import { readInputs } from '../../calculators/inputs.ts';
import { held, printValue, type Row } from '../../calculators/line.ts';
import { printSpread } from '../../calculators/uncertainty.ts';
import { holdUnits } from '../../src/typeset/hold-units.ts';
import { work, type Worked, type WorkedStep, type Working } from '../../calculators/work.ts';
import {
  actAndRead,
  type Act,
  type Shown,
  type ShownNumber,
  type ShownResult,
  type ShownRow,
  type ShownStep,
} from './shown.ts';
import { otherTexts } from './texts.ts';

export const calculatorPage = (id: string): string => `/calculators/${id}/`;

/** The calculators of a page, as a test handles them. */
export class CalculatorOnPage {
  readonly page: Page;
  readonly #nth: number;

  constructor(page: Page, nth = 0) {
    this.page = page;
    this.#nth = nth;
  }

  get root(): ReturnType<Page['locator']> {
    return this.page.locator('crab-calculator').nth(this.#nth);
  }

  field(name: string): ReturnType<Page['locator']> {
    return this.root.locator(`[name="${name}"]`);
  }

  /** What is shown after each of several acts. */
  async after(acts: readonly Act[]): Promise<Shown[]> {
    return JSON.parse(await this.root.evaluate(actAndRead, acts)) as Shown[];
  }

  async give(texts: Readonly<Record<string, string>>): Promise<Shown> {
    const [shown] = await this.after([{ fields: texts }]);
    if (!shown) throw new Error('Nothing was read.');
    return shown;
  }

  shown(): Promise<Shown> {
    return this.give({});
  }

  /** Gives other texts until one changes the steps shown here, and says which did. */
  async changeOne(): Promise<{ name: string; changed: Shown }> {
    const before = await this.shown();
    for (const given of calculatorOf(before.id).given) {
      const [text] = otherTexts(given);
      const own = before.fields[given.name];
      if (given.options || text === undefined || own === undefined) continue;
      const changed = await this.give({ [given.name]: text });
      if (JSON.stringify(changed.steps) !== JSON.stringify(before.steps)) return { name: given.name, changed };
      await this.give({ [given.name]: own });
    }
    throw new Error(`Nothing that is typed changes ${before.id}.`);
  }

  /** What is shown once results carry the ± of the inputs: what prints it is fetched when an input has one. */
  async withSpreads(shown: Shown): Promise<Shown> {
    if (!Object.values(shown.fields).some((text) => text.includes('±'))) return shown;
    await this.root.locator('[data-results]', { hasText: '±' }).waitFor();
    return this.shown();
  }

  /** Until the figure follows: its drawing is fetched after the page wakes. */
  async figureOtherThan(figure: string): Promise<string> {
    const until = Date.now() + 10_000;
    for (;;) {
      const shown = (await this.shown()).figure;
      if (shown !== figure) return shown;
      if (Date.now() > until) throw new Error('The figure stayed as it was.');
      await this.page.waitForTimeout(20);
    }
  }
}

/** What the core makes of texts: a working, or the sentences that refuse it, by given. */
export function judged(id: string, texts: Readonly<Record<string, string>>): Working | Record<string, string> {
  const calculator = calculatorOf(id);
  const inputs = readInputs(calculator.given, texts);
  if (!inputs.ok) return Object.fromEntries(inputs.problems.map(({ given, message }) => [given, message]));
  const worked: Worked = work(calculator, inputs.entries);
  if (worked.ok) return worked.working;
  return { [worked.refused.given ?? calculator.given[0]?.name ?? '']: worked.refused.message };
}

/** One other text for each given, left out where the core has no result with it. */
export function otherInputs(id: string): Record<string, string> {
  const texts: Record<string, string> = {};
  for (const given of calculatorOf(id).given) {
    const [text] = otherTexts(given);
    if (text !== undefined && isWorking(judged(id, { ...texts, [given.name]: text }))) texts[given.name] = text;
  }
  return texts;
}

export const isWorking = (outcome: Working | Record<string, string>): outcome is Working =>
  'calculator' in outcome && typeof outcome.calculator === 'object';

/** The page shows what the core gives for the texts in its fields, to the last printed number. */
export function expectWorked(shown: Shown): Working {
  const working = judged(shown.id, shown.fields);
  if (!isWorking(working)) throw new Error(`refused: ${Object.values(working).join(' ')}`);
  expect({ problems: shown.problems, invalid: shown.invalid, stale: shown.stale }).toEqual({
    problems: {},
    invalid: [],
    stale: false,
  });
  expect(shown.results).toEqual(shown.results.map((result) => expectedResult(result, working)));
  expect(shown.steps).toEqual(shown.steps.map((step) => expectedStep(step, working)));
  expect(shown.cautions).toEqual(working.cautions.map(holdUnits));
  return working;
}

/** The page says why there is no result, and leaves what it showed before. */
export function expectRefused(shown: Shown, before: Shown): void {
  const problems = judged(shown.id, shown.fields);
  expect(shown.problems).toEqual(problems);
  expect(shown.invalid).toEqual(Object.keys(problems));
  expect(shown.stale).toBe(true);
  const { results, steps, cautions, caption, figure } = before;
  expect(shown).toMatchObject({ results, steps, cautions, caption, figure });
}

/** As `expectWorked` or `expectRefused`, whichever the core says. */
export function expectFollowed(shown: Shown, before: Shown): Working | undefined {
  if (isWorking(judged(shown.id, shown.fields))) return expectWorked(shown);
  expectRefused(shown, before);
  return undefined;
}

/** A calculator's own page leaves nothing out: every step, every result, every wheel. */
export function expectWhole(shown: Shown): void {
  const { calculator, steps } = expectWorked(shown);
  expect(shown.steps.map(({ name }) => name)).toEqual(calculator.steps.map(({ name }) => name));
  const wanted = calculator.results.flatMap((name) => {
    const value = steps.find(({ step }) => step.name === name)?.value;
    return typeof value === 'object' ? value.map((_, wheel) => `${name} ${wheel + 1}`) : [`${name} `];
  });
  expect(shown.results.map(({ name, wheel }) => `${name} ${wheel}`).sort()).toEqual(wanted.sort());
  for (const { rows } of shown.steps.filter(({ rows: several }) => several.length > 1)) {
    expect(rows.map(({ wheel }) => wheel)).toEqual(rows.map((_, k) => String(k + 1)));
  }
}

function workedStep(name: string, { steps }: Working): WorkedStep {
  const worked = steps.find(({ step }) => step.name === name);
  if (!worked) throw new Error(`no such step: ${name}`);
  return worked;
}

function expectedResult({ name, wheel, unit }: ShownResult, working: Working): ShownResult {
  const { step, value, spread } = workedStep(name, working);
  const of = (one: Value): Value => (typeof one === 'object' && wheel !== '' ? (one[Number(wheel) - 1] ?? NaN) : one);
  const chosen = unit ?? step.unit;
  const text = spread
    ? printSpread(of(value), of(spread.spread), step.quantity, chosen)
    : printValue(of(value), step.quantity, chosen);
  return { name, wheel, unit, text };
}

function expectedStep(shown: ShownStep, working: Working): ShownStep {
  const { step, value, line, rows } = workedStep(shown.name, working);
  const spelled = !step.brief && line !== undefined;
  return {
    name: step.name,
    value: spelled ? null : printValue(value, step.quantity, step.unit),
    rows: spelled ? rows.map((row, k) => expectedRow(row, shown.rows[k])) : [],
  };
}

const expectedRow = (row: Row, shown: ShownRow | undefined): ShownRow => ({
  wheel: shown?.wheel ?? '',
  heard: expectedNumbers(row, shown?.heard ?? []),
  seen: expectedNumbers(row, shown?.heard ?? []),
  result: row.result,
  converted: row.converted ?? null,
});

/** Each number of the row, in parentheses where the page has a place for them. */
function expectedNumbers({ numbers }: Row, shown: readonly ShownNumber[]): ShownNumber[] {
  const places = shown.map(({ name, held: inParentheses }) => ({ name, held: inParentheses }));
  const missing = Object.keys(numbers).filter((name) => !places.some((place) => place.name === name));
  return [...places, ...missing.map((name) => ({ name, held: false }))].map((place) => {
    const text = numbers[place.name] ?? '';
    return { ...place, text: place.held ? held(text) : text };
  });
}
