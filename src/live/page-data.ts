import type { Step } from '../../calculators/calculator.ts';
import type { Line } from '../../calculators/line.ts';
import type { Program } from '../../calculators/program.ts';
import type { WorkedStep } from '../../calculators/work.ts';
import type { FigureSpec } from '../figures/catalogue.ts';
import type { PlotSpec } from '../plot/spec.ts';

/** What the server leaves in the page for a calculator to wake with. */
export interface PageData {
  readonly program: Program;
  readonly figure?: FigureSpec;
  readonly plot?: PlotSpec;
  /** How the lines of the steps shown are printed, by step: worked out once, when the page was built. */
  readonly lines: Readonly<Record<string, LinePlan>>;
}

/** A line without what the program has already. */
export type LinePlan = Omit<Line, 'step' | 'tree'>;

/** @param shown the steps whose lines are shown; all when left out. */
export const plansOf = (steps: readonly WorkedStep[], shown?: readonly string[]): Readonly<Record<string, LinePlan>> =>
  Object.fromEntries(
    steps.flatMap(({ step, line }): [string, LinePlan][] => {
      if (!line || step.brief || (shown && !shown.includes(step.name))) return [];
      const { step: _, tree: __, ...plan } = line;
      return [[step.name, plan]];
    }),
  );

export const lineOf = (step: Step, plan: LinePlan | undefined): Line | undefined =>
  plan && 'tree' in step ? { ...plan, step, tree: step.tree } : undefined;
