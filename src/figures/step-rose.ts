import { arrow, element, figure, heading, label, line, move, path, polyline, type Point } from './svg.ts';
import { list, number, type FigureValues } from './values.ts';

const size = 286;
const outer = 108;
const centre: Point = { x: 0, y: 0 };
/** A sector narrower than this has no room for a number. */
const narrowest = Math.PI / 15;

interface Sector {
  readonly wheel: number;
  readonly from: number;
  readonly to: number;
}

/**
 * The highest step by heading, straight ahead up the page, in sectors with the number of the wheel that stops the robot
 * there; the step in hand as a circle.
 */
export function stepRose(values: FigureValues): string {
  const headings = list(values, 'rose_at');
  const sizes = list(values, 'rose');
  const most = number(values, 'h_most');
  const scale = outer / Math.max(...sizes, most, number(values, 'h'), 1e-12);
  const reach = (k: number): number => (sizes[k] ?? 0) * scale;
  const curve = headings.map((angle, k) => move(centre, heading(angle), reach(k)));
  const all = sectors(values);
  return figure(
    size,
    size,
    path(`M0 ${-outer - 14}V${outer + 14}M${-outer - 14} 0H${outer + 14}`, { class: 'axis' }) +
      list(values, 'alpha_i').map(tick).join('') +
      path(polyline(curve, true), { class: 'geometry area' }) +
      all.map(({ from }) => line(centre, curve[from] ?? centre, 'geometry')).join('') +
      all.map((one) => sectorLabel(one, headings, reach)).join('') +
      element('circle', { class: 'force line keep', cx: 0, cy: 0, r: number(values, 'h') * scale }) +
      arrow(centre, move(centre, heading(number(values, 'theta')), most * scale), 'geometry travel'),
  );
}

/** Headings in a row with one wheel that stops the robot; the last heading is the first again. */
function sectors(values: FigureValues): readonly Sector[] {
  const lowest = list(values, 'rose_lowest').slice(0, -1);
  const count = lowest.length;
  const starts = lowest.flatMap((wheel, k) => (wheel === lowest[(k + count - 1) % count] ? [] : [k]));
  return starts.map((from, k) => {
    const next = starts[k + 1] ?? (starts[0] ?? 0) + count;
    return { wheel: lowest[from] ?? 0, from, to: next };
  });
}

function sectorLabel({ wheel, from, to }: Sector, headings: readonly number[], reach: (k: number) => number): string {
  const count = headings.length - 1;
  const width = ((to - from) * 2 * Math.PI) / count;
  if (width < narrowest) return '';
  const middle = Math.round((from + to - 1) / 2) % count;
  return label(move(centre, heading(headings[middle] ?? 0), 0.66 * reach(middle)), String(wheel));
}

/** Where a wheel stands, marked outside the curve. */
function tick(angle: number, k: number): string {
  const from = move(centre, heading(angle), outer + 6);
  const to = move(centre, heading(angle), outer + 14);
  return line(from, to, 'geometry') + label(move(centre, heading(angle), outer + 24), String(k + 1));
}
