import { centre, rimArrows, robot } from './robot.ts';
import { arrow, at, figure, heading, move, path, text } from './svg.ts';
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
      turning(number(values, 'Omega')) +
      arrow(centre, tip, 'velocity travel') +
      (v > 0 ? text({ x: label.x, y: label.y + 4 }, 'v', { class: 'velocity symbol', 'text-anchor': 'middle' }) : '') +
      rimArrows(
        angles,
        rims.map((u) => u * scale),
        'velocity',
      ),
  );
}

/** A curved arrow for the yaw rate; its sense only, not its size. */
function turning(Omega: number): string {
  if (Omega === 0) return '';
  const radius = 26;
  const sense = Math.sign(Omega);
  const [from, to] = [0.6, 2.4].map((a) => move(centre, heading(sense * a + Math.PI / 2), radius));
  if (!from || !to) return '';
  const back = move(to, heading(sense * 2.4 + Math.PI / 2 + (sense * Math.PI) / 2), -1);
  return (
    path(`M${at(from)}A${radius} ${radius} 0 0 ${sense > 0 ? 0 : 1} ${at(to)}`, { class: 'velocity shaft turn' }) +
    arrow(back, move(back, heading(sense * 2.4 + Math.PI / 2 + (sense * Math.PI) / 2), 9), 'velocity')
  );
}
