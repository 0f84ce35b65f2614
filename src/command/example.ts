import { catalogue, findCalculator } from '../../calculators/catalogue.ts';
import { readInputs } from '../../calculators/inputs.ts';
import { work, type Working } from '../../calculators/work.ts';
import { asCode, languageNames } from '../report/code.ts';
import { asJson } from '../report/json.ts';
import { asMarkdown } from '../report/markdown.ts';
import { asText } from '../report/text.ts';
import { CallError, readArguments } from './arguments.ts';

const forms: Readonly<Record<string, (working: Working) => string>> = {
  text: asText,
  markdown: asMarkdown,
  json: asJson,
  ...Object.fromEntries(languageNames.map((name) => [name, (working: Working) => asCode(name, working)])),
};

const help = `Prints a worked example.

  npm run --silent example -- <calculator> [name=value ...] [--as ${Object.keys(forms).join('|')}]
  npm run --silent example -- --list

A value may carry a unit: r=60mm, theta=90deg, omega=-4rad/s,-1rad/s,-2rad/s.
Every given has a usual value, so none is required. c, python and csv print the calculation itself, as C for a
microcontroller, Python or spreadsheet cells, with the values for an example.`;

function answer(args: readonly string[]): string {
  if (args.includes('--help')) return help;
  if (args.includes('--list')) return list();
  const asked = readArguments(args, Object.keys(forms));
  const calculator = findCalculator(asked.id);
  if (!calculator) throw new CallError(`There is no calculator “${asked.id}”; --list shows them all.`);
  const names = calculator.given.map((given) => given.name);
  const unknown = Object.keys(asked.texts).find((name) => !names.includes(name));
  if (unknown !== undefined)
    throw new CallError(`${asked.id} does not take “${unknown}”; it takes ${names.join(', ')}.`);
  const inputs = readInputs(calculator.given, asked.texts);
  if (!inputs.ok) throw new CallError(inputs.problems.map((problem) => problem.message).join('\n'));
  const worked = work(calculator, inputs.entries);
  if (!worked.ok) throw new CallError(worked.refused.message);
  return forms[asked.as]?.(worked.working) ?? '';
}

function list(): string {
  const width = Math.max(...catalogue.map(({ id }) => id.length));
  return catalogue.map(({ id, question }) => `${id.padEnd(width)}  ${question}`).join('\n');
}

try {
  const text = answer(process.argv.slice(2));
  process.stdout.write(text.endsWith('\n') ? text : `${text}\n`);
} catch (error) {
  if (!(error instanceof CallError)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 2;
}
