import type { Calculator, Given, LookUpStep, RootStep, Step } from './calculator.ts';
import { slopeOf } from './formula/derivative.ts';
import type { Value, Values } from './formula/evaluate.ts';
import { symbolText } from './formula/symbols.ts';
import type { Entries } from './inputs.ts';
import { formatNumber, formatUnit, roundTo } from './quantity/format.ts';
import { quantityOf, unitOf, type QuantityName } from './quantity/units.ts';
import { siOf } from './si-of.ts';

/** A given with a ±, and how much of a result's ± comes from it, as a share of the squares. */
export interface Share {
  readonly given: string;
  readonly share: number;
}

export interface Spread {
  /** The ± of the result in SI, one a wheel for a list. */
  readonly spread: Value;
  /** Which givens it comes from, the largest share first; of a list, at the wheel with the largest ±. */
  readonly shares: readonly Share[];
}

/** Moves that cancel leave this share of a value at most, by rounding. */
const dust = 1e-12;

type Uncertain = Pick<Calculator, 'given' | 'steps'>;

/**
 * The ± of every step: the root of the sum of squares of (slope times ±) over all numbers given with a ±, as for
 * independent small errors (JCGM 100:2008, *Guide to the expression of uncertainty in measurement*, 5.1.2, eq. 10).
 * @param values the SI values of givens and steps.
 * @returns nothing for a step that no ± reaches.
 */
export function spreadsOf(calculator: Uncertain, entries: Entries, values: Values): ReadonlyMap<string, Spread> {
  const sources = calculator.given.flatMap((given) => sourcesIn(given, entries, values));
  const moved = sources.map(({ given, seed }) => ({ given, by: stepMoves(calculator, values, seed) }));
  return new Map(
    calculator.steps.flatMap((step): [string, Spread][] => {
      const parts = moved.map(({ given, by }) => ({ given, move: by[step.name] ?? 0 }));
      const spread = combine(parts.map(({ move }) => move));
      const reached = [spread].flat().some((one, k) => one > dust * Math.abs(pick(values[step.name] ?? 0, k)));
      return reached ? [[step.name, { spread, shares: sharesOf(parts, spread) }]] : [];
    }),
  );
}

interface Source {
  readonly given: string;
  /** The ± in SI in the place of the number it belongs to, all else zero. */
  readonly seed: Values;
}

function sourcesIn(given: Given, entries: Entries, values: Values): Source[] {
  const entry = entries[given.name];
  if (entry?.spread === undefined) return [];
  const spreads = siOf({ value: entry.spread, unit: entry.unit }, given.quantity);
  const value = values[given.name];
  if (typeof value !== 'object') return [{ given: given.name, seed: { [given.name]: spreads } }];
  return value.map((_, wheel) => ({
    given: given.name,
    seed: { [given.name]: value.map((__, k) => (k === wheel ? pick(spreads, k) : 0)) },
  }));
}

/** How far each step moves when one number given moves by its ±. */
function stepMoves(calculator: Uncertain, values: Values, seed: Values): Values {
  const moves: Record<string, Value> = { ...seed };
  for (const step of calculator.steps) moves[step.name] = stepMove(step, values, moves);
  return moves;
}

function stepMove(step: Step, values: Values, moves: Values): Value {
  switch (step.kind) {
    case 'formula':
      return slopeOf(step.tree, values, moves);
    case 'root': {
      // The formula stays at its target: what the other names move, the unknown must take back.
      const own = rootMove(step, values, { [step.name]: [values[step.name] ?? NaN].flat().map(() => 1) });
      const others = rootMove(step, values, moves);
      const wanted = pick(moves[step.target] ?? 0, 0);
      const back = [values[step.name] ?? NaN]
        .flat()
        .map((_, wheel) => (wanted - pick(others, wheel)) / pick(own, wheel));
      return step.list ? back : (back[0] ?? NaN);
    }
    case 'look-up': {
      const move = slopeOf(step.at, values, moves);
      const tabled = values[step.name] ?? NaN;
      if (typeof move === 'number') return move * tableSlope(step, Number(tabled));
      return move.map((one, wheel) => one * tableSlope(step, pick(tabled, wheel)));
    }
  }
}

/** How far the formula of a root moves, through what it is worked out by. */
function rootMove({ by = [], tree }: RootStep, values: Values, moves: Values): Value {
  const all: Record<string, Value> = { ...moves };
  for (const step of by) all[step.name] = slopeOf(step.tree, values, all);
  return slopeOf(tree, values, all);
}

/** The slope of the table's stretch that holds a value; none where only rows count. */
function tableSlope({ table }: LookUpStep, value: number): number {
  if (table.between === 'rows only') return 0;
  const above = table.rows.findIndex(([, end], k) => {
    const [, start = NaN] = table.rows[k - 1] ?? [];
    return (end - value) * (start - value) <= 0;
  });
  const [high, highValue] = table.rows[above] ?? [NaN, NaN];
  const [low, lowValue] = table.rows[above - 1] ?? [NaN, NaN];
  return (highValue - lowValue) / (high - low);
}

const pick = (value: Value, wheel: number): number => (typeof value === 'number' ? value : (value[wheel] ?? 0));

function combine(moves: readonly Value[]): Value {
  const list = moves.find((move): move is readonly number[] => typeof move === 'object');
  const root = (wheel: number): number => Math.hypot(...moves.map((move) => pick(move, wheel)));
  return list ? list.map((_, wheel) => root(wheel)) : root(0);
}

function sharesOf(parts: readonly { readonly given: string; readonly move: Value }[], spread: Value): Share[] {
  const all = [spread].flat();
  const top = Math.max(...all);
  const widest = all.indexOf(top);
  const shares = new Map<string, number>();
  for (const { given, move } of parts) {
    shares.set(given, (shares.get(given) ?? 0) + (pick(move, widest) / top) ** 2);
  }
  return [...shares].map(([given, share]) => ({ given, share })).sort((a, b) => b.share - a.share);
}

/** `47.7 ± 0.4 rpm`: the ± to two digits, the value to the same place. */
export function printSpread(value: Value, spread: Value, quantity: QuantityName, unit: string): string {
  const { factor } = unitOf(quantityOf(quantity), unit);
  const one = (x: number, by: number): string => {
    if (!(by > 0)) return formatNumber(x, usualDigits);
    const places = 1 - Math.floor(Math.log10(roundTo(by, 2)));
    if (places < 0 || places > mostPlaces) return `${formatNumber(x, usualDigits)} ± ${formatNumber(by, 2)}`;
    return `${x.toFixed(places)} ± ${by.toFixed(places)}`.replace(/^-/, '−').replace(/^−(0\.?0*) /, '$1 ');
  };
  const numbers = [value].flat().map((x, wheel) => one(x / factor, pick(spread, wheel) / factor));
  return numbers.join(', ') + formatUnit(unit);
}

/** Where a ± comes from, in words: `φ 66 %, v 29 %, r 5 %`; less than one in a hundred is left out. */
export const describeShares = (shares: readonly Share[]): string =>
  shares
    .filter(({ share }) => share >= 0.01)
    .map(({ given, share }) => `${symbolText(given)} ${Math.round(share * 100)} %`)
    .join(', ');

const usualDigits = 4;
const mostPlaces = 8;
