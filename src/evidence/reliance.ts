import type { Calculator } from '../../calculators/calculator.ts';
import { namesBehind } from '../../calculators/dependencies.ts';
import { namesIn, type Tree } from '../../calculators/formula/tree.ts';

/** The givens a formula depends on, through the steps it names. */
export function givensBehind(calculator: Calculator, tree: Tree): readonly string[] {
  const wanted = new Set(namesIn(tree));
  for (const step of [...calculator.steps].reverse()) {
    if (wanted.has(step.name)) for (const name of namesBehind(step)) wanted.add(name);
  }
  return calculator.given.map((given) => given.name).filter((name) => wanted.has(name));
}
