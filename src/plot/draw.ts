import type * as PlotLibrary from '@observablehq/plot';
import type { Sweep } from '../../calculators/sweep.ts';
import type { Axis } from './spec.ts';

interface Mark {
  readonly x: number;
  readonly y: number;
  readonly wheel: number;
}

const dashes = ['none', '7 3', '2 3', '8 3 2 3', '12 4', '1 4', '5 5', '10 2 2 2'];

/** A tick as the lines beside the plot print numbers: no commas, a true minus. */
const plainly = (tick: number): string => String(Number(tick.toPrecision(6))).replace('-', '−');

/**
 * Draws a sweep as a line, or one line a wheel told apart by dash and by its number, with the value in hand marked.
 * @param library Plot, handed in, since the server has it at once and the page only when it is wanted.
 * @param document where Plot makes its elements.
 */
export function drawPlot(
  library: typeof PlotLibrary,
  document: Document,
  { at, values }: Sweep,
  [x, y]: readonly [Axis, Axis],
  here: number,
): Element {
  const marks = values.flatMap((value, k): Mark[] =>
    [value].flat().map((one, wheel) => ({ x: (at[k] ?? NaN) / x.factor, y: one / y.factor, wheel })),
  );
  const wheels = Math.max(0, ...marks.map(({ wheel }) => wheel)) + 1;
  const svg = library.plot({
    document,
    className: 'plot',
    width: 640,
    height: 300,
    marginLeft: 64,
    marginRight: 28,
    marginBottom: 42,
    x: { label: x.label, labelAnchor: 'center', labelArrow: 'none', tickFormat: plainly },
    y: { label: y.label, labelArrow: 'none', nice: true, grid: true, tickFormat: plainly },
    marks: [
      library.ruleY([0], { className: 'zero', stroke: 'var(--rule-strong)' }),
      library.ruleX([here / x.factor], { stroke: 'var(--geometry)', strokeDasharray: '2 3' }),
      ...Array.from({ length: wheels }, (_, wheel) => line(library, marks, wheel, wheels)),
    ],
  });
  svg.querySelector('style')?.remove();
  for (const group of svg.querySelectorAll('g[aria-label]')) group.removeAttribute('aria-label');
  svg.setAttribute('aria-hidden', 'true');
  return svg;
}

function line(library: typeof PlotLibrary, marks: readonly Mark[], wheel: number, wheels: number): PlotLibrary.Markish {
  const own = marks.filter((mark) => mark.wheel === wheel);
  const stroke = { stroke: 'var(--velocity)', strokeWidth: 1.8, strokeDasharray: dashes[wheel] ?? 'none' };
  const drawn = library.line(own, { x: 'x', y: 'y', ...stroke });
  if (wheels === 1) return drawn;
  const last = own[own.length - 1];
  return [
    drawn,
    library.text(last ? [last] : [], { x: 'x', y: 'y', text: () => String(wheel + 1), dx: 10, fill: 'currentColor' }),
  ];
}
