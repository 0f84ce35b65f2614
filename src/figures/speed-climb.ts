import { at, dot, element, figure, label, line, path, polyline, text, type Point } from './svg.ts';
import { number, type FigureValues } from './values.ts';

const width = 320;
const height = 264;
const left = -138;
const right = 138;
const top = -88;
const floor = 88;
const headroom = 22;
const pieces = 48;

/** Speed over time from rest; the area below the curve is the way. */
export function speedClimb(values: FigureValues): string {
  const [hold, reach, end] = ['v_hold', 'v_reach', 'v_end'].map(
    (name) => number(values, name) / number(values, 'v_end'),
  );
  const heldShare = number(values, 't_hold') / number(values, 't_reach');
  const curve = curveOf({ hold: hold ?? 0, reach: reach ?? 0 }, heldShare);
  const final = floor - (end ?? 1) * (floor - top);
  const last = curve.at(-1) ?? { x: right, y: floor };
  const kink = curve[1] ?? last;
  return figure(
    width,
    height,
    element('rect', {
      class: 'body',
      x: left,
      y: top - headroom,
      width: right - left,
      height: floor - top + headroom,
    }) +
      path(`M${at({ x: left, y: floor })}L${curve.map(at).join('L')}L${at({ x: right, y: floor })}Z`, {
        class: 'velocity area',
      }) +
      line({ x: left, y: final }, { x: right, y: final }, 'velocity free') +
      text({ x: left + 6, y: final - 5 }, 'final speed', { class: 'label' }) +
      path(polyline(curve, false), { class: 'velocity travel line' }) +
      (heldShare > 0 ? limit(kink) : '') +
      dot(last, 'velocity') +
      text({ x: left, y: top - headroom - 8 }, 'speed', { class: 'label' }) +
      label({ x: 0, y: floor + 14 }, 'time'),
  );
}

/** Up to here grip is the limit. */
const limit = (kink: Point): string => line(kink, { x: kink.x, y: floor }, 'force keep') + dot(kink, 'force');

/**
 * Straight while grip is the limit. From then on what is missing to the final speed shrinks by one ratio in equal times; the ratio
 * is that of the ends.
 */
function curveOf({ hold, reach }: { hold: number; reach: number }, heldShare: number): Point[] {
  const place = (time: number, speed: number): Point => ({
    x: left + time * (right - left),
    y: floor - speed * (floor - top),
  });
  const ratio = (1 - reach) / (1 - hold);
  const bent = Array.from({ length: pieces + 1 }, (_, k) => {
    const share = k / pieces;
    return place(heldShare + share * (1 - heldShare), 1 - (1 - hold) * ratio ** share);
  });
  return [place(0, 0), ...bent];
}
