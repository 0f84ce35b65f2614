import { quantities, type Quantity, type QuantityName, type Unit } from './unit-table.ts';

export { quantities };
export type { Quantity, QuantityName, Unit };

const byName = new Map<string, Quantity>(quantities.map((quantity) => [quantity.name, quantity]));

/** @throws Error for a name that is none of the table's. */
export function quantityOf(name: QuantityName): Quantity {
  const quantity = byName.get(name);
  if (!quantity) throw new Error(`unknown quantity: ${name}`);
  return quantity;
}

/** Spaces, dots and carets are matters of taste: `N·m`, `N*m`, `Nm` and `N m` are one unit. */
const plain = (text: string): string =>
  text
    .replace(/[\s·.*^]/g, '')
    .replace(/[²³]/g, (digit) => (digit === '²' ? '2' : '3'))
    .replace(/−/g, '-');

/** A first m or M that tells milli from mega: `MW` is never taken for `mW`. */
const prefixTells = /^m(?=W|V|A|N|Pa|ohm|Ω)/i;

/** The unit a reader typed, by any spelling, case ignored where that leaves one unit; `undefined` when there is none. */
export function findUnit(quantity: Quantity, typed: string): Unit | undefined {
  const spellings = (one: Unit): string[] => [one.symbol, ...(one.also ?? [])].map(plain);
  const wanted = plain(typed);
  const exact = quantity.units.find((one) => spellings(one).includes(wanted));
  if (exact) return exact;
  const alike = (spelling: string): boolean =>
    spelling.toLowerCase() === wanted.toLowerCase() && (!prefixTells.test(spelling) || spelling[0] === wanted[0]);
  const loose = quantity.units.filter((one) => spellings(one).some(alike));
  return loose.length === 1 ? loose[0] : undefined;
}

/** @throws Error for a symbol the quantity lacks: an author's mistake. */
export function unitOf(quantity: Quantity, symbol: string): Unit {
  const found = quantity.units.find((one) => one.symbol === symbol);
  if (!found) throw new Error(`unknown unit: ${symbol} (${quantity.name})`);
  return found;
}
