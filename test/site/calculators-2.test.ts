import { tryCalculators } from './every-calculator.ts';

tryCalculators(2);
