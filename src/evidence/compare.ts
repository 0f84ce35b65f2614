import type { Calculator } from '../../calculators/calculator.ts';
import { calculatorOf } from '../../calculators/catalogue.ts';
import type { Value, Values } from '../../calculators/formula/evaluate.ts';
import { readCheckFile, type Check, type Comparison } from './check.ts';
import { oursOf, workOut } from './ours.ts';
import { readFigures } from './printed.ts';

/** A published figure beside ours. */
export interface Row extends Pick<Check, 'about' | 'source' | 'place' | 'known' | 'given' | 'note' | 'disagrees'> {
  readonly calculator: string;
  readonly of: string;
  readonly unit: string;
  /** As published: one figure, or one a wheel. */
  readonly printed: readonly string[];
  /** Ours in the unit, as many as are printed. */
  readonly ours: readonly number[];
  /** Ours less the printed figure, and what is allowed, where they differ most for what is allowed. */
  readonly difference: number;
  readonly tolerance: number;
  readonly agrees: boolean;
}

/**
 * Works every check of a file: a row for each comparison, none left out.
 * @param parsed the YAML of the file.
 * @throws Error for a file that is not right, inputs that are refused, or a check marked as disagreeing that agrees.
 */
export function compareFile(parsed: unknown): readonly Row[] {
  const file = readCheckFile(parsed);
  const calculator = calculatorOf(file.calculator);
  return file.checks.flatMap((check, k) => {
    const where = `checks of ${calculator.id}, number ${k + 1}`;
    try {
      return compareCheck(calculator, check);
    } catch (error) {
      throw new Error(`${where} (${check.about}): ${error instanceof Error ? error.message : String(error)}`);
    }
  });
}

function compareCheck(calculator: Calculator, check: Check): readonly Row[] {
  const values = workOut(calculator, check.given);
  return check.compare.map((comparison) => {
    const row = compareOne(calculator, check, comparison, values);
    if (check.disagrees !== undefined && row.agrees) throw new Error(`${row.of} is marked as disagreeing, and agrees`);
    return row;
  });
}

function compareOne(calculator: Calculator, check: Check, comparison: Comparison, values: Values): Row {
  const { about, source, place, known, given, note, disagrees } = check;
  const { of, unit } = comparison;
  const ours = oursOf(calculator, given, comparison, values);
  const gaps = gapsBetween(ours, comparison);
  return {
    calculator: calculator.id,
    about,
    source,
    place,
    known,
    given,
    ...(note === undefined ? {} : { note }),
    ...(disagrees === undefined ? {} : { disagrees }),
    of,
    unit,
    printed: [comparison.printed].flat(),
    ours: [ours].flat(),
    ...widest(gaps),
    agrees: gaps.every(({ difference, tolerance }) => Math.abs(difference) <= tolerance),
  };
}

/** Ours less the printed figures, one by one. */
function gapsBetween(ours: Value, { of, printed, slack }: Comparison): readonly Gap[] {
  if ((typeof ours === 'number') !== (typeof printed === 'string')) {
    throw new Error(`${of} and the printed figure: one is a list, the other is not`);
  }
  const numbers = [ours].flat();
  const figures = readFigures([printed].flat(), slack);
  if (numbers.length !== figures.length) {
    throw new Error(`${of} gives ${numbers.length}, printed are ${figures.length}`);
  }
  return figures.map(({ value, tolerance }, k) => ({ difference: (numbers[k] ?? NaN) - value, tolerance }));
}

interface Gap {
  readonly difference: number;
  readonly tolerance: number;
}

const widest = (gaps: readonly Gap[]): Gap => gaps.reduce((widest, gap) => (share(gap) > share(widest) ? gap : widest));

const share = ({ difference, tolerance }: Gap): number => Math.abs(difference) / tolerance;
