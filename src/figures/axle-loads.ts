import { key } from './key.ts';
import { arrow, at, down, element, figure, label, line, move, path, polyline, text, type Point } from './svg.ts';
import { number, type FigureValues } from './values.ts';

const width = 332;
const height = 332;
const left = -132;
const long = 264;
const axleAt = -96;
const gap = 9;
const longest = 42;
const momentAt = -14;
const deep = 48;
const end: Point = { x: -84, y: 110 };
const pieces = 24;

/** Places along the axle as drawn: inner bearing, outer bearing, load 1, load 2. */
interface Places {
  readonly inner: number;
  readonly outer: number;
  readonly one: number;
  readonly two: number;
}

/** How long a force is drawn. */
type Size = (name: string) => number;

/** An overhanging axle cut free, from the side; its bending moment under it; and the four forces seen along the axle. */
export function axleLoads(values: FigureValues): string {
  const places = placesOf(values);
  const largest = Math.max(...['F1', 'F2', 'R_in', 'R_out'].map((name) => number(values, name)));
  const size = (name: string): number => (number(values, name) / largest) * longest;
  return figure(
    width,
    height,
    side(places, size) +
      text({ x: left - 20, y: momentAt - 8 }, 'bending moment', { class: 'label' }) +
      moments(values, places) +
      label({ x: end.x, y: 54 }, 'seen along the axle') +
      alongAxle(values, size) +
      key({ x: 14, y: 84 }, 'force', 'loads 1 and 2') +
      key({ x: 14, y: 104 }, 'force travel', 'from the bearings') +
      key({ x: 14, y: 124 }, 'geometry', 'moment of both') +
      key({ x: 14, y: 144 }, 'geometry keep', 'moment of each'),
  );
}

function placesOf(values: FigureValues): Places {
  const [span, a1, a2] = ['L_b', 'a1', 'a2'].map((name) => number(values, name)) as [number, number, number];
  const place = (z: number): number => left + (z / (span + a2)) * long;
  return { inner: left, outer: place(span), one: place(span + a1), two: place(span + a2) };
}

/** Each force turned into the page: loads push down, the outer bearing up, the inner one holds down. */
function side({ inner, outer, one, two }: Places, size: Size): string {
  const down = (x: number, name: string, kind: string, clear: number): string =>
    arrow({ x, y: axleAt - clear - size(name) }, { x, y: axleAt - clear }, kind);
  const up = arrow({ x: outer, y: axleAt + gap + size('R_out') }, { x: outer, y: axleAt + gap }, 'force travel');
  const name = (x: number, word: string, load: string): string =>
    label({ x, y: axleAt - 4 - Math.max(size(load), 8) }, word);
  return (
    path(`M${at({ x: inner - 10, y: axleAt })}H${(two + 10).toFixed(2)}`, { class: 'axle' }) +
    bearing(inner) +
    bearing(outer) +
    down(inner, 'R_in', 'force travel', gap) +
    up +
    down(one, 'F1', 'force', 3) +
    down(two, 'F2', 'force', 3) +
    name(one - 9, '1', 'F1') +
    name(two + 9, '2', 'F2')
  );
}

const bearing = (x: number): string =>
  [-8, 3]
    .map((y) => element('rect', { class: 'wheel outline', x: x - 5, y: axleAt + y, width: 10, height: 5 }))
    .join('');

/** Straight for each load; what both make together is their arrows’ sum, so it may be bent between bearing and load 1. */
function moments(values: FigureValues, { inner, outer, one, two }: Places): string {
  const psi = number(values, 'psi');
  const deepest = Math.max(...['M1', 'M2', 'M_max'].map((name) => number(values, name)));
  const depth = (name: string): number => (number(values, name) / deepest) * deep;
  const [m1, m2, kept] = [depth('M1'), depth('M2'), depth('M_left')];
  const place = (x: number, moment: number): Point => ({ x, y: momentAt + moment });
  const both = Array.from({ length: pieces + 1 }, (_, k): Point => {
    const share = k / pieces;
    const [own, other] = [m1 * (1 - share), m2 + (kept - m2) * share];
    return place(outer + (one - outer) * share, Math.hypot(own + other * Math.cos(psi), other * Math.sin(psi)));
  });
  const each = (moment: number, last: number): string =>
    path(polyline([place(inner, 0), place(outer, moment), place(last, 0)], false), { class: 'geometry line keep' });
  return (
    path(polyline([place(inner, 0), ...both, place(two, 0)], true), { class: 'geometry area' }) +
    each(m1, one) +
    each(m2, two) +
    line(place(inner, 0), place(two, 0), 'axis')
  );
}

/** Angles count from load 1, which points down, counter-clockwise. */
function alongAxle(values: FigureValues, size: Size): string {
  const psi = number(values, 'psi');
  const sum = (one: string, two: string): number =>
    Math.atan2(number(values, two) * Math.sin(psi), number(values, one) + number(values, two) * Math.cos(psi));
  const force = (name: string, angle: number, kind: string): string =>
    arrow(end, move(end, down(angle), size(name)), kind);
  const name = (word: string, load: string, angle: number, aside: number): string => {
    const tip = move(end, down(angle), size(load) + 8);
    return label(move(tip, down(angle + Math.PI / 2), aside), word);
  };
  return (
    force('R_in', sum('M1', 'M2'), 'force travel') +
    force('R_out', sum('P1', 'P2') + Math.PI, 'force travel') +
    force('F1', 0, 'force') +
    force('F2', psi, 'force') +
    name('1', 'F1', 0, -6) +
    name('2', 'F2', psi, 6)
  );
}
