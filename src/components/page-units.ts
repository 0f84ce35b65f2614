import { quantityOf, type Quantity, type QuantityName } from '../../calculators/quantity/units.ts';

const written = new WeakMap<object, Set<QuantityName>>();

/**
 * The quantities that a page needs and that are not written in it yet, as its scripts need them.
 * @param page the request the page is rendered for.
 */
export function unitsFor(page: object, names: readonly QuantityName[]): readonly Omit<Quantity, 'dimension'>[] {
  const before = written.get(page) ?? new Set();
  written.set(page, before);
  const fresh = [...new Set(names)].filter((name) => !before.has(name));
  for (const name of fresh) before.add(name);
  return fresh.map((name) => {
    const { phrase, units } = quantityOf(name);
    return { name, phrase, units };
  });
}
