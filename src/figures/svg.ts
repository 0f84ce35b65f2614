/** A point in a figure: x to the right, y down, in the figure's own units. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** The middle of every figure. */
export const centre: Point = { x: 0, y: 0 };

/** Two decimals are finer than a pixel and keep the text short. */
export const short = (x: number): string => String(Math.round(x * 100) / 100);

export const at = ({ x, y }: Point): string => `${short(x)} ${short(y)}`;

type Attributes = Readonly<Record<string, string | number | undefined>>;

export function element(name: string, attributes: Attributes, inside = ''): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? short(value) : (value ?? '')}"`);
  return `<${name}${written.join('')}>${inside}</${name}>`;
}

export const path = (d: string, attributes: Attributes = {}): string => element('path', { d, ...attributes });

export const polyline = (points: readonly Point[], closed: boolean): string =>
  `M${points.map(at).join('L')}${closed ? 'Z' : ''}`;

export const text = ({ x, y }: Point, words: string, attributes: Attributes = {}): string =>
  element('text', { x, y, ...attributes }, words);

export const line = (from: Point, to: Point, kind: string): string =>
  path(`M${at(from)}L${at(to)}`, { class: `${kind} line` });

export const dot = ({ x, y }: Point, kind: string): string =>
  element('circle', { class: `${kind} dot`, cx: x, cy: y, r: 3.5 });

/** A part of a figure drawn about its own middle, put in its place. */
export const group = (place: Point, inside: string): string =>
  element('g', { transform: `translate(${at(place)})` }, inside);

/** Words about a place. */
export const label = ({ x, y }: Point, words: string): string =>
  text({ x, y: y + 4 }, words, { class: 'label', 'text-anchor': 'middle' });

const headLength = 9;
const headWidth = 3.6;

/** An arrow with a filled head; one shorter than its head is drawn as a dot, so that zero is seen as zero. */
export function arrow(from: Point, to: Point, kind: string): string {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length < 1) return element('circle', { class: `${kind} dot`, cx: from.x, cy: from.y, r: 2.5 });
  const u = direction(from, to);
  const size = Math.min(1, length / headLength);
  const back = move(to, u, -headLength * size);
  const side = { x: -u.y, y: u.x };
  const head = [to, move(back, side, headWidth * size), move(back, side, -headWidth * size)];
  return (
    path(`M${at(from)}L${at(back)}`, { class: `${kind} shaft` }) + path(polyline(head, true), { class: `${kind} head` })
  );
}

/** The head alone, where the shaft is drawn otherwise. */
export const arrowHead = (tip: Point, along: Point, kind: string): string =>
  arrow(move(tip, along, -headLength), tip, kind);

export const direction = (from: Point, to: Point): Point => {
  const length = Math.max(Math.hypot(to.x - from.x, to.y - from.y), 1e-9);
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
};

export const move = (from: Point, direction: Point, by: number): Point => ({
  x: from.x + direction.x * by,
  y: from.y + direction.y * by,
});

/** A direction as seen from above with straight ahead up the page: the angle runs counter-clockwise from up. */
export const heading = (angle: number): Point => ({ x: -Math.sin(angle), y: -Math.cos(angle) });

/** A direction turned counter-clockwise from straight down. */
export const down = (angle: number): Point => ({ x: Math.sin(angle), y: Math.cos(angle) });

/** A whole figure; its caption is its name for those who do not see it. */
export const figure = (width: number, height: number, inside: string): string =>
  `<svg viewBox="${short(-width / 2)} ${short(-height / 2)} ${width} ${height}" width="${width}" height="${height}" aria-hidden="true" focusable="false">${inside}</svg>`;

export const degrees = (angle: number): number => (angle * 180) / Math.PI;
