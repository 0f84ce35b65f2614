import type { Calculator, Given, Step } from './calculator.ts';
import { fill } from './fill.ts';
import { evaluate, type Value, type Values } from './formula/evaluate.ts';
import { infix, plainDialect } from './formula/infix.ts';
import { givenText, toValues, type Entries } from './inputs.ts';
import { held, planLines, printRows, printValue, type Line, type Row } from './line.ts';
import { solve } from './solve.ts';
import { printSpread, spreadsOf, type Spread } from './uncertainty.ts';
import type { Entry } from './quantity/parse.ts';

/** A given in a finished piece of working. */
export interface WorkedGiven {
  readonly given: Given;
  readonly entry: Entry;
  /** As the reader gave it: `2.36 in`. */
  readonly text: string;
  readonly si: Value;
}

/** A step in a finished piece of working. */
export interface WorkedStep {
  readonly step: Step;
  readonly value: Value;
  /** The value in the step's unit: `95.49 rpm`, or `95.5 ± 0.8 rpm`. */
  readonly text: string;
  /** The printed lines: one, or one a wheel; none for a look-up. */
  readonly rows: readonly Row[];
  readonly line: Line | undefined;
  /** Its ±, where one of the inputs has one and it reaches this step. */
  readonly spread: Spread | undefined;
}

export interface Working {
  readonly calculator: Calculator;
  readonly given: readonly WorkedGiven[];
  readonly steps: readonly WorkedStep[];
  readonly values: Values;
  readonly cautions: readonly string[];
}

/** Inputs that fit no result together: the given to look at, if one, and a sentence for the reader. */
export interface Refused {
  readonly given?: string;
  readonly message: string;
}

export type Worked =
  { readonly ok: true; readonly working: Working } | { readonly ok: false; readonly refused: Refused };

const lines = new WeakMap<Calculator, ReadonlyMap<string, Line>>();

/** The lines of a calculator, planned once. */
export function linesOf(calculator: Calculator): ReadonlyMap<string, Line> {
  const known = lines.get(calculator) ?? planLines(calculator);
  lines.set(calculator, known);
  return known;
}

/**
 * Works a calculator through, to the last printed line.
 * @param entries as read from the reader, each within its range.
 */
export function work(calculator: Calculator, entries: Entries): Worked {
  const values = toValues(calculator.given, entries);
  const solution = solve(calculator, values);
  const names = [...calculator.given, ...calculator.steps];
  if (solution.refusal) {
    const { given, says } = solution.refusal;
    const message = fill(says, names, solution.values);
    return { ok: false, refused: given === undefined ? { message } : { given, message } };
  }
  return { ok: true, working: finish(calculator, entries, solution.values) };
}

function finish(calculator: Calculator, entries: Entries, values: Values): Working {
  const plans = linesOf(calculator);
  const spreads = spreadsOf(calculator, entries, values);
  return {
    calculator,
    values,
    given: calculator.given.map((given): WorkedGiven => {
      const entry = entries[given.name] ?? given.usual;
      return { given, entry, text: givenText(given, entry), si: values[given.name] ?? NaN };
    }),
    steps: calculator.steps.map((step): WorkedStep => {
      const line = plans.get(step.name);
      const value = values[step.name] ?? NaN;
      const spread = spreads.get(step.name);
      const text = spread
        ? printSpread(value, spread.spread, step.quantity, step.unit)
        : printValue(value, step.quantity, step.unit);
      return { step, value, text, line, rows: line ? printRows(line, values) : [], spread };
    }),
    cautions: cautionsOf(calculator, values),
  };
}

/** The cautions that apply, filled with values. */
export const cautionsOf = (calculator: Pick<Calculator, 'given' | 'steps' | 'cautions'>, values: Values): string[] =>
  calculator.cautions
    .filter(({ when }) => when === undefined || evaluate(when, values) === 1)
    .map(({ says }) => fill(says, [...calculator.given, ...calculator.steps], values));

/** The formula of a line with its numbers put in, as plain text: `0.6 * cos(60°)`. */
export const substituted = (line: Line, row: Row): string =>
  infix(
    line.tree,
    plainDialect((name, bare) => {
      const text = row.numbers[name] ?? name;
      return bare ? text : held(text);
    }),
  );
