/** Linear programmes by the simplex method on a full tableau: written apart from the calculators, to check them. */

/**
 * The most of `cost · v` over v ≥ 0 with `rows · v = right`.
 * @returns NaN when nothing fits. It must have a bound.
 */
export function most(
  cost: readonly number[],
  rows: readonly (readonly number[])[],
  right: readonly number[],
): { readonly most: number; readonly at: readonly number[] } {
  const count = cost.length;
  // One helper a row makes a first corner; then they are driven out.
  const table = rows.map((row, k) => {
    const sign = (right[k] ?? 0) < 0 ? -1 : 1;
    const helpers = rows.map((_, j) => (j === k ? 1 : 0));
    return [...row.map((a) => sign * a), ...helpers, sign * (right[k] ?? 0)];
  });
  const basis = rows.map((_, k) => count + k);
  climb(table, basis, [...cost.map(() => 0), ...rows.map(() => -1)], count + rows.length);
  const short = basis.some((name, k) => name >= count && last(table[k]) > 1e-7);
  if (short) return { most: NaN, at: [] };
  climb(table, basis, [...cost, ...rows.map(() => 0)], count);
  const at = cost.map((_, name) => (basis.includes(name) ? last(table[basis.indexOf(name)]) : 0));
  return { most: at.reduce((sum, value, k) => sum + value * (cost[k] ?? 0), 0), at };
}

const last = (row: readonly number[] | undefined): number => row?.at(-1) ?? NaN;

/** Steps from corner to corner while that gains. Of the columns that gain the first is taken, so it cannot go round in circles. */
function climb(table: number[][], basis: number[], cost: readonly number[], columns: number): void {
  for (let step = 0; step < 10_000; step++) {
    const gain = (column: number): number =>
      (cost[column] ?? 0) - table.reduce((sum, row, k) => sum + (cost[basis[k] ?? 0] ?? 0) * (row[column] ?? 0), 0);
    const enter = Array.from({ length: columns }, (_, k) => k).find((k) => !basis.includes(k) && gain(k) > 1e-10);
    if (enter === undefined) return;
    pivot(table, basis, leaving(table, basis, enter), enter);
  }
  throw new Error('no end of steps');
}

function leaving(table: readonly number[][], basis: readonly number[], enter: number): number {
  const ratios = table.map((row) => ((row[enter] ?? 0) > 1e-10 ? last(row) / (row[enter] ?? NaN) : Infinity));
  const least = Math.min(...ratios);
  if (least === Infinity) throw new Error('no bound');
  const tied = ratios.flatMap((ratio, k) => (ratio <= least + 1e-12 ? [k] : []));
  return tied.reduce((best, k) => ((basis[k] ?? 0) < (basis[best] ?? 0) ? k : best));
}

function pivot(table: number[][], basis: number[], leave: number, enter: number): void {
  const row = table[leave] ?? [];
  const by = row[enter] ?? NaN;
  table[leave] = row.map((a) => a / by);
  table.forEach((other, k) => {
    const factor = other[enter] ?? 0;
    if (k !== leave) table[k] = other.map((a, column) => a - factor * (table[leave]?.[column] ?? NaN));
  });
  basis[leave] = enter;
}
