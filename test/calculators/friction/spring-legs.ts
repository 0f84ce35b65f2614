/** Wheels as springs that push and never pull, on a rigid body: written apart from the calculators, to check them. */
export interface Leg {
  readonly x: number;
  readonly y: number;
  /** How much higher the floor is under it. */
  readonly raised: number;
}

/**
 * Loads of springs that carry `W` at (x, y). The body has a height and two tilts, found by Newton's method: springs that
 * would pull are left out, until the same ones push again.
 */
export function springLoads(legs: readonly Leg[], stiffness: number, W: number, x: number, y: number): number[] {
  let pushing = legs.map(() => true);
  for (let round = 0; round < 50; round++) {
    const loads = loadsOf(legs, pushing, stiffness, W, x, y);
    const gaps = loads.map((load) => load > 0);
    if (gaps.every((push, k) => push === pushing[k])) return loads.map((load) => Math.max(load, 0));
    pushing = gaps;
    if (pushing.filter(Boolean).length < 3) break;
  }
  return legs.map(() => NaN);
}

/** What every spring would carry, pulling too, for the body that rests on those that push. */
function loadsOf(
  legs: readonly Leg[],
  pushing: readonly boolean[],
  stiffness: number,
  W: number,
  x: number,
  y: number,
): number[] {
  const columns = (leg: Leg): number[] => [1, leg.x, leg.y];
  const matrix = [0, 1, 2].map(() => [0, 0, 0]);
  const right = [W, W * x, W * y];
  legs.forEach((leg, k) => {
    if (!pushing[k]) return;
    columns(leg).forEach((a, row) => {
      right[row] = (right[row] ?? NaN) - stiffness * leg.raised * a;
      columns(leg).forEach((b, column) => {
        const line = matrix[row] ?? [];
        line[column] = (line[column] ?? NaN) + stiffness * a * b;
      });
    });
  });
  const pose = cramer(matrix, right);
  return legs.map(
    (leg) => stiffness * (leg.raised + columns(leg).reduce((sum, a, k) => sum + a * (pose[k] ?? NaN), 0)),
  );
}

function cramer(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const whole = determinant(matrix);
  return [0, 1, 2].map(
    (column) => determinant(matrix.map((row, k) => row.map((a, j) => (j === column ? (right[k] ?? NaN) : a)))) / whole,
  );
}

function determinant(matrix: readonly (readonly number[])[]): number {
  const at = (row: number, column: number): number => matrix[row]?.[column % 3] ?? NaN;
  return [0, 1, 2].reduce((sum, k) => sum + at(0, k) * (at(1, k + 1) * at(2, k + 2) - at(1, k + 2) * at(2, k + 1)), 0);
}

export const ring = (n: number, alpha: number, R: number, raised: (k: number) => number = () => 0): Leg[] =>
  Array.from({ length: n }, (_, k) => {
    const angle = alpha + (k * 2 * Math.PI) / n;
    return { x: R * Math.cos(angle), y: R * Math.sin(angle), raised: raised(k) };
  });
