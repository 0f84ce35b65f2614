import type { RootStep, Step } from './calculator.ts';
import { namesIn } from './formula/tree.ts';

/** The names a step is worked out from, itself not counted. */
export function namesBehind(step: Step): readonly string[] {
  switch (step.kind) {
    case 'formula':
      return namesIn(step.tree);
    case 'root':
      return namesBehindRoot(step);
    case 'look-up':
      return namesIn(step.at);
  }
}

function namesBehindRoot(step: RootStep): readonly string[] {
  const by = step.by ?? [];
  const own = new Set([step.name, ...by.map(({ name }) => name)]);
  const trees = [...by.map(({ tree }) => tree), step.tree, step.from, step.to];
  return [...new Set([...trees.flatMap(namesIn), step.target])].filter((name) => !own.has(name));
}
