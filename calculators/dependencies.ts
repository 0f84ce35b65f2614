import type { Step } from './calculator.ts';
import { namesIn } from './formula/tree.ts';

/** The names a step is worked out from, itself not counted. */
export function namesBehind(step: Step): readonly string[] {
  switch (step.kind) {
    case 'formula':
      return namesIn(step.tree);
    case 'root':
      return [...[step.tree, step.from, step.to].flatMap(namesIn), step.target].filter((name) => name !== step.name);
    case 'look-up':
      return namesIn(step.at);
  }
}
