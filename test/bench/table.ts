/** One thing that was measured. */
export interface Line {
  readonly what: string;
  readonly measured: string;
  /** Both left out where nothing is promised. */
  readonly budget?: string;
  readonly passes?: boolean;
}

/** @param digits how many are printed after the point. */
export function under(what: string, measured: number, budget: number, unit: string, digits = 1): Line {
  return {
    what,
    measured: `${measured.toFixed(digits)}${unit}`,
    budget: `< ${budget}${unit}`,
    passes: measured < budget,
  };
}

export const holds = (what: string, difference: string | undefined): Line => ({
  what,
  measured: difference ?? 'yes',
  budget: 'yes',
  passes: difference === undefined,
});

export const note = (what: string, measured: string): Line => ({ what, measured });

export const failed = (lines: readonly Line[]): Line[] => lines.filter(({ passes }) => passes === false);

export function table(lines: readonly Line[]): string {
  const verdict = ({ passes }: Line): string => (passes === undefined ? '' : passes ? 'pass' : 'FAIL');
  const cells = lines.map((line) => [line.what, line.measured, line.budget ?? '', verdict(line)]);
  const rows = [['what', 'measured', 'budget', ''], ...cells];
  const widths = [0, 1, 2, 3].map((column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  return rows
    .map((row) =>
      row
        .map((cell, column) => cell.padEnd(widths[column] ?? 0))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}
