import { outer, roseArea, roseFigure, towards } from './rose-frame.ts';
import { arrow, centre, dot, element, label, line } from './svg.ts';
import { list, number, type FigureValues } from './values.ts';

/** A sector narrower than this has no room for a number. */
const narrowest = Math.PI / 15;
const byMotor = 2;

interface Sector {
  readonly wheel: number;
  readonly from: number;
  readonly to: number;
}

/**
 * The highest step by heading, in sectors with the number of the wheel that stops the robot there, dotted where it is a
 * motor that does; the step in hand as a circle.
 */
export function stepRose(values: FigureValues): string {
  const headings = list(values, 'rose_at');
  const sizes = list(values, 'rose');
  const causes = list(values, 'rose_beside');
  const most = number(values, 'h_most');
  const scale = outer / Math.max(...sizes, most, number(values, 'h'), 1e-12);
  const on = (k: number, share = 1) => towards(headings[k] ?? 0, share * (sizes[k] ?? 0) * scale);
  return roseFigure(
    values,
    roseArea(values, scale, 'geometry') +
      causes.map((cause, k) => (cause === byMotor ? dot(on(k), 'geometry') : '')).join('') +
      sectors(values)
        .map((one) => line(centre, on(one.from), 'geometry') + sectorLabel(one, headings.length - 1, on))
        .join('') +
      element('circle', { class: 'force line keep', cx: 0, cy: 0, r: number(values, 'h') * scale }) +
      arrow(centre, towards(number(values, 'theta'), most * scale), 'geometry travel'),
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

type Place = (k: number, share?: number) => ReturnType<typeof towards>;

function sectorLabel({ wheel, from, to }: Sector, count: number, on: Place): string {
  if (((to - from) * 2 * Math.PI) / count < narrowest) return '';
  return label(on(Math.round((from + to - 1) / 2) % count, 0.66), String(wheel));
}
