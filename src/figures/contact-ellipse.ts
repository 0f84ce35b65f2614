import { formatNumber } from '../../calculators/quantity/format.ts';
import { roundFactor } from './enlarge.ts';
import { figure, label, line, path, short, type Point } from './svg.ts';
import { number, type FigureValues } from './values.ts';

const width = 332;
const height = 210;
const patchAt: Point = { x: -84, y: -16 };
const profileAt: Point = { x: 84, y: 40 };
const longest = 120;
const high = 90;

/** The patch from above with a bar of a round length to its scale, and beside it the pressure over its width. */
export function contactEllipse(values: FigureValues): string {
  const thin = longest / Math.max(number(values, 'd_long') / number(values, 'd_short'), 1);
  const [left, right] = [profileAt.x - thin / 2, profileAt.x + thin / 2];
  return figure(
    width,
    height,
    ellipse(patchAt, thin / 2, longest / 2) +
      line({ x: patchAt.x - thin / 2, y: patchAt.y }, { x: patchAt.x + thin / 2, y: patchAt.y }, 'geometry keep') +
      scaleBar(number(values, 'd_long') * 1000) +
      label({ x: patchAt.x, y: height / 2 - 8 }, 'patch from above') +
      path(`M${short(left)} ${profileAt.y}A${short(thin / 2)} ${high} 0 0 1 ${short(right)} ${profileAt.y}Z`, {
        class: 'force area',
      }) +
      path(`M${profileAt.x - 72} ${profileAt.y}H${profileAt.x + 72}`, { class: 'axis' }) +
      label({ x: profileAt.x, y: height / 2 - 8 }, 'pressure over its width'),
  );
}

function scaleBar(patch: number): string {
  const millimetres = roundFactor(patch / 2);
  const half = ((millimetres / patch) * longest) / 2;
  const y = patchAt.y + longest / 2 + 14;
  return (
    line({ x: patchAt.x - half, y }, { x: patchAt.x + half, y }, 'axis') +
    label({ x: patchAt.x, y: y + 15 }, `${formatNumber(millimetres, 3)} mm`)
  );
}

function ellipse({ x, y }: Point, across: number, up: number): string {
  const half = `A${short(across)} ${short(up)} 0 0 1`;
  return path(
    `M${short(x)} ${short(y - up)}${half} ${short(x)} ${short(y + up)}${half} ${short(x)} ${short(y - up)}Z`,
    {
      class: 'force area',
    },
  );
}
