/** A trial and how far it misses. */
interface Trial {
  readonly x: number;
  readonly miss: number;
}

/** The last trial, the one on the other side of the root, and the one before. */
interface Bracket {
  readonly near: Trial;
  readonly across: Trial;
  readonly before: Trial | undefined;
}

const mostTrials = 100;

/**
 * Where each of several functions is zero between two ends, all tried at once. Bisection, sped up by a curve through the
 * last three trials where that is safe: T. R. Chandrupatla, Advances in Engineering Software 28 (1997) 145-149, from
 * memory.
 * @param missAt how far each function is from zero at its own trial value.
 * @returns NaN where the two ends do not bracket a root.
 */
export function closeIn(
  missAt: (trials: readonly number[]) => readonly number[],
  lows: readonly number[],
  highs: readonly number[],
): number[] {
  const [atLow, atHigh] = [missAt(lows), missAt(highs)];
  let open = lows.map((x, k): Bracket => {
    const low = { x, miss: atLow[k] ?? NaN };
    const high = { x: highs[k] ?? NaN, miss: atHigh[k] ?? NaN };
    return { near: low.miss === 0 ? low : high, across: low, before: undefined };
  });
  const found = open.map(({ near, across }) => near.miss * across.miss <= 0);
  for (let k = 0; k < mostTrials && !open.every(isClosed); k++) {
    const trials = open.map((one) => (isClosed(one) ? best(one).x : nextTrial(one)));
    const misses = missAt(trials);
    open = open.map((one, wheel) =>
      isClosed(one) ? one : narrow(one, { x: trials[wheel] ?? NaN, miss: misses[wheel] ?? NaN }),
    );
  }
  return open.map((one, wheel) => (found[wheel] ? best(one).x : NaN));
}

const best = ({ near, across }: Bracket): Trial => (Math.abs(across.miss) < Math.abs(near.miss) ? across : near);

const fineness = (one: Bracket): number => 4 * Number.EPSILON * Math.abs(best(one).x) + Number.MIN_VALUE;

const isClosed = (one: Bracket): boolean =>
  !(Math.abs(one.near.x - one.across.x) > fineness(one)) || best(one).miss === 0;

function nextTrial(one: Bracket): number {
  const { near, across } = one;
  const width = across.x - near.x;
  const least = Math.min(0.5, fineness(one) / (2 * Math.abs(width)));
  return near.x + Math.min(1 - least, Math.max(least, shareOfWidth(one))) * width;
}

function shareOfWidth({ near: a, across: b, before: c }: Bracket): number {
  if (!c) return 0.5;
  const place = (a.x - b.x) / (c.x - b.x);
  const height = (a.miss - b.miss) / (c.miss - b.miss);
  if (!(height ** 2 < place && (1 - height) ** 2 < 1 - place)) return 0.5;
  const ab = (a.miss / (b.miss - a.miss)) * (c.miss / (b.miss - c.miss));
  return ab + ((((c.x - a.x) / (b.x - a.x)) * a.miss) / (c.miss - a.miss)) * (b.miss / (c.miss - b.miss));
}

const narrow = ({ near, across }: Bracket, trial: Trial): Bracket =>
  Math.sign(trial.miss) === Math.sign(near.miss)
    ? { near: trial, across, before: near }
    : { near: trial, across: near, before: across };
