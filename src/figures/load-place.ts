import { robot, wheelCentre } from './robot.ts';
import { centre, dot, element, figure, heading, label, move, path, polyline, type Point } from './svg.ts';
import { list, number, type FigureValues } from './values.ts';

const width = 340;
const height = 304;
const wheelsAt = Math.hypot(wheelCentre(0).x, wheelCentre(0).y);
const largest = 42;
const ring = 30;

/**
 * The robot from above: a disc at each wheel whose area is its load, the place where the weight goes through the floor, and
 * the lines and the circle it should stay within.
 */
export function loadPlace(values: FigureValues): string {
  const angles = list(values, 'alpha_i');
  const scale = wheelsAt / number(values, 'R');
  const place: Point = { x: -number(values, 'y_w') * scale, y: -number(values, 'x_w') * scale };
  const lines = polyline(
    angles.map((angle) => wheelCentre(angle)),
    true,
  );
  return figure(
    width,
    height,
    robot(angles) +
      path(lines, { class: 'geometry line' }) +
      element('circle', { class: 'geometry line keep', cx: 0, cy: 0, r: number(values, 's_lift') * scale }) +
      discs(values) +
      path(`M${place.x.toFixed(2)} ${(place.y - 9).toFixed(2)}v18m-9 -9h18`, { class: 'force travel line' }) +
      dot(place, 'force'),
  );
}

/** The robot from above with the loads alone, and a ring about wheel 1, which stands on another height. */
export function loadDiscs(values: FigureValues): string {
  const angles = list(values, 'alpha_i');
  const raised = wheelCentre(angles[0] ?? 0);
  return figure(
    width,
    height,
    robot(angles) +
      element('circle', { class: 'geometry line', cx: raised.x, cy: raised.y, r: ring }) +
      discs(values, ring),
  );
}

/** @param least how far from the middle of a wheel its label stands at least. */
function discs(values: FigureValues, least = 10): string {
  const loads = list(values, 'N_i');
  const most = Math.max(...loads, 1e-12);
  const all = loads.reduce((sum, load) => sum + Math.max(load, 0), 0);
  const widest = Math.min(largest, wheelsAt * Math.sin(Math.PI / loads.length));
  return list(values, 'alpha_i')
    .map((angle, k) => {
      const load = Math.max(loads[k] ?? 0, 0);
      const at = wheelCentre(angle);
      const r = widest * Math.sqrt(load / most);
      const words = `${String(Math.round((100 * load) / all))} %`;
      return (
        element('circle', { class: 'force area', cx: at.x, cy: at.y, r }) +
        label(move(centre, heading(angle), wheelsAt + Math.max(r, least) + 8 + 14 * Math.abs(Math.sin(angle))), words)
      );
    })
    .join('');
}
