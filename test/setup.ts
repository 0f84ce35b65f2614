import fc from 'fast-check';
import { seedFrom } from './setup/seed.ts';

// fast-check prints the seed with each failure: SEED=<seed> npm run test:unit repeats it.
fc.configureGlobal({ seed: seedFrom(process.env), numRuns: 200 });
