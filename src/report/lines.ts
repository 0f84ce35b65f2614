import { symbolText } from '../../calculators/formula/symbols.ts';
import { inRadians } from '../../calculators/line.ts';
import { describeShares } from '../../calculators/uncertainty.ts';
import { substituted, type WorkedStep, type Working } from '../../calculators/work.ts';

/** A step's printed lines as plain text: the formula, then each row with its numbers. */
export function stepLines({ step, text, line, rows }: WorkedStep): string[] {
  const symbol = symbolText(step.name, step.list);
  if (step.kind === 'look-up') return [`${symbol} = ${text}, from “${step.table.title}”, ${step.table.place}`];
  if (step.kind === 'root')
    return [`${step.formula} = ${step.target}, solved for ${symbol} = ${text}`, ...check(step.target, line, rows)];
  if (step.brief || !line) return [`${symbol} = ${step.formula} = ${text}`];
  return [
    `${symbol} = ${step.formula}${inRadians(line) ? '   (calculator in radians)' : ''}`,
    ...rows.map((row, i) => {
      const name = step.list ? symbolText(step.name, true).replace(/_?i$/, `_${i + 1}`) : symbol;
      const converted = row.converted === undefined ? '' : ` = ${row.converted}`;
      return `${name} = ${substituted(line, row)} = ${row.result}${converted}`;
    }),
  ];
}

function check(target: string, line: WorkedStep['line'], rows: WorkedStep['rows']): string[] {
  return line ? rows.map((row) => `check: ${substituted(line, row)} = ${row.result} = ${target}`) : [];
}

/** Where the ± of each result comes from, a line a result; none without a ±. */
export const shareLines = ({ calculator, steps }: Working): string[] =>
  steps.flatMap(({ step, spread }) =>
    spread && calculator.results.includes(step.name)
      ? [`${symbolText(step.name, step.list)}: ${describeShares(spread.shares)}`]
      : [],
  );
