import { lookAtPages } from './every-page.ts';

lookAtPages(2);
