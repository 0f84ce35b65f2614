/**
 * A robot in the plane, worked without the formulas of the calculators: points, rotation matrices and a linear system
 * solved by elimination.
 */
export type Vector = readonly [x: number, y: number];

export interface Motion {
  readonly travel: Vector;
  readonly turn: number;
}

export interface Pose {
  readonly at: Vector;
  readonly heading: number;
}

export interface Wheel {
  readonly at: Vector;
  readonly drive: Vector;
}

export const start: Pose = { at: [0, 0], heading: 0 };

export const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1];

export const rotate = ([x, y]: Vector, angle: number): Vector => [
  x * Math.cos(angle) - y * Math.sin(angle),
  x * Math.sin(angle) + y * Math.cos(angle),
];

/** Wheels evenly round a circle, each driving a quarter turn on from where it stands. */
export const wheelsRound = (n: number, alpha: number, R: number): readonly Wheel[] =>
  Array.from({ length: n }, (_, k) => {
    const angle = alpha + (2 * Math.PI * k) / n;
    return { at: rotate([R, 0], angle), drive: rotate([0, 1], angle) };
  });

/** What the rim of a wheel does in a motion of the robot: its point moves along with the robot and round its middle. */
export const rimOf = ({ at, drive }: Wheel, { travel, turn }: Motion): number =>
  dot([travel[0] - turn * at[1], travel[1] + turn * at[0]], drive);

/** The motion whose rims come nearest to those given, in the sense of least squares. */
export function motionOf(wheels: readonly Wheel[], rims: readonly number[]): Motion {
  const unit = (travel: Vector, turn: number): number[] => wheels.map((wheel) => rimOf(wheel, { travel, turn }));
  const columns = [unit([1, 0], 0), unit([0, 1], 0), unit([0, 0], 1)];
  const product = (a: readonly number[], b: readonly number[]): number =>
    a.reduce((sum, x, k) => sum + x * (b[k] ?? NaN), 0);
  const [x = NaN, y = NaN, turn = NaN] = eliminate(
    columns.map((a) => [...columns.map((b) => product(a, b)), product(a, rims)]),
  );
  return { travel: [x, y], turn };
}

/** Gauss–Jordan with pivoting; each row ends in its right side. */
function eliminate(rows: readonly (readonly number[])[]): readonly number[] {
  let left = rows.map((row) => [...row]);
  rows.forEach((_, column) => {
    const size = (row: readonly number[]): number => Math.abs(row[column] ?? NaN);
    const below = left.slice(column).sort((a, b) => size(b) - size(a));
    const [pivot = []] = below;
    const scaled = pivot.map((x) => x / (pivot[column] ?? NaN));
    const without = (row: readonly number[]): number[] =>
      row.map((x, k) => x - (row[column] ?? NaN) * (scaled[k] ?? NaN));
    left = [...left.slice(0, column).map(without), scaled, ...below.slice(1).map(without)];
  });
  return left.map((row) => row.at(-1) ?? NaN);
}

/** A small motion in the robot’s own frame, done at the heading in its middle. */
export function moved({ at, heading }: Pose, { travel, turn }: Motion): Pose {
  const [dx, dy] = rotate(travel, heading + turn / 2);
  return { at: [at[0] + dx, at[1] + dy], heading: heading + turn };
}
