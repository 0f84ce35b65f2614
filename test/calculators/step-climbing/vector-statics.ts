/**
 * Three wheels at a step as bare statics, with no formula shared with the calculator: a force along the normal and one
 * along the drive direction at each contact, all as vectors, and six equations solved by elimination.
 */
type Vector = readonly [number, number, number];

export interface Robot {
  readonly theta: number;
  readonly alpha: number;
  readonly r: number;
  readonly q: number;
  readonly R: number;
  readonly mu: number;
  readonly x: number;
  readonly y: number;
  readonly W: number;
  readonly T_w: number;
}

const plus = (a: Vector, b: Vector): Vector => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
const times = (k: number, a: Vector): Vector => [k * a[0], k * a[1], k * a[2]];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const unit = (a: Vector): Vector => times(1 / Math.hypot(...a), a);
const down: Vector = [0, 0, -1];

interface Contact {
  /** From the middle of the robot, at the height of the axles. */
  readonly point: Vector;
  readonly normal: Vector;
  readonly drive: Vector;
  /** How far the contact is from the axle line. */
  readonly lever: number;
}

const into = ({ theta }: Robot): Vector => [Math.cos(theta), Math.sin(theta), 0];
const outTo = ({ alpha }: Robot, wheel: number): Vector => {
  const angle = alpha + (wheel * 2 * Math.PI) / 3;
  return [Math.cos(angle), Math.sin(angle), 0];
};

/** Where a roller touches at a contact angle, from the wheel's own middle. */
function touch(robot: Robot, wheel: number, psi: number): { place: Vector; towards: Vector; round: Vector } {
  const axle = outTo(robot, wheel);
  const towards = plus(times(Math.sin(psi), into(robot)), times(Math.cos(psi), down));
  const round = unit(plus(towards, times(-dot(towards, axle), axle)));
  return { place: plus(times(robot.r - robot.q, round), times(robot.q, towards)), towards, round };
}

const reach = (robot: Robot, wheel: number): number => robot.R * dot(into(robot), outTo(robot, wheel));

/** @param rise how high above the floor it is touched. */
function contact(robot: Robot, wheel: number, psi: number, rise: number): Contact {
  const axle = outTo(robot, wheel);
  const { place, towards, round } = touch(robot, wheel, psi);
  const level = plus(times(robot.R, axle), [place[0], place[1], 0]);
  return {
    point: plus(level, [0, 0, rise - robot.r]),
    normal: times(-1, towards),
    drive: cross(axle, round),
    lever: Math.hypot(...cross(axle, place)),
  };
}

const abreast = 1e-9;

/** The contacts as one wheel leaves the floor: those further ahead are up, or still on the edge. */
function contacts(robot: Robot, leaving: number, psi: number): readonly Contact[] {
  const own = touch(robot, leaving, psi).place;
  const rise = robot.r + own[2];
  const ahead = dot(own, into(robot));
  return [0, 1, 2].map((wheel) => {
    const lead = reach(robot, wheel) - reach(robot, leaving);
    if (wheel === leaving) return contact(robot, wheel, psi, rise);
    if (lead < -abreast * robot.R) return contact(robot, wheel, 0, 0);
    const sine = Math.sin(psi) * Math.max(1 - Math.max(lead, 0) / ahead, 0);
    return contact(robot, wheel, Math.asin(sine), rise);
  });
}

/** Gauss with the largest pivot. */
function eliminate(rows: number[][]): number[] {
  const n = rows.length;
  const at = (i: number, j: number): number => rows[i]?.[j] ?? NaN;
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let i = k; i < n; i++) if (Math.abs(at(i, k)) > Math.abs(at(pivot, k))) pivot = i;
    [rows[k], rows[pivot]] = [rows[pivot] ?? [], rows[k] ?? []];
    for (let i = 0; i < n; i++) {
      const factor = i === k ? 0 : at(i, k) / at(k, k);
      rows[i] = (rows[i] ?? []).map((value, j) => value - factor * at(k, j));
    }
  }
  return rows.map((row, k) => (row[n] ?? NaN) / (row[k] ?? NaN));
}

export interface Balance {
  readonly normals: readonly number[];
  readonly drives: readonly number[];
  readonly torques: readonly number[];
  readonly rise: number;
}

/** Forces and moments add up to nothing: the six unknowns, wheel by wheel. */
export function balance(robot: Robot, leaving: number, psi: number): Balance {
  const all = contacts(robot, leaving, psi);
  const parts = all.flatMap(({ point, normal, drive }) =>
    [normal, drive].map((force) => [...force, ...cross(point, force)]),
  );
  const weight: Vector = [0, 0, -robot.W];
  const load = [...weight, ...cross([robot.x, robot.y, 0], weight)];
  const found = eliminate(load.map((one, row) => [...parts.map((part) => part[row] ?? NaN), -one]));
  const of = (offset: number): number[] => [0, 1, 2].map((wheel) => found[2 * wheel + offset] ?? NaN);
  const drives = of(1);
  return {
    normals: of(0),
    drives,
    torques: drives.map((force, wheel) => Math.abs(force) * (all[wheel]?.lever ?? NaN)),
    rise: robot.r + touch(robot, leaving, psi).place[2],
  };
}

/** Does every wheel hold, with grip and torque to spare? */
function holds(robot: Robot, leaving: number, psi: number): boolean {
  const { normals, drives, torques } = balance(robot, leaving, psi);
  return normals.every(
    (normal, wheel) =>
      normal > 0 && Math.abs(drives[wheel] ?? NaN) < robot.mu * normal && (torques[wheel] ?? NaN) < robot.T_w,
  );
}

/** The first contact angle, up to a steepest, at which a wheel gives way: a walk in small steps, then halving. */
export function firstToGive(robot: Robot, leaving: number, steepest: number, steps: number): number {
  let k = 1;
  while (k < steps && holds(robot, leaving, (steepest * k) / steps)) k++;
  let [low, high] = [(steepest * (k - 1)) / steps, (steepest * k) / steps];
  for (let halving = 0; halving < 60; halving++) {
    const middle = (low + high) / 2;
    if (holds(robot, leaving, middle)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
