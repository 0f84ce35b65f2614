import type { Value } from './formula/evaluate.ts';
import type { Entry } from './quantity/parse.ts';
import { quantityOf, unitOf, type QuantityName } from './quantity/units.ts';

/** An entry in SI: a number, or one a wheel. */
export function siOf(entry: Entry, quantity: QuantityName): Value {
  const { factor } = unitOf(quantityOf(quantity), entry.unit);
  return typeof entry.value === 'number' ? entry.value * factor : entry.value.map((x) => x * factor);
}
