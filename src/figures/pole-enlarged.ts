import { arcOf, roller, rollerShape, shellShape } from './ball.ts';
import { frameOf, roundFactor, times } from './enlarge.ts';
import { element, label, line, text, type Point } from './svg.ts';
import { number, type FigureValues } from './values.ts';

export const box = { half: 112, above: 70, below: 20 };

/** The pole on the floor close by, with the clearance of the shell's edge and the carpet's pile; drawn about its foot. */
export function poleEnlarged(values: FigureValues, scale: number): string {
  const beta = number(values, 'beta');
  const factor = roundFactor(Math.min(50 / (number(values, 'w') * scale), 40 / (number(values, 'clear') * scale)));
  const size = (name: string): number => number(values, name) * scale * factor;
  const radius = size('r');
  const middle = { x: 0, y: -size('r') - size('proud') };
  const shell = arcOf(middle, radius, beta, lastInside(radius, -middle.y));
  const edge = shell[0] ?? middle;
  return (
    frameOf(box) +
    pile(Math.min(size('pile'), box.above)) +
    line({ x: -box.half, y: 0 }, { x: box.half, y: 0 }, 'axis') +
    rollerShape(roller(size('crown'), size('w') * 0.9, 0).map(inFrame)) +
    shellShape(shell, 4) +
    shellShape(
      shell.map(({ x, y }) => ({ x: -x, y })),
      4,
    ) +
    line({ x: edge.x, y: 0 }, edge, 'geometry') +
    label({ x: edge.x, y: 10 }, 'clear') +
    label({ x: 0, y: box.below + 14 }, times(factor))
  );
}

/** The angle at which the shell leaves the frame, by its side or its top. */
const lastInside = (radius: number, high: number): number =>
  Math.min(
    Math.asin(Math.min(1, box.half / radius)),
    Math.acos(Math.min(1, Math.max(-1, (high - box.above) / radius))),
  );

const inFrame = ({ x, y }: Point): Point => ({ x, y: Math.max(y, -box.above) });

/** The pile of a carpet, as far as the frame shows it. */
function pile(high: number): string {
  if (high === 0) return '';
  return (
    element('rect', { class: 'pile', x: -box.half, y: -high, width: 2 * box.half, height: high }) +
    line({ x: box.half + 5, y: 0 }, { x: box.half + 5, y: -high }, 'geometry') +
    text({ x: box.half + 10, y: 4 - high / 2 }, 'pile', { class: 'label' })
  );
}
