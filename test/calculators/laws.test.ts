import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Calculator } from '../../calculators/calculator.ts';
import { catalogue } from '../../calculators/catalogue.ts';
import type { Value } from '../../calculators/formula/evaluate.ts';
import { readInputs, type Entries } from '../../calculators/inputs.ts';
import type { Line, Row } from '../../calculators/line.ts';
import { fromQuery, toQuery } from '../../calculators/permalink.ts';
import { programOf, type Program } from '../../calculators/program.ts';
import { solve } from '../../calculators/solve.ts';
import { faultsOf } from '../../calculators/verify.ts';
import { substituted, work, type WorkedStep, type Working } from '../../calculators/work.ts';
import { asJson } from '../../src/report/json.ts';
import { asMarkdown } from '../../src/report/markdown.ts';
import { asText } from '../../src/report/text.ts';
import { isTrue, numbersOn, press, readResult } from './pocket-calculator.ts';
import { ordinaryTexts, unitsOf, wildTexts, type Texts } from './random-inputs.ts';

function entriesOf(calculator: Calculator, texts: Texts): Entries {
  const read = readInputs(calculator.given, texts);
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join('\n'));
  return read.entries;
}

const given = ({ given: givens }: Calculator) => ({
  ordinary: ordinaryTexts(givens),
  any: fc.oneof({ weight: 2, arbitrary: ordinaryTexts(givens) }, { weight: 1, arbitrary: wildTexts(givens) }),
});

const ordinaryRuns = 120;

/** The same with a ± on every number that may have one; a bare share would be read with the sign of the ±. */
const withSpreads = ({ given: givens }: Calculator, texts: Texts): Texts =>
  Object.fromEntries(
    givens.map(({ name, options, whole, quantity }) => {
      const exact = options !== undefined || whole === true || quantity === 'ratio';
      return [name, `${texts[name] ?? ''}${exact ? '' : ' ± 0.7 %'}`];
    }),
  );

/** A sentence for a person: no braces left, nothing that is not a number, an end. */
function expectSentence(text: string): void {
  expect(text).not.toMatch(/[{}]|NaN|Infinity|∞|undefined|null|\[object/);
  expect(text).toMatch(/^\S.*[.]$/s);
}

describe.each(catalogue.map((calculator): [string, Calculator] => [calculator.id, calculator]))(
  '%s',
  { timeout: 60_000 },
  (_, calculator) => {
    const { any, ordinary } = given(calculator);
    const works = (texts: fc.Arbitrary<Texts>, law: (working: Working) => void, numRuns: number): void => {
      fc.assert(
        fc.property(texts, (chosen) => {
          const worked = work(calculator, entriesOf(calculator, chosen));
          if (worked.ok) law(worked.working);
          else expectSentence(worked.refused.message);
        }),
        { numRuns },
      );
    };

    test('has no faults', () => {
      expect(faultsOf(calculator)).toEqual([]);
    });

    test('gives finite results or refuses in a sentence', () => {
      works(any, ({ values }) => expect(Object.values(values).flat().every(Number.isFinite)).toBe(true), 150);
    });

    test('prints nothing that is not a number', () => {
      works(
        any,
        (working) => {
          for (const text of [asText(working), asMarkdown(working)]) {
            expect(text).not.toMatch(/[{}]|NaN|Infinity|∞|undefined|null|\[object/);
          }
          expect(asJson(working)).not.toMatch(/NaN|Infinity|∞|undefined|null|\[object/);
          working.cautions.forEach(expectSentence);
        },
        50,
      );
    });

    test('every printed line of an ordinary machine gives its printed result', () => {
      let worked = 0;
      works(
        ordinary,
        ({ steps, values }) => {
          worked++;
          steps.forEach((step) => expectTrue(step, values));
        },
        ordinaryRuns,
      );
      expect(worked).toBeGreaterThan(ordinaryRuns / 5);
    });

    test('every printed line of any machine gives its printed result', () => {
      works(any, ({ steps, values }) => steps.forEach((step) => expectTrue(step, values)), 70);
    });

    test('a link brings back the very same values', () => {
      fc.assert(
        fc.property(any, fc.boolean(), (texts, spread) => {
          const entries = entriesOf(calculator, spread ? withSpreads(calculator, texts) : texts);
          const link = fromQuery(calculator, new URLSearchParams(toQuery(calculator, entries)));
          expect(link.problems).toEqual([]);
          expect(entriesOf(calculator, link.texts)).toEqual(entries);
        }),
        { numRuns: 100 },
      );
    });

    test('an entry in another unit changes nothing', () => {
      fc.assert(
        fc.property(ordinary, fc.nat(), (texts, pick) => {
          const inputs = readInputs(calculator.given, texts);
          if (!inputs.ok) throw new Error('unreadable');
          const other = readInputs(calculator.given, { ...texts, ...inOtherUnits(calculator, inputs.values, pick) });
          if (!other.ok) throw new Error(other.problems.map(({ message }) => message).join('\n'));
          const [here, there] = [solve(calculator, inputs.values), solve(calculator, other.values)];
          expect(there.refusal).toEqual(here.refusal);
          if (here.refusal) return;
          for (const { name } of calculator.steps) expectSame(name, here.values[name], there.values[name]);
        }),
        { numRuns: 80 },
      );
    });

    test('a page works it out from its JSON just the same', () => {
      const program = JSON.parse(JSON.stringify(programOf(calculator))) as Program;
      fc.assert(
        fc.property(any, (texts) => {
          const inputs = readInputs(calculator.given, texts);
          const read = readInputs(program.given, texts);
          expect(read).toEqual(inputs);
          if (!inputs.ok || !read.ok) return;
          expect(solve(program, read.values)).toEqual(solve(calculator, inputs.values));
        }),
        { numRuns: 30 },
      );
    });

    test.each(calculator.given.map((one): [string, (typeof calculator.given)[number]] => [one.name, one]))(
      'at either end of %s there is a result or a refusal',
      (name, one) => {
        const { symbol, factor } = unitsOf(one).find((unit) => unit.symbol === one.unit) ?? unitsOf(one)[0] ?? fail();
        for (const end of [one.least, one.most]) {
          const word = Object.entries(one.options ?? {}).find(([, value]) => value === end)?.[0];
          const text =
            word ??
            `${Array<number>(one.list?.[0] ?? 1)
              .fill(end / factor)
              .join(', ')} ${symbol}`;
          const worked = work(calculator, entriesOf(calculator, { [name]: text }));
          if (!worked.ok) expectSentence(worked.refused.message);
          else expect(asText(worked.working)).not.toMatch(/[{}]|NaN|Infinity|∞/);
        }
      },
    );

    const shown = calculator.limits.flatMap(({ asks, at }): [string, Texts][] => (at ? [[asks, at]] : []));
    test.runIf(shown.length > 0).each(shown)('shows what it is like: %s', (_asks, at) => {
      const worked = work(calculator, entriesOf(calculator, at));
      if (!worked.ok) expectSentence(worked.refused.message);
      else worked.working.steps.forEach((step) => expectTrue(step, worked.working.values));
    });
  },
);

function fail(): never {
  throw new Error('no unit');
}

/** Each row: its numbers are those of the working, they give its result, and its result is the step's. */
function expectTrue({ step, line, rows, text, value }: WorkedStep, values: Working['values']): void {
  if (!line) return;
  expect(rows.length).toBe(step.list && typeof value !== 'number' ? value.length : 1);
  rows.forEach((row, i) => {
    expectRoundings(line, row, values, i);
    const typed = substituted(line, row);
    const pressed = press(typed, row.result);
    const one = typeof pressed === 'number' ? pressed : (pressed[i] ?? NaN);
    expect(isTrue(typed, row.result, one), `${step.name}: ${typed} = ${one}, printed ${row.result}`).toBe(true);
    expectRounding(row.result, at(values[line.result.name], i), line.result.factor);
    if (line.converted && row.converted !== undefined) {
      expectRounding(row.converted, at(values[line.converted.name], i), line.converted.factor);
    }
  });
  if (step.kind === 'root') return;
  const last = rows.map((row) => numberText(row.converted ?? row.result)).join(', ');
  expect(text.startsWith(last), `${text} begins with ${last}`).toBe(true);
}

const numberText = (printed: string): string => /^−?[\d.]+( · 10⁻?[⁰¹²³⁴⁵⁶⁷⁸⁹]+)?/.exec(printed)?.[0] ?? '';

const at = (value: Value | undefined, i: number): number => (typeof value === 'number' ? value : (value?.[i] ?? NaN));

function expectRounding(printed: string, si: number, factor: number): void {
  expect(Math.abs(readResult(printed) * factor - si), `${printed} for ${si / factor}`).toBeLessThanOrEqual(
    5.001e-4 * Math.abs(si),
  );
}

/** What is put in for a name is that name's value, to at least four digits. */
function expectRoundings(line: Line, { numbers }: Row, values: Working['values'], i: number): void {
  for (const { name, factor, joiner } of line.names) {
    const value = values[name];
    const wanted = joiner === undefined && line.step.list ? [at(value, i)] : [value ?? NaN].flat();
    const found = numbersOn(numbers[name] ?? '');
    expect(found.length).toBe(wanted.length);
    found.forEach((x, k) => {
      const size = Math.abs(wanted[k] ?? NaN);
      expect(Math.abs(x * factor - size), `${name} = ${x}`).toBeLessThanOrEqual(5.001e-4 * size);
    });
  }
}

/** Every given that has another unit, typed in one of the others. */
function inOtherUnits(calculator: Calculator, values: Working['values'], pick: number): Texts {
  return Object.fromEntries(
    calculator.given.flatMap((one, k) => {
      const units = unitsOf(one);
      const unit = units[(pick + k) % units.length];
      if (one.options || !unit) return [];
      const numbers = [values[one.name] ?? NaN].flat().map((x) => x / unit.factor);
      return [[one.name, `${numbers.join(', ')} ${unit.symbol}`]];
    }),
  );
}

function expectSame(name: string, a: Value | undefined, b: Value | undefined): void {
  const [here, there] = [[a ?? NaN].flat(), [b ?? NaN].flat()];
  const scale = Math.max(...here.map(Math.abs), 1e-3);
  expect(there.length).toBe(here.length);
  there.forEach((x, i) => {
    expect(Math.abs(x - (here[i] ?? NaN)), `${name}: ${x} and ${here[i]}`).toBeLessThanOrEqual(1e-9 * scale);
  });
}
