/**
 * The smallest of the values that is at least as large as the given share of them (nearest rank).
 * @param share from 0 to 1, such as 0.95.
 */
export function percentile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  const value = sorted[Math.max(1, Math.ceil(share * sorted.length)) - 1];
  if (value === undefined) throw new Error('There is no percentile of nothing.');
  return value;
}

export const median = (values: readonly number[]): number => percentile(values, 0.5);
