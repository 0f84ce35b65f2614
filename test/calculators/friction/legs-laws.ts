import { expect } from 'vitest';
import { wheelLoads } from '../../../calculators/friction/wheel-loads.ts';
import { degree, worked } from '../wheel-kinematics/worked.ts';
import { loadsOf } from './legs-engine.ts';

/** Lengths in radii of the robot, acceleration in m/s², angles in degrees. */
interface Moving {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly acc: number;
  readonly theta: number;
  readonly slope: number;
  readonly up: number;
}

const g = 9.80665;
const feet = [0, 120, 240].map((at): [number, number] => [Math.cos(at * degree), Math.sin(at * degree)]);

/** What the legs feel along the ground: the weight downhill, and what holds a mass back that speeds up. */
const pullOf = ({ acc, theta, slope, up }: Moving): [number, number] => {
  const [lean, lag] = [Math.tan(slope * degree), acc / g / Math.cos(slope * degree)];
  return [
    -lean * Math.cos(up * degree) - lag * Math.cos(theta * degree),
    -lean * Math.sin(up * degree) - lag * Math.sin(theta * degree),
  ];
};

const calculated = ({ theta, slope, up, ...rest }: Moving) =>
  worked(wheelLoads, { ...rest, R: 1, g, theta: theta * degree, slope: slope * degree, up: up * degree });

/** The engine lets bodies sink in by a hair: a thousandth of the weight is far more than that makes. */
export function compareLoads(moving: Moving, engine: Partial<Moving> = {}): void {
  const tried = { ...moving, ...engine };
  const found = loadsOf({ feet, centre: [tried.x, tried.y, tried.z], pull: pullOf(tried) }) ?? [];
  calculated(moving)
    .list('share_N')
    .forEach((share, k) => expect(Math.abs((found[k] ?? NaN) - share)).toBeLessThan(0.001));
}

/** The balls that the legs stand on roll as the body tips, and bring the limit a little nearer or farther: three per cent. */
export function compareTipping(at: Omit<Moving, 'acc' | 'slope' | 'up'>): void {
  const limit = tippingAt(at);
  const engine = (acc: number) =>
    loadsOf({ feet, centre: [at.x, at.y, at.z], pull: pullOf({ ...at, acc, slope: 0, up: 0 }) });
  expect(engine(0.97 * limit)).toBeDefined();
  expect(engine(1.03 * limit)).toBeUndefined();
}

/** The acceleration from which on the calculator says that it tips. */
function tippingAt(at: Omit<Moving, 'acc' | 'slope' | 'up'>): number {
  let [low, high] = [0, 100];
  for (let k = 0; k < 40; k++) {
    const acc = (low + high) / 2;
    if (tips({ ...at, acc, slope: 0, up: 0 })) high = acc;
    else low = acc;
  }
  return low;
}

function tips(moving: Moving): boolean {
  try {
    calculated(moving);
    return false;
  } catch (problem) {
    expect(String(problem)).toContain('It tips over');
    return true;
  }
}
