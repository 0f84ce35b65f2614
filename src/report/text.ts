import { symbolText } from '../../calculators/formula/symbols.ts';
import type { Working } from '../../calculators/work.ts';
import { addressOf } from './address.ts';
import { shareLines, stepLines } from './lines.ts';

/** A piece of working as plain text. */
export function asText(working: Working): string {
  const { calculator } = working;
  const resultNames = new Set(calculator.results);
  return [
    calculator.title,
    calculator.question,
    '',
    'Given',
    ...working.given.map(
      ({ given, text }) => `  ${symbolText(given.name, given.list !== undefined)} = ${text}  (${given.means})`,
    ),
    '',
    'Working',
    ...working.steps.flatMap((worked) => [`  ${worked.step.means}`, ...stepLines(worked).map((line) => `    ${line}`)]),
    '',
    'Result',
    ...working.steps
      .filter(({ step }) => resultNames.has(step.name))
      .map(({ step, text }) => `  ${step.means}: ${symbolText(step.name, step.list)} = ${text}`),
    ...section('Where the ± comes from', shareLines(working)),
    ...section('Cautions', working.cautions),
    '',
    `Address: ${addressOf(working)}`,
  ].join('\n');
}

const section = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : ['', title, ...lines.map((line) => `  ${line}`)];
