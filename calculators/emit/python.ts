import type { LookUpStep, RootStep, Step } from '../calculator.ts';
import type { Value } from '../formula/evaluate.ts';
import { namesIn, type Tree } from '../formula/tree.ts';
import { toValues, type Entries } from '../inputs.ts';
import type { Entry } from '../quantity/parse.ts';
import { describeGiven, describeStep, mustHold, originOf, typedText } from './about.ts';
import type { Emittable } from './emittable.ts';
import { bare, writerOf, type Writer } from './express.ts';
import { helpersFor } from './helpers.ts';
import { functionName } from './identifiers.ts';
import type { Length, LengthSource } from './list-lengths.ts';
import { planOf, type Plan } from './plan.ts';
import { pythonHelpers, pythonTaken } from './python-helpers.ts';
import { pythonLanguage } from './python-language.ts';

/**
 * A calculator as Python 3 with nothing but its standard library.
 * @param entries the numbers of the example.
 * @param address where the working is found.
 */
export function asPython(calculator: Emittable, entries: Entries, address: string): string {
  const plan = planOf(calculator, pythonTaken);
  const { called, lengths } = plan;
  const scalar = (name: string): string => (lengths.has(name) ? `${called(name)}[wheel]` : called(name));
  const body = functionLines(plan, writerOf(pythonLanguage({ scalar, list: called }), plan.facts));
  const helpers = helpersFor(body.join('\n'), pythonHelpers);
  const dust = helpers.some((helper) => helper.text.includes('DUST')) ? dustLines : [];
  return [
    ...heading(calculator, address),
    '',
    'import math',
    '',
    ...dust,
    ...helpers.flatMap((helper) => ['', helper.text, '']),
    '',
    ...body,
    '',
    '',
    ...example(calculator, entries, plan),
    '',
  ].join('\n');
}

const dustLines = ['# Below this share of its terms a sum is taken for the dust of rounding.', 'DUST = 1e-12', ''];

const limits = [
  'SI units throughout; angles in radians. The ranges of the givens stand beside them and are not checked.',
  'Rounding dust: plus, minus, sine and the like give 0 where only rounding is left. They stand where a comparison',
  'hangs on the value; elsewhere the arithmetic is plain.',
];

const heading = (calculator: Emittable, address: string): string[] => [
  `"""${originOf(calculator, address, 'Python 3').join('\n')}`,
  '',
  ...limits,
  '"""',
];

function functionLines(plan: Plan, writer: Writer): string[] {
  const { calculator, called } = plan;
  const values = toValues(calculator.given, {});
  return [
    `def ${functionName(calculator.id)}(`,
    '    *,',
    ...calculator.given.map(
      (given) =>
        `    ${called(given.name)}=${valueText(given.usual, values[given.name] ?? NaN)},  # ${describeGiven(given)}`,
    ),
    '):',
    '    """Returns the results by name. A list has one number a wheel.',
    '',
    '    Raises ValueError or ArithmeticError for inputs without a result.',
    '    """',
    ...givenLengths(plan),
    ...requireLines(plan, writer, undefined),
    ...calculator.steps.flatMap((step) => [
      `    # ${describeStep(step)}`,
      ...lengthLines(step, plan, writer),
      ...stepLines(step, plan, writer),
      ...requireLines(plan, writer, step.name),
    ]),
    '    return {',
    ...calculator.results.map((name) => `        "${name}": ${called(name)},`),
    '    }',
  ];
}

/** Degrees stay degrees for the reader's eye. */
function valueText(entry: Entry, si: Value): string {
  const inDegrees = entry.unit === 'deg' && typeof entry.value === 'number';
  if (inDegrees) return `math.radians(${String(entry.value)})`;
  return typeof si === 'number' ? String(si) : `(${si.map(String).join(', ')})`;
}

function givenLengths(plan: Plan): string[] {
  return plan.calculator.given.flatMap(({ name }) => {
    const length = plan.lengths.get(name);
    const source = length?.sources.find((one) => one.kind === 'given' && one.name === name);
    return length && source ? tellLength(`len(${plan.called(name)})`, source, length, plan) : [];
  });
}

function lengthLines(step: Step, plan: Plan, writer: Writer): string[] {
  const length = plan.lengths.get(step.name);
  return (length?.sources ?? []).flatMap((source) => {
    if (!length || source.kind !== 'upto' || source.step !== step.name) return [];
    return tellLength(
      source.to.kind === 'number' ? String(source.to.value) : `int(${writer.formula(source.to)})`,
      source,
      length,
      plan,
    );
  });
}

/** The first source of a length tells it; the others must agree. */
function tellLength(count: string, source: LengthSource, length: Length, plan: Plan): string[] {
  const name = plan.lengthName(length);
  if (length.sources[0] === source) return [`    ${name} = ${count}`];
  return refuseUnless(`${count} == ${name}`, 'the lists must be of one length');
}

const refuseUnless = (holds: string, why: string): string[] => [
  `    if not (${holds}):`,
  `        raise ValueError(${JSON.stringify(why)})`,
];

/** What must hold, as soon as the last step in it is known: before a formula fails for want of it. */
function requireLines(plan: Plan, writer: Writer, behind: string | undefined): string[] {
  const { steps, requires } = plan.calculator;
  const lastStep = (holds: Tree): string | undefined => {
    const names = new Set(namesIn(holds));
    return steps.findLast((step) => names.has(step.name))?.name;
  };
  return requires
    .filter(({ holds }) => lastStep(holds) === behind)
    .flatMap(({ given, holds }) => refuseUnless(writer.condition(holds), `${given}: ${mustHold(holds)}`));
}

function stepLines(step: Step, plan: Plan, writer: Writer): string[] {
  const name = plan.called(step.name);
  const length = plan.lengths.get(step.name);
  const value = oneValue(step, plan, writer);
  const before = linesBefore(step, plan);
  if (!length) return [...before, `    ${name} = ${value}`];
  return [...before, `    ${name} = [${value} for wheel in range(${plan.lengthName(length)})]`];
}

function linesBefore(step: Step, plan: Plan): string[] {
  if (step.kind === 'look-up') return tableLines(step, plan);
  return step.kind === 'root' && step.by ? missLines(step, step.by, plan) : [];
}

/** What a root worked out by further steps is tried with. */
function missLines(step: RootStep, by: NonNullable<RootStep['by']>, plan: Plan): string[] {
  const { called, lengths, careful } = plan;
  const inside = new Set([step, ...by].map(({ name }) => name));
  const scalar = (name: string): string =>
    lengths.has(name) && !inside.has(name) ? `${called(name)}[wheel]` : called(name);
  const writer = writerOf(pythonLanguage({ scalar, list: called }), plan.facts);
  return [
    `    def ${called(step.name)}_miss(${called(step.name)}${step.list ? ', wheel' : ''}):`,
    ...by.map(({ name, tree }) => `        ${called(name)} = ${bare(writer.formula(tree, careful(name)))}`),
    `        return ${writer.formula(step.tree, careful(step.name))} - ${called(step.target)}`,
    '',
  ];
}

const tableLines = ({ name, table }: LookUpStep, plan: Plan): string[] => [
  `    # “${table.title}”, ${table.place}: ${table.of} and the value, in SI.`,
  `    ${plan.called(name)}_rows = [`,
  ...table.rows.map(([at, value]) => `        (${at}, ${value}),`),
  '    ]',
];

function oneValue(step: Step, plan: Plan, writer: Writer): string {
  const name = plan.called(step.name);
  const careful = plan.careful(step.name);
  if (step.kind === 'formula') return bare(writer.formula(step.tree, careful));
  if (step.kind === 'look-up') {
    const read = step.table.between === 'rows only' ? 'at_row' : 'between_rows';
    return `${read}(${name}_rows, ${writer.formula(step.at, careful)})`;
  }
  const tried = step.by ? `${name}_miss(trial${step.list ? ', wheel' : ''})` : undefined;
  const miss = tried
    ? `lambda trial: ${tried}`
    : `lambda ${name}: ${writer.formula(step.tree, careful)} - ${plan.called(step.target)}`;
  return `find_root(${miss}, ${writer.formula(step.from)}, ${writer.formula(step.to)})`;
}

/** The reader's own numbers. */
function example({ id, given }: Emittable, entries: Entries, { called }: Plan): string[] {
  const values = toValues(given, entries);
  return [
    'if __name__ == "__main__":',
    `    print(${functionName(id)}(`,
    ...given.map((one) => {
      const entry = entries[one.name] ?? one.usual;
      return `        ${called(one.name)}=${valueText(entry, values[one.name] ?? NaN)},  # ${typedText(one, entry)}`;
    }),
    '    ))',
  ];
}
