import { arcOf, roller, rollerShape, shellShape } from './ball.ts';
import { leaders } from './enlarge.ts';
import { key } from './key.ts';
import { box, poleEnlarged } from './pole-enlarged.ts';
import { centre, down, element, figure, group, label, line, move, path, polyline, text } from './svg.ts';
import { number, type FigureValues } from './values.ts';

const width = 330;
const height = 318;
const reach = 62;
const floor = -22;
const inset = 112;

/** A ball in its drive plane standing on a pole roller, the shares of the axle angles, and the pole enlarged. */
export function poleZones(values: FigureValues): string {
  const scale = reach / (number(values, 'r') + number(values, 'proud'));
  return figure(
    width,
    height,
    group({ x: -84, y: floor - reach }, ball(values, scale)) +
      group({ x: 84, y: floor - reach }, shares(number(values, 'beta'), number(values, 'chi'))) +
      key({ x: 30, y: floor + 18 }, 'geometry band', 'zone') +
      key({ x: 92, y: floor + 18 }, 'force band', 'carried') +
      leaders({ x: -84, y: floor + 3 }, number(values, 'w') * scale + 3, { x: 0, y: inset - box.above }, box.half) +
      group({ x: 0, y: inset }, poleEnlarged(values, scale)),
  );
}

function ball(values: FigureValues, scale: number): string {
  const beta = number(values, 'beta');
  const radius = number(values, 'r') * scale;
  const pole = roller(number(values, 'crown') * scale, number(values, 'w') * scale * 0.9, reach);
  const name = move(centre, down(beta), radius * 0.55);
  return (
    line({ x: -76, y: reach }, { x: 76, y: reach }, 'axis') +
    rollerShape(pole) +
    rollerShape(pole.map(({ x, y }) => ({ x, y: -y }))) +
    shellShape(arcOf(centre, radius, beta, Math.PI - beta), 3) +
    shellShape(arcOf(centre, radius, -beta, beta - Math.PI), 3) +
    [beta, -beta].map((edge) => line(centre, move(centre, down(edge), radius), 'geometry')).join('') +
    line(centre, { x: 0, y: reach }, 'geometry keep') +
    text({ x: name.x + 6, y: name.y + 4 }, 'β', { class: 'geometry symbol' })
  );
}

/** All angles of the axle as a ring: those that bring a pole down, and those at which its roller carries. */
function shares(beta: number, chi: number): string {
  const band = (half: number, radius: number, kind: string): string =>
    [0, Math.PI]
      .map((pole) => polyline(arcOf(centre, radius, pole - half, pole + half), false))
      .map((d) => path(d, { class: `${kind} band line` }))
      .join('');
  return (
    element('circle', { class: 'axis', cx: 0, cy: 0, r: 60 }) +
    band(beta, 54, 'geometry') +
    band(chi, 43, 'force') +
    label({ x: 0, y: -7 }, 'all angles') +
    label({ x: 0, y: 7 }, 'of the axle')
  );
}
