/** A robot with motors, wheels and rotors, moved on in small steps: written apart from the calculators, to check them. */
export interface Driven {
  readonly n: number;
  readonly alpha: number;
  readonly theta: number;
  readonly m: number;
  readonly r: number;
  readonly C_rr: number;
  readonly mu: number;
  readonly g: number;
  readonly T_w: number;
  readonly omega_w: number;
  readonly J: number;
  readonly ratio: number;
  readonly J_wheel: number;
}

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);

const sharesOf = ({ n, alpha, theta }: Driven): number[] =>
  Array.from({ length: n }, (_, k) => Math.sin(theta - alpha - (k * 2 * Math.PI) / n));

/**
 * Acceleration at speed v when all commands are scaled by one factor: each motor's torque falls in a line with its own speed,
 * spins its own rotor and wheel up, and what is left pushes on the floor.
 */
function motionAt(robot: Driven, v: number, factor: number): { acceleration: number; hardestPush: number } {
  const shares = sharesOf(robot);
  const largest = Math.max(...shares.map(Math.abs));
  const inertia = robot.J * robot.ratio ** 2 + robot.J_wheel;
  const torques = shares.map((s) => robot.T_w * ((factor * s) / largest - (v * s) / robot.r / robot.omega_w));
  const drag = robot.C_rr * robot.m * robot.g;
  const push = sum(torques.map((torque, k) => (torque * (shares[k] ?? NaN)) / robot.r));
  const spinning = (inertia * sum(shares.map((s) => s * s))) / robot.r ** 2;
  const acceleration = (push - drag) / (robot.m + spinning);
  const onFloor = torques.map(
    (torque, k) => (torque - (inertia * acceleration * (shares[k] ?? NaN)) / robot.r) / robot.r,
  );
  return { acceleration, hardestPush: Math.max(...onFloor.map(Math.abs)) };
}

/** As hard as motors and floor allow: at full command, or at the largest command under which the hardest wheel holds. */
export function hardestStart(robot: Driven, v: number): number {
  const holds = (robot.mu * robot.m * robot.g) / robot.n;
  const full = motionAt(robot, v, 1);
  if (full.hardestPush <= holds) return full.acceleration;
  let [low, high] = [0, 1];
  for (let k = 0; k < 50; k++) {
    const middle = (low + high) / 2;
    const { acceleration, hardestPush } = motionAt(robot, v, middle);
    if (acceleration > 0 && hardestPush > holds) high = middle;
    else low = middle;
  }
  return motionAt(robot, v, low).acceleration;
}

/** Where speed gains no more, by bisection. */
export function finalSpeed(robot: Driven): number {
  let [low, high] = [0, 1000];
  for (let k = 0; k < 100; k++) {
    const middle = (low + high) / 2;
    if (motionAt(robot, middle, 1).acceleration > 0) low = middle;
    else high = middle;
  }
  return low;
}

/** Runge-Kutta of the fourth order from rest to a speed: how long and how far. */
export function runTo(robot: Driven, speed: number, step: number): { time: number; distance: number } {
  let [v, time, distance] = [0, 0, 0];
  for (let k = 0; k < 200000; k++) {
    const a1 = hardestStart(robot, v);
    const a2 = hardestStart(robot, v + (a1 * step) / 2);
    const a3 = hardestStart(robot, v + (a2 * step) / 2);
    const a4 = hardestStart(robot, v + a3 * step);
    const gain = ((a1 + 2 * a2 + 2 * a3 + a4) / 6) * step;
    const way = v * step + ((a1 + a2 + a3) / 6) * step ** 2;
    if (v + gain >= speed) {
      const share = (speed - v) / gain;
      return { time: time + share * step, distance: distance + share * way };
    }
    [v, time, distance] = [v + gain, time + step, distance + way];
  }
  throw new Error('never at speed');
}
