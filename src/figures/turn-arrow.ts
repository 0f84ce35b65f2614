import { arrowHead, at, centre, heading, move, path } from './svg.ts';

const radius = 26;

/** A curved arrow about the centre for turning; its sense only, not its size. */
export function turnArrow(turning: number, kind = 'velocity'): string {
  if (turning === 0) return '';
  const sense = Math.sign(turning);
  const [start, end] = sense > 0 ? [0.6, 2.4] : [2.4, 0.6];
  const [from, to] = [start, end].map((angle) => move(centre, heading(angle + Math.PI / 2), radius));
  if (!from || !to) return '';
  const along = heading(end + Math.PI / 2 + (sense * Math.PI) / 2);
  return (
    path(`M${at(from)}A${radius} ${radius} 0 0 ${sense > 0 ? 0 : 1} ${at(to)}`, { class: `${kind} shaft turn` }) +
    arrowHead(move(to, along, 8), along, kind)
  );
}
