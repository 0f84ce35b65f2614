import { lookAtPages } from './every-page.ts';

lookAtPages(3);
