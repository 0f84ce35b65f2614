import { formatNumber } from '../../calculators/quantity/format.ts';

/** The largest of …, 0.5, 1, 2, 5, 10, … that is not above a factor: an enlargement that can be said in a word. */
export function roundFactor(most: number): number {
  const power = 10 ** Math.floor(Math.log10(most));
  const [largest = 1] = [5, 2, 1].filter((digit) => digit * power <= most);
  return largest * power;
}

export const times = (factor: number): string => `× ${formatNumber(factor, 3)}`;
