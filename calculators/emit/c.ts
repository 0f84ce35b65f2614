import type { FormulaStep, Given, LookUpStep, RootStep, Step } from '../calculator.ts';
import { namesBehind } from '../dependencies.ts';
import type { Value } from '../formula/evaluate.ts';
import { namesIn } from '../formula/tree.ts';
import { toValues, type Entries } from '../inputs.ts';
import { describeGiven, describeStep, mustHold, originOf, plainFormula, typedText } from './about.ts';
import { ascii } from './ascii.ts';
import { cHelpers, cTaken } from './c-helpers.ts';
import { cLanguage, floatText } from './c-language.ts';
import type { Emittable } from './emittable.ts';
import { bare, writerOf, type Writer } from './express.ts';
import { helpersFor } from './helpers.ts';
import { functionName } from './identifiers.ts';
import type { Length, LengthSource } from './list-lengths.ts';
import { planOf, stepsToCheck, type Plan } from './plan.ts';

/**
 * A calculator as C99 for a microcontroller: float only, no allocation, no input or output.
 * @param entries the numbers of the example.
 * @param address where the working is found.
 */
export function asC(calculator: Emittable, entries: Entries, address: string): string {
  const plan = planOf(calculator, cTaken);
  const writer = writerFor(plan);
  const before = calculator.steps.flatMap((step) => beforeFunction(step, plan, writer));
  const body = functionLines(plan, writer);
  const helpers = helpersFor([...before, ...body].join('\n'), cHelpers);
  return [
    ...heading(calculator, address),
    '',
    '#include <math.h>',
    '#include <stdbool.h>',
    '',
    ...givenStruct(calculator, plan),
    '',
    ...resultStruct(calculator, plan),
    '',
    ...helpers.flatMap((helper) => [helper.text, '']),
    ...before,
    ...body,
    '',
    ...example(calculator, entries, plan),
    '',
  ].join('\n');
}

const limits = [
  'SI units throughout; angles in radians. The ranges of the givens stand beside them and are not checked.',
  'A float holds seven digits. Count on five in a result, and on fewer where nearly equal numbers are subtracted or an',
  'angle is many turns.',
  'Rounding dust: plus, minus, sine and the like give 0 where only rounding is left. They stand where a comparison hangs',
  'on the value; elsewhere the arithmetic is plain.',
  'The refusals rest on numbers that are not finite, so do not compile with -ffast-math.',
];

const heading = (calculator: Emittable, address: string): string[] => [
  '/*',
  ...[...originOf(calculator, address, 'C99'), '', ...limits].map((line) => comment(` * ${line}`).trimEnd()),
  ' */',
];

const comment = (text: string): string => ascii(text).replaceAll('*/', '* /');
const behind = (text: string): string => `/* ${comment(text)} */`;

const countOf = (plan: Plan, given: Given): string => `${plan.called(given.name)}_count`;

function givenStruct(calculator: Emittable, plan: Plan): string[] {
  const members = calculator.given.flatMap((given) => {
    const name = plan.called(given.name);
    if (!given.list) return [`    float ${name}; ${behind(describeGiven(given))}`];
    return [
      `    float ${name}[${given.list[1]}]; ${behind(describeGiven(given))}`,
      `    int ${countOf(plan, given)}; /* how many of them */`,
    ];
  });
  return ['typedef struct {', ...members, `} ${functionName(calculator.id)}_given;`];
}

function resultStruct(calculator: Emittable, plan: Plan): string[] {
  const steps = resultSteps(calculator);
  return [
    'typedef struct {',
    ...resultLengths(plan).map(
      (length) => `    int ${plan.lengthName(length)}; /* how many numbers each list holds */`,
    ),
    ...steps.map((step) => {
      const length = plan.lengths.get(step.name);
      return `    float ${plan.called(step.name)}${length ? `[${length.most}]` : ''}; ${behind(describeStep(step))}`;
    }),
    `} ${functionName(calculator.id)}_result;`,
  ];
}

const resultSteps = ({ steps, results }: Emittable): readonly Step[] =>
  results.flatMap((name) => steps.filter((step) => step.name === name));

const resultLengths = ({ calculator, lengths }: Plan): readonly Length[] => [
  ...new Set(calculator.results.flatMap((name) => lengths.get(name) ?? [])),
];

/** @param single lists that are one number where the text stands. */
function writerFor(plan: Plan, single: ReadonlySet<string> = new Set()): Writer {
  const { called, lengths, lengthName } = plan;
  const length = (list: string): string => {
    const found = lengths.get(list);
    return found ? lengthName(found) : '';
  };
  const scalar = (name: string): string =>
    lengths.has(name) && !single.has(name) ? `${called(name)}[wheel]` : called(name);
  return writerOf(cLanguage({ scalar, list: called, length }), plan.facts);
}

/** What a step needs outside the function: the formula of a root, the rows of a table. */
function beforeFunction(step: Step, plan: Plan, writer: Writer): string[] {
  if (step.kind === 'look-up') return [...tableLines(step, plan), ''];
  if (step.kind === 'root') return [...missLines(step, plan, writer), ''];
  return [];
}

const tableLines = ({ name, table }: LookUpStep, plan: Plan): string[] => [
  behind(`“${table.title}”, ${table.place}: ${table.of} and the value, in SI.`),
  `static const float ${plan.called(name)}_rows[${table.rows.length}][2] = {`,
  ...table.rows.map(([at, value]) => `    {${floatText(at)}, ${floatText(value)}},`),
  '};',
];

/** The names that a root's formula uses beside the one it is solved for. */
const missNames = (step: RootStep): string[] => {
  const by = step.by ?? [];
  const own = new Set([step.name, ...by.map(({ name }) => name)]);
  const all = [...by.map(({ tree }) => tree), step.tree].flatMap(namesIn);
  return [...new Set([...all, step.target])].filter((name) => !own.has(name));
};

/** Within the function that tells how far a trial is off, what comes of the trial is one number. */
function missWriter(step: RootStep, plan: Plan, writer: Writer): Writer {
  if (!step.by) return writer;
  const inside = new Set([step, ...step.by].map(({ name }) => name));
  return writerFor(plan, inside);
}

function missLines(step: RootStep, plan: Plan, writer: Writer): string[] {
  const { called, lengths, lengthName } = plan;
  const inside = missWriter(step, plan, writer);
  const parameters = missNames(step).flatMap((name) => {
    const length = lengths.get(name);
    if (length && step.list) return [`const float *${called(name)}`];
    return length ? [`const float *${called(name)}, int ${lengthName(length)}`] : [`float ${called(name)}`];
  });
  const wheel = step.list ? ['int wheel'] : [];
  return [
    behind(`How far ${plainFormula(step.tree)} is from ${step.target}.`),
    `static float ${called(step.name)}_miss(${[`float ${called(step.name)}`, ...wheel, ...parameters].join(', ')})`,
    '{',
    ...(step.by ?? []).map(
      ({ name, tree }) => `    const float ${called(name)} = ${bare(inside.formula(tree, plan.careful(name)))};`,
    ),
    `    return ${inside.formula(step.tree, plan.careful(step.name))} - ${called(step.target)};`,
    '}',
  ];
}

function functionLines(plan: Plan, writer: Writer): string[] {
  const { calculator } = plan;
  const name = functionName(calculator.id);
  return [
    '/* False when there is no result for these inputs; the result then means nothing. */',
    `bool ${name}(const ${name}_given *given, ${name}_result *result)`,
    '{',
    ...givenLines(plan),
    ...calculator.steps.flatMap((step) => ['', ...lengthLines(step, plan, writer), ...stepLines(step, plan, writer)]),
    '',
    ...refusalLines(plan, writer),
    '}',
  ];
}

function givenLines(plan: Plan): string[] {
  const { calculator, called } = plan;
  const used = new Set([
    ...calculator.steps.flatMap(namesBehind),
    ...calculator.requires.flatMap((one) => namesIn(one.holds)),
  ]);
  const copies = calculator.given
    .filter((given) => used.has(given.name))
    .map(({ name, list }) => `    const float ${list ? '*const ' : ''}${called(name)} = given->${called(name)};`);
  const counts = calculator.given.flatMap((given) => {
    const length = plan.lengths.get(given.name);
    const source = length?.sources.find((one) => one.kind === 'given' && one.name === given.name);
    return length && source ? lengthCheck(`given->${countOf(plan, given)}`, source, length, plan) : [];
  });
  return [...copies, ...counts];
}

/** Where a list step counts to something new, the length is told or compared. */
function lengthLines(step: Step, plan: Plan, writer: Writer): string[] {
  const length = plan.lengths.get(step.name);
  const told = length?.sources.filter((one) => one.kind === 'upto' && one.step === step.name) ?? [];
  return told.flatMap((source) => {
    if (!length || source.kind !== 'upto') return [];
    if (source.to.kind === 'number') return lengthCheck(String(source.to.value), source, length, plan);
    const count = writer.formula(source.to);
    return [
      ...refuseUnless(`${count} >= 1.0f && ${count} <= ${floatText(source.most)}`),
      ...lengthCheck(`(int)${closed(count)}`, source, length, plan),
    ];
  });
}

const closed = (text: string): string => (/^\w+$/.test(text) ? text : `(${text})`);

const refuseUnless = (holds: string): string[] => [`    if (!(${holds})) {`, '        return false;', '    }'];

function lengthCheck(count: string, source: LengthSource, length: Length, plan: Plan): string[] {
  const name = plan.lengthName(length);
  if (length.sources[0] !== source) return refuseUnless(`${count} == ${name}`);
  const told = `    const int ${name} = ${count};`;
  return source.kind === 'given' ? [told, ...refuseUnless(`${name} >= 1 && ${name} <= ${source.most}`)] : [told];
}

function stepLines(step: Step, plan: Plan, writer: Writer): string[] {
  const name = plan.called(step.name);
  const isResult = plan.calculator.results.includes(step.name);
  const length = plan.lengths.get(step.name);
  const described = `    ${behind(describeStep(step))}`;
  if (length) {
    const count = plan.lengthName(length);
    if (step.kind === 'root') return [described, ...listRootLines(step, length, plan, writer)];
    return [
      described,
      isResult ? `    float *const ${name} = result->${name};` : `    float ${name}[${length.most}] = {0};`,
      `    for (int wheel = 0; wheel < ${count}; wheel++) {`,
      `        ${name}[wheel] = ${oneValue(step, plan, writer)};`,
      '    }',
    ];
  }
  const keep = isResult ? [`    result->${name} = ${name};`] : [];
  if (step.kind === 'root') return [described, ...rootLines(step, plan, writer), ...keep];
  return [described, `    const float ${name} = ${oneValue(step, plan, writer)};`, ...keep];
}

function oneValue(step: Step, plan: Plan, writer: Writer): string {
  if (step.kind !== 'look-up') return bare(formulaOf(step, plan, writer));
  const { table } = step;
  const read = table.between === 'rows only' ? 'at_row' : 'between_rows';
  const at = writer.formula(step.at, plan.careful(step.name));
  return `${read}(${plan.called(step.name)}_rows, ${table.rows.length}, ${at})`;
}

const formulaOf = (step: FormulaStep | RootStep, plan: Plan, writer: Writer): string =>
  writer.formula(step.tree, plan.careful(step.name));

const halvings = 60;

function listRootLines(step: RootStep, length: Length, plan: Plan, writer: Writer): string[] {
  const name = plan.called(step.name);
  const isResult = plan.calculator.results.includes(step.name);
  return [
    isResult ? `    float *const ${name} = result->${name};` : `    float ${name}[${length.most}] = {0};`,
    `    for (int wheel = 0; wheel < ${plan.lengthName(length)}; wheel++) {`,
    ...halvingLines(`${name}[wheel]`, step, plan, writer),
    '    }',
  ];
}

const rootLines = (step: RootStep, plan: Plan, writer: Writer): string[] => [
  `    float ${plan.called(step.name)};`,
  '    {',
  ...halvingLines(plan.called(step.name), step, plan, writer),
  '    }',
];

function halvingLines(found: string, step: RootStep, plan: Plan, writer: Writer): string[] {
  const others = missNames(step).flatMap((other) => {
    const length = plan.lengths.get(other);
    return [plan.called(other), ...(length && !step.list ? [plan.lengthName(length)] : [])];
  });
  const wheel = step.list ? ['wheel'] : [];
  const miss = (at: string): string => `${plan.called(step.name)}_miss(${[at, ...wheel, ...others].join(', ')})`;
  return [
    `        ${found} = NAN;`,
    `        float low = ${bare(writer.formula(step.from))};`,
    `        float high = ${bare(writer.formula(step.to))};`,
    `        const float at_low = ${miss('low')};`,
    `        const float at_high = ${miss('high')};`,
    '        if (at_low == 0.0f) {',
    `            ${found} = low;`,
    '        } else if ((at_low < 0.0f && at_high >= 0.0f) || (at_low > 0.0f && at_high <= 0.0f)) {',
    `            for (int halving = 0; halving < ${halvings}; halving++) {`,
    '                const float middle = (low + high) / 2.0f;',
    `                if ((${miss('middle')} < 0.0f) == (at_low < 0.0f)) {`,
    '                    low = middle;',
    '                } else {',
    '                    high = middle;',
    '                }',
    '            }',
    `            ${found} = (low + high) / 2.0f;`,
    '        }',
  ];
}

function refusalLines(plan: Plan, writer: Writer): string[] {
  const { calculator } = plan;
  const required = calculator.requires.flatMap(({ given, holds }) => [
    `    ${behind(`${given}: ${mustHold(holds)}`)}`,
    ...refuseUnless(writer.condition(holds)),
  ]);
  const finite = stepsToCheck(calculator).map(({ name }) => {
    const length = plan.lengths.get(name);
    const called = plan.called(name);
    return length ? `all_finite(${called}, ${plan.lengthName(length)})` : `isfinite(${called})`;
  });
  const counts = resultLengths(plan).map(
    (length) => `    result->${plan.lengthName(length)} = ${plan.lengthName(length)};`,
  );
  return [...counts, ...required, `    return ${finite.length > 0 ? finite.join('\n        && ') : 'true'};`];
}

/** The reader's own numbers, in a comment, for a microcontroller has no room for an example. */
function example(calculator: Emittable, entries: Entries, plan: Plan): string[] {
  const name = functionName(calculator.id);
  const values = toValues(calculator.given, entries);
  const members = calculator.given.map((given) => {
    const typed = comment(typedText(given, entries[given.name] ?? given.usual));
    return `    ${initialiser(given, values[given.name] ?? NaN, plan)} // ${typed}`;
  });
  return [
    '/* Example:',
    '',
    `const ${name}_given given = {`,
    ...members,
    '};',
    `${name}_result result;`,
    `const bool found = ${name}(&given, &result);`,
    '',
    '*/',
  ];
}

function initialiser(given: Given, value: Value, plan: Plan): string {
  const name = plan.called(given.name);
  if (typeof value === 'number') return `.${name} = ${floatText(value)},`;
  return `.${name} = {${value.map(floatText).join(', ')}}, .${countOf(plan, given)} = ${value.length},`;
}
