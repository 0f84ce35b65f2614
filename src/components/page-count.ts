const counts = new WeakMap<object, number>();

/**
 * Numbers the calculators of a page from 1, so that their ids differ.
 * @param page the request the page is rendered for.
 */
export function countOn(page: object): number {
  const count = (counts.get(page) ?? 0) + 1;
  counts.set(page, count);
  return count;
}
