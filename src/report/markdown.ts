import { symbolText } from '../../calculators/formula/symbols.ts';
import type { Working } from '../../calculators/work.ts';
import { addressOf } from './address.ts';
import { shareLines, stepLines } from './lines.ts';

/** A piece of working as Markdown, for a build log. */
export function asMarkdown(working: Working): string {
  const { calculator } = working;
  const resultNames = new Set(calculator.results);
  return [
    `## ${calculator.title}`,
    '',
    calculator.question,
    '',
    '### Given',
    '',
    '| | | |',
    '| --- | --- | --- |',
    ...working.given.map(
      ({ given, text }) => `| ${given.means} | ${symbolText(given.name, given.list !== undefined)} | ${text} |`,
    ),
    '',
    '### Working',
    '',
    ...working.steps.flatMap((worked, k) => [
      `${k + 1}. ${worked.step.means}`,
      '',
      '   ```text',
      ...stepLines(worked).map((line) => `   ${line}`),
      '   ```',
      '',
    ]),
    '### Result',
    '',
    ...working.steps
      .filter(({ step }) => resultNames.has(step.name))
      .map(({ step, text }) => `- ${step.means}: **${symbolText(step.name, step.list)} = ${text}**`),
    ...section('Where the ± comes from', shareLines(working)),
    ...section('Cautions', working.cautions),
    '',
    `Address of this working: \`${addressOf(working)}\``,
  ].join('\n');
}

const section = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : ['', `### ${title}`, '', ...lines.map((line) => `- ${line}`)];
