import { key } from './key.ts';
import { arrow, dot, element, figure, label, move, path, type Point } from './svg.ts';
import { alongSpan, beltPath, feetOf, placePulleys, type TwoPulleys } from './two-pulleys.ts';
import { number, type FigureValues } from './values.ts';

const width = 332;
const height = 240;
const room = { width: 304, height: 144, middle: -20 };
const sag = 9;

/** Two pulleys from the side with their belt, to scale, and the pulls on pulley 1 with the load on its shaft, to scale too. */
export function beltPulls(values: FigureValues): string {
  const drive = placePulleys(number(values, 'D1') / 2, number(values, 'D2') / 2, number(values, 'C'), room);
  const [first, second] = drive.shafts;
  const deep = Math.max(...drive.radii);
  return figure(
    width,
    height,
    pulley(first, drive.radii[0], number(values, 'z1')) +
      pulley(second, drive.radii[1], number(values, 'z2')) +
      path(beltPath(drive, number(values, 'F_s') === 0 ? sag : 0), { class: 'rim', 'stroke-width': 1.6 }) +
      dot(second, 'geometry') +
      pulls(drive, values) +
      label({ x: 0, y: room.middle - deep - 12 }, 'tight side') +
      label({ x: 0, y: room.middle + deep + 17 }, 'slack side') +
      key({ x: -138, y: height / 2 - 10 }, 'force', 'pulls of the belt') +
      key({ x: 14, y: height / 2 - 10 }, 'force travel', 'load on shaft 1'),
  );
}

/** A pulley with its teeth, where there is room to see them. */
function pulley(shaft: Point, radius: number, teeth: number): string {
  const circle = (r: number, more: Readonly<Record<string, string | number>>): string =>
    element('circle', { cx: shaft.x, cy: shaft.y, r, ...more });
  const toothed = (2 * Math.PI * radius) / teeth > 2.5 && radius > 6;
  return (
    circle(radius, { class: 'wheel outline' }) +
    (toothed
      ? circle(radius - 3, {
          class: 'rim',
          'stroke-width': 2.4,
          pathLength: 2 * teeth,
          'stroke-dasharray': '1 1',
        })
      : '')
  );
}

/** From where the spans leave pulley 1 and from its shaft, all to one scale. */
function pulls(drive: TwoPulleys, values: FigureValues): string {
  const [shaft] = drive.shafts;
  const load = { x: number(values, 'F_along'), y: -number(values, 'F_across') };
  const scale = (0.9 * drive.apart) / Math.max(number(values, 'F_t'), number(values, 'F_shaft'));
  const pull = (side: number, name: string): string => {
    const [foot] = feetOf(drive, side);
    return arrow(foot, move(foot, alongSpan(drive, side), number(values, name) * scale), 'force');
  };
  return (
    pull(1, 'F_t') + pull(-1, 'F_s') + arrow(shaft, move(shaft, load, scale), 'force travel') + dot(shaft, 'force')
  );
}
