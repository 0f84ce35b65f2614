import { namedBar } from './named-bar.ts';
import { at, figure, label, line, path } from './svg.ts';
import { number, type FigureValues } from './values.ts';

const width = 320;
const height = 264;
const half = 118;
const rows = { low: -96, octave: -30, first: 34, step: 30 };
const barLeft = -44;
const barLongest = 190;

/** A span as it swings in its lowest note and in the octave, and the pulls that go with them, to scale. */
export function beltSpan(values: FigureValues): string {
  const pulls = [
    { words: 'as heard', name: 'F_0', kind: 'force travel' },
    { words: 'if the octave', name: 'F_octave', kind: 'force' },
    { words: 'wanted', name: 'F_want', kind: 'geometry' },
  ].map((one) => ({ ...one, pull: number(values, one.name) }));
  const scale = barLongest / Math.max(...pulls.map(({ pull }) => pull));
  return figure(
    width,
    height,
    swing(rows.low, 1, 17) +
      label({ x: 0, y: rows.low - 30 }, 'the lowest note') +
      swing(rows.octave, 2, 11) +
      label({ x: 0, y: rows.octave - 24 }, 'the octave') +
      pulls
        .map(({ words, kind, pull }, k) =>
          namedBar({ x: barLeft, y: rows.first + k * rows.step }, words, kind, pull * scale),
        )
        .join('') +
      label({ x: 0, y: height / 2 - 12 }, 'pull of the span'),
  );
}

/** A span between two ends that stand still, at both ends of its swing. */
function swing(y: number, bellies: number, wide: number): string {
  const ends = [-half, half].map((x) => line({ x, y: y - 14 }, { x, y: y + 14 }, 'axis'));
  return (
    ends.join('') +
    line({ x: -half, y }, { x: half, y }, 'axis') +
    path(waves(y, bellies, wide), { class: 'velocity line' }) +
    path(waves(y, bellies, -wide), { class: 'velocity line free' })
  );
}

function waves(y: number, bellies: number, wide: number): string {
  const length = (2 * half) / bellies;
  const belly = (k: number): string => {
    const from = -half + k * length;
    const bend = y - (k % 2 === 0 ? 1 : -1) * wide * 2;
    return `Q${at({ x: from + length / 2, y: bend })} ${at({ x: from + length, y })}`;
  };
  return `M${at({ x: -half, y })}${Array.from({ length: bellies }, (_, k) => belly(k)).join('')}`;
}
