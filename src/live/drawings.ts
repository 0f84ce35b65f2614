import type { Values } from '../../calculators/formula/evaluate.ts';
import type { Program } from '../../calculators/program.ts';
import type { FigureName, FigureSpec } from '../figures/catalogue.ts';

export type Draw = (values: Values) => string;

/** Fetches the one figure a page needs and, for a rose, what sweeps its values. */
export async function drawingOf(program: Program, figure: FigureSpec): Promise<Draw> {
  const script = await scripts[figure.name]();
  const draw = script[functionName(figure.name)];
  if (!draw) throw new Error(`no drawing: ${figure.name}`);
  if (!figure.rose) return draw;
  const { figureValues } = await import('./figure-values.ts');
  return (values) => draw(figureValues(program, figure, values));
}

/** `top-view` is drawn by `topView`. */
const functionName = (figure: FigureName): string =>
  figure.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());

const scripts: Readonly<Record<FigureName, () => Promise<Readonly<Record<string, Draw>>>>> = {
  'wheel-angle': () => import('../figures/wheel-angle.ts'),
  'top-view': () => import('../figures/top-view.ts'),
  'speed-rose': () => import('../figures/speed-rose.ts'),
  'stick-pads': () => import('../figures/stick-pads.ts'),
  'count-ruler': () => import('../figures/count-ruler.ts'),
  'reckoned-paths': () => import('../figures/reckoned-paths.ts'),
  'bent-path': () => import('../figures/bent-path.ts'),
  'roller-slants': () => import('../figures/roller-slants.ts'),
  'rim-gaps': () => import('../figures/rim-gaps.ts'),
  'pole-zones': () => import('../figures/pole-zones.ts'),
  'motor-curves': () => import('../figures/motor-curves.ts'),
  'motor-wanted': () => import('../figures/motor-curves.ts'),
  thermometer: () => import('../figures/thermometer.ts'),
  'tooth-pairs': () => import('../figures/tooth-pairs.ts'),
  'wheel-pushes': () => import('../figures/wheel-pushes.ts'),
  'speed-climb': () => import('../figures/speed-climb.ts'),
  'stop-bars': () => import('../figures/stop-bars.ts'),
  'wheel-holds': () => import('../figures/wheel-pushes.ts'),
  'belt-drive': () => import('../figures/belt-drive.ts'),
  'belt-pulls': () => import('../figures/belt-pulls.ts'),
  'belt-span': () => import('../figures/belt-span.ts'),
  'rope-round-post': () => import('../figures/rope-round-post.ts'),
  'axle-loads': () => import('../figures/axle-loads.ts'),
  'hub-section': () => import('../figures/hub-section.ts'),
  'tilted-board': () => import('../figures/tilted-board.ts'),
  'load-place': () => import('../figures/load-place.ts'),
  'load-discs': () => import('../figures/load-place.ts'),
  'grip-rose': () => import('../figures/grip-rose.ts'),
  'loss-rose': () => import('../figures/grip-rose.ts'),
  'contact-ellipse': () => import('../figures/contact-ellipse.ts'),
  'wheel-at-edge': () => import('../figures/wheel-at-edge.ts'),
  'step-rose': () => import('../figures/step-rose.ts'),
  'body-clearance': () => import('../figures/body-clearance.ts'),
};
