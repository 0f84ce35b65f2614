/** Three wheels on a plane, all forces from Newton's equations in space: written apart from the calculators, to check them. */
export interface Braking {
  readonly alpha: number;
  readonly theta: number;
  readonly R: number;
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly m: number;
  readonly g: number;
  readonly slope: number;
  readonly up: number;
}

export interface Contact {
  readonly push: number;
  readonly load: number;
}

/**
 * Six unknowns, a push along the drive direction and a load for each wheel; six equations, forces and moments about the
 * centre of mass, for a robot that slows by `braking` along its heading and does not turn.
 */
export function contactsOf(robot: Braking, braking: number): Contact[] {
  const { alpha, theta, R, x, y, z, m, g, slope, up } = robot;
  const rows: number[][] = Array.from({ length: 6 }, () => Array<number>(7).fill(0));
  for (let k = 0; k < 3; k++) {
    const angle = alpha + (k * 2 * Math.PI) / 3;
    const place: Vector3 = [R * Math.cos(angle) - x, R * Math.sin(angle) - y, -z];
    add(rows, 2 * k, place, [-Math.sin(angle), Math.cos(angle), 0]);
    add(rows, 2 * k + 1, place, [0, 0, 1]);
  }
  const down = m * g * Math.sin(slope);
  const forces = [
    down * Math.cos(up) - m * braking * Math.cos(theta),
    down * Math.sin(up) - m * braking * Math.sin(theta),
    m * g * Math.cos(slope),
  ];
  forces.forEach((force, row) => {
    const equation = rows[row];
    if (equation) equation[6] = force;
  });
  const unknowns = eliminate(rows);
  return [0, 1, 2].map((k) => ({ push: unknowns[2 * k] ?? NaN, load: unknowns[2 * k + 1] ?? NaN }));
}

type Vector3 = readonly [number, number, number];

/** A unit force along `along` at `place`: its column of the six equations. */
function add(rows: number[][], column: number, [px, py, pz]: Vector3, [fx, fy, fz]: Vector3): void {
  const moments = [py * fz - pz * fy, pz * fx - px * fz, px * fy - py * fx];
  [fx, fy, fz, ...moments].forEach((entry, row) => {
    const equation = rows[row];
    if (equation) equation[column] = entry;
  });
}

/** Gauss and Jordan, with the largest pivot of the rows not used yet. */
function eliminate(rows: readonly number[][]): number[] {
  const free = [...rows];
  const pivots: number[][] = [];
  for (let k = 0; k < rows.length; k++) {
    free.sort((a, b) => Math.abs(b[k] ?? NaN) - Math.abs(a[k] ?? NaN));
    const pivot = free.shift() ?? [];
    for (const row of [...free, ...pivots]) {
      const factor = (row[k] ?? NaN) / (pivot[k] ?? NaN);
      row.forEach((entry, j) => (row[j] = entry - factor * (pivot[j] ?? NaN)));
    }
    pivots.push(pivot);
  }
  return pivots.map((row, k) => (row[rows.length] ?? NaN) / (row[k] ?? NaN));
}

/** The hardest braking that keeps a condition, by bisection from none at all. */
export function hardest(robot: Braking, keeps: (contacts: readonly Contact[]) => boolean): number {
  let [low, high] = [0, 1000];
  for (let k = 0; k < 80; k++) {
    const middle = (low + high) / 2;
    if (keeps(contactsOf(robot, middle))) low = middle;
    else high = middle;
  }
  return low;
}
