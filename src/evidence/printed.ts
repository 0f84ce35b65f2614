import { evaluateNumber } from '../../calculators/formula/evaluate.ts';
import { parse } from '../../calculators/formula/parse.ts';

/** A published figure as a number, and how far from it still agrees. */
export interface Figure {
  readonly value: number;
  readonly tolerance: number;
}

const decimal = /^[+-]?\d+(?:\.(\d+))?$/;
const exactShare = 1e-9;
const coarsest = 0.1;

/**
 * Reads published figures: decimals, good to half their last digit, or exact expressions such as `-sqrt(3)/2`. With one
 * expression in it a whole list is exact: in a matrix of roots, 1 is not a rounded number.
 * @param slack tolerance to take instead.
 * @throws Error for a text that is neither, or for figures so coarse that nearly anything would agree with them.
 */
export function readFigures(texts: readonly string[], slack?: number): readonly Figure[] {
  const exact = texts.some((text) => !decimal.test(text));
  const values = texts.map(valueOf);
  const largest = Math.max(...values.map(Math.abs));
  const tolerances = texts.map((text) => slack ?? (exact ? exactShare * (largest || 1) : halfLastDigit(text)));
  if (slack === undefined && tolerances.some((tolerance) => tolerance > coarsest * largest)) {
    throw new Error(`too coarse to check anything: ${texts.join(', ')}: give a slack and its reason`);
  }
  return values.map((value, k) => ({ value, tolerance: tolerances[k] ?? NaN }));
}

/** `Number` for decimals, so that what is printed is what is meant; the formula language for the rest. */
const valueOf = (text: string): number =>
  decimal.test(text) ? Number(text) : evaluateNumber(parse(text, new Set()), {});

const halfLastDigit = (text: string): number => 0.5 * 10 ** -(decimal.exec(text)?.[1]?.length ?? 0);
