import type { Program } from '../../calculators/program.ts';
import type { FigureSpec } from '../figures/catalogue.ts';
import type { PlotSpec } from '../plot/spec.ts';

/** What the server leaves in the page for a calculator to wake with. */
export interface PageData {
  readonly program: Program;
  readonly figure?: FigureSpec;
  readonly plot?: PlotSpec;
}
