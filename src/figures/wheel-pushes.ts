import { key } from './key.ts';
import { rimArrows, robot } from './robot.ts';
import { arrow, centre, figure, group, heading, move } from './svg.ts';
import { turnArrow } from './turn-arrow.ts';
import { list, number, type FigureValues } from './values.ts';

const width = 300;
const height = 282;
const middle = { x: 0, y: -18 };
const longest = 54;

/** The robot from above: the push of each wheel beside it and the push of the whole from the middle, to one scale. */
export const wheelPushes = (values: FigureValues): string =>
  draw(values, {
    force: number(values, 'F_all'),
    towards: number(values, 'theta'),
    turning: number(values, 'acc_Omega'),
    words: 'push of the whole',
  });

/** The same of a robot that stands on a slope: from the middle the pull of the slope, downhill. */
export const wheelHolds = (values: FigureValues): string =>
  draw(values, {
    force: number(values, 'F_up'),
    towards: number(values, 'up') + Math.PI,
    turning: 0,
    words: 'pull of the slope',
  });

interface Whole {
  readonly force: number;
  readonly towards: number;
  readonly turning: number;
  readonly words: string;
}

function draw(values: FigureValues, { force, towards, turning, words }: Whole): string {
  const angles = list(values, 'alpha_i');
  const pushes = list(values, 'f_i');
  const scale = longest / Math.max(force, ...pushes.map(Math.abs), 1e-12);
  const lengths = pushes.map((push) => push * scale);
  const tip = move(centre, heading(towards), force * scale);
  const foot = height / 2 - 10;
  return figure(
    width,
    height,
    group(
      middle,
      robot(angles) +
        turnArrow(turning, 'force') +
        arrow(centre, tip, 'force travel') +
        rimArrows(angles, lengths, 'force'),
    ) +
      key({ x: -146, y: foot }, 'force', 'push of each wheel') +
      key({ x: 12, y: foot }, 'force travel', words),
  );
}
