import { element, figure, line, path, short, type Point } from './svg.ts';
import { number, type FigureValues } from './values.ts';

const width = 330;
const height = 150;
const margin = 6;
/** What is drawn of the body above its underside, in wheel radii; the drawing shows nothing of its shape. */
const thick = 0.7;

/** The robot from the side with its front wheel at the step, the steepest ramp and the sharpest crest. */
export function bodyClearance(values: FigureValues): string {
  const place = placing(values);
  return figure(
    width,
    height,
    body(values, place) + wheels(values, place) + ground(values, place) + angles(values, place),
  );
}

/** From metres ahead of the front axle and above the floor to the page. */
type Placing = (ahead: number, above: number) => Point;

const reachOf = (values: FigureValues): number =>
  Math.max(number(values, 'overhang'), number(values, 'r')) * 1.2 + number(values, 'r') * 0.4;

function scaleOf(values: FigureValues): number {
  const r = number(values, 'r');
  const long = number(values, 'base') + r * 1.2 + reachOf(values);
  const high = Math.max(2 * r, number(values, 'under') + thick * r);
  return Math.min((width - 2 * margin) / long, (height - 4 * margin) / high);
}

function placing(values: FigureValues): Placing {
  const scale = scaleOf(values);
  const front = width / 2 - margin - reachOf(values) * scale;
  return (ahead, above) => ({ x: front + ahead * scale, y: height / 2 - 2 * margin - above * scale });
}

function body(values: FigureValues, place: Placing): string {
  const { x, y } = place(-number(values, 'base'), number(values, 'under') + thick * number(values, 'r'));
  const corner = place(number(values, 'overhang'), number(values, 'under'));
  return element('rect', { class: 'body', x, y, width: corner.x - x, height: corner.y - y });
}

function wheels(values: FigureValues, place: Placing): string {
  const r = number(values, 'r');
  return [0, -number(values, 'base')]
    .map((ahead) => {
      const { x, y } = place(ahead, r);
      return (
        element('circle', { class: 'wheel outline', cx: x, cy: y, r: r * scaleOf(values) }) +
        element('circle', { class: 'axle', cx: x, cy: y, r: 2.5 })
      );
    })
    .join('');
}

function ground(values: FigureValues, place: Placing): string {
  const floor = place(number(values, 'reach_edge'), 0);
  const top = place(0, number(values, 'h')).y;
  const d = `M${-width / 2} ${short(floor.y)}H${short(floor.x)}V${short(top)}H${width / 2}`;
  return path(d, { class: 'rim', 'stroke-width': 2 });
}

/** Lines that touch the wheels and meet the body: under the front corner, and under the middle from either side. */
function angles(values: FigureValues, place: Placing): string {
  const r = number(values, 'r');
  const base = number(values, 'base');
  const under = number(values, 'under');
  const touching = (axle: number, angle: number): Point => place(axle + r * Math.sin(angle), r * (1 - Math.cos(angle)));
  const half = number(values, 'breakover') / 2;
  const middle = place(-base / 2, under);
  return (
    line(
      touching(0, number(values, 'approach')),
      place(number(values, 'overhang'), under),
      number(values, 'D_front') > r ? 'force' : 'axis',
    ) +
    line(touching(0, -half), middle, 'geometry') +
    line(touching(-base, half), middle, 'geometry')
  );
}
