import { arrow, at, centre, element, figure, heading, move, path, text, type Point } from './svg.ts';
import { number, type FigureValues } from './values.ts';

const size = 244;
const longest = 100;
/** A part shorter than this has no room for its name beside it. */
const roomForName = 40;

/** One wheel from above, driving up the page, and the travel split into its rolling and its free part. */
export function wheelAngle(values: FigureValues): string {
  const phi = number(values, 'phi');
  const ratio = number(values, 'k_roll');
  const along = move(centre, heading(0), longest * ratio);
  const tip = move(centre, heading(phi), longest);
  const name = (p: Point, words: string, kind: string, dx: number, dy: number): string =>
    text({ x: p.x + dx, y: p.y + dy }, words, { class: `${kind} symbol`, 'text-anchor': 'middle' });
  const side = tip.x > centre.x ? 1 : -1;
  const freeAt = Math.abs(tip.x) < roomForName ? -side * 24 : tip.x / 2;
  return figure(
    size,
    size,
    wheel() +
      path(`M${at(along)}L${at(tip)}`, { class: 'velocity shaft free' }) +
      arc(phi) +
      arrow(centre, along, 'velocity') +
      arrow(centre, tip, 'velocity travel') +
      name(tip, 'v', 'velocity', side * 12, tip.y < 0 ? -2 : 12) +
      name({ x: freeAt, y: along.y }, 'free', 'velocity', 0, ratio < 0 ? 16 : -7) +
      (Math.abs(along.y) < roomForName / 2 ? '' : name({ x: 0, y: along.y / 2 }, 'rolling', 'velocity', -side * 48, 4)),
  );
}

/** The wheel with its rollers round the rim, axle across the page. */
function wheel(): string {
  const rollers = [-3, -2, -1, 0, 1, 2, 3].map((k) =>
    element('rect', { class: 'roller', x: -17, y: centre.y + k * 15 - 6, width: 34, height: 12, rx: 6 }),
  );
  return (
    path(`M${at({ x: -60, y: centre.y })}H60`, { class: 'axle' }) +
    element('rect', { class: 'wheel outline', x: -20, y: centre.y - 56, width: 40, height: 112, rx: 18 }) +
    rollers.join('')
  );
}

function arc(phi: number): string {
  const radius = 32;
  const turn = Math.atan2(Math.sin(phi), Math.cos(phi));
  if (Math.abs(turn) < 0.02) return '';
  const from = move(centre, heading(0), radius);
  const to = move(centre, heading(turn), radius);
  const narrow = Math.abs(turn) < 0.7;
  const label = move(centre, heading(narrow ? turn + Math.sign(turn) * 0.32 : turn / 2), radius + 13);
  return (
    path(`M${at(from)}A${radius} ${radius} 0 0 ${turn > 0 ? 0 : 1} ${at(to)}`, { class: 'geometry line' }) +
    text({ x: label.x, y: label.y + 4 }, 'φ', { class: 'geometry symbol', 'text-anchor': 'middle' })
  );
}
