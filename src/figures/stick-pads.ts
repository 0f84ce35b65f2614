import { besideWheel, driveDirection, rimArrows, robot } from './robot.ts';
import { key } from './key.ts';
import { arrow, centre, dot, element, figure, group, heading, label, line, move, type Point } from './svg.ts';
import { turnArrow } from './turn-arrow.ts';
import { list, number, type FigureValues } from './values.ts';

const width = 290;
const height = 412;
const pad = 46;
const full = 36;
const travelFull = 50;

/** The two sticks, and below them the robot from above with the command of each wheel against its full scale. */
export function stickPads(values: FigureValues): string {
  const top = -height / 2 + 8 + pad;
  return figure(
    width,
    height,
    group({ x: -74, y: top }, travelPad(values)) +
      group({ x: 74, y: top }, turningPad(values)) +
      group({ x: 0, y: 44 }, commands(values)) +
      key({ x: -130, y: height / 2 - 8 }, 'velocity', 'given') +
      key({ x: -52, y: height / 2 - 8 }, 'velocity free', 'asked for') +
      key({ x: 46, y: height / 2 - 8 }, 'axis', 'full scale'),
  );
}

/** A point of the stick's plane: forward up, to the left left. */
const pushed = (x: number, y: number, scale: number): Point => ({ x: -y * scale, y: -x * scale });

function travelPad(values: FigureValues): string {
  const at = pushed(number(values, 'stick_x'), number(values, 'stick_y'), pad);
  const asked = pushed(number(values, 'want_x'), number(values, 'want_y'), pad);
  return (
    element('rect', { class: 'body', x: -pad, y: -pad, width: 2 * pad, height: 2 * pad }) +
    element('circle', { class: 'axis', cx: 0, cy: 0, r: pad }) +
    element('circle', { class: 'geometry area', cx: 0, cy: 0, r: number(values, 'dead') * pad }) +
    arrow(centre, asked, 'velocity free') +
    knob(at) +
    label({ x: 0, y: pad + 14 }, 'travel')
  );
}

function turningPad(values: FigureValues): string {
  const dead = number(values, 'dead') * pad;
  const lane = 18;
  return (
    element('rect', { class: 'body', x: -pad, y: -lane, width: 2 * pad, height: 2 * lane }) +
    element('rect', { class: 'geometry area', x: -dead, y: -lane, width: 2 * dead, height: 2 * lane }) +
    arrow(centre, pushed(0, number(values, 'want_turn'), pad), 'velocity free') +
    knob(pushed(0, number(values, 'stick_turn'), pad)) +
    label({ x: 0, y: -lane - 10 }, 'dead band') +
    label({ x: 0, y: pad + 14 }, 'turning')
  );
}

const knob = (at: Point): string =>
  element('circle', { class: 'geometry line', cx: at.x, cy: at.y, r: 6 }) + dot(at, 'geometry');

/** What each wheel gets, and outside it what was asked for where that is more. */
function commands(values: FigureValues): string {
  const angles = list(values, 'alpha_i');
  const scaled = (name: string): number[] => list(values, name).map((share) => share * full);
  const limited = number(values, 'k_limit') < 1;
  const travel = (name: string): Point => pushed(number(values, `${name}_x`), number(values, `${name}_y`), travelFull);
  return (
    robot(angles) +
    turnArrow(number(values, 'give_turn')) +
    (limited ? arrow(centre, travel('want'), 'velocity free') : '') +
    arrow(centre, travel('give'), 'velocity travel') +
    angles.map(fullScale).join('') +
    rimArrows(angles, scaled('command'), 'velocity') +
    (limited ? rimArrows(angles, scaled('mix'), 'velocity free', 1, 15) : '')
  );
}

/** A thin line as long as full command either way, with its ends marked. */
function fullScale(angle: number): string {
  const middle = besideWheel(angle);
  const ends = [-full, full].map((by) => move(middle, driveDirection(angle), by));
  const tick = (end: Point): string => line(move(end, heading(angle), -4), move(end, heading(angle), 4), 'axis');
  const [from = middle, to = middle] = ends;
  return line(from, to, 'axis') + ends.map(tick).join('');
}
