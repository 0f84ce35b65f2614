import type { Calculator } from '../calculator.ts';

/** What the writing of code needs of a calculator; a whole one is one, and so is a page's `Program`. */
export type Emittable = Pick<Calculator, 'id' | 'edition' | 'given' | 'steps' | 'results' | 'requires'>;
