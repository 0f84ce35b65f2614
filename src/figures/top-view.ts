import { rimArrows, robot } from './robot.ts';
import { arrow, centre, figure, heading, move, text } from './svg.ts';
import { turnArrow } from './turn-arrow.ts';
import { list, number, type FigureValues } from './values.ts';

const size = 244;
/** The longest arrow ends short of the wheels' numbers. */
const longest = 50;

/** The robot from above: its travel as an arrow from its centre, the rim speed of each wheel beside it, to one scale. */
export function topView(values: FigureValues): string {
  const angles = list(values, 'alpha_i');
  const rims = list(values, 'u');
  const v = number(values, 'v');
  const scale = longest / Math.max(v, ...rims.map(Math.abs), 1e-9);
  const theta = number(values, 'theta');
  const travel = v * scale;
  const tip = move(centre, heading(theta), travel);
  // Beside the shaft: past its tip stands a wheel's number whenever the travel points at a wheel.
  const label = move(move(centre, heading(theta), Math.max(0.75 * travel, 24)), heading(theta - Math.PI / 2), 12);
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
