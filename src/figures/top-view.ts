import { centre, rimArrows, robot } from './robot.ts';
import { arrow, figure, heading, move, text } from './svg.ts';
import { turnArrow } from './turn-arrow.ts';
import { list, number, type FigureValues } from './values.ts';

const size = 244;
const travelLength = 58;
const longest = 62;

/** The robot from above: its travel as one long arrow, the rim speed of each wheel beside it, to one scale. */
export function topView(values: FigureValues): string {
  const angles = list(values, 'alpha_i');
  const rims = list(values, 'u');
  const v = number(values, 'v');
  const scale = longest / Math.max(v, ...rims.map(Math.abs), 1e-9);
  const theta = number(values, 'theta');
  const tip = move(centre, heading(theta), v > 0 ? travelLength : 0);
  const label = move(centre, heading(theta), travelLength + 9);
  return figure(
    size,
    size,
    robot(angles) +
      turnArrow(number(values, 'Omega')) +
      arrow(centre, tip, 'velocity travel') +
      (v > 0 ? text({ x: label.x, y: label.y + 4 }, 'v', { class: 'velocity symbol', 'text-anchor': 'middle' }) : '') +
      rimArrows(
        angles,
        rims.map((u) => u * scale),
        'velocity',
      ),
  );
}
