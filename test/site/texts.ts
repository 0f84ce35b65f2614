import type { Given } from '../../calculators/calculator.ts';
import { siOf } from '../../calculators/si-of.ts';
import { quantityOf } from '../../calculators/quantity/units.ts';

/** Other texts that a reader may type into a field: a decimal comma without a unit, other units, other words. */
export function otherTexts(given: Given): string[] {
  if (given.options) {
    const words = Object.entries(given.options).filter(([, value]) => value !== given.usual.value);
    return words.map(([word]) => word);
  }
  const { units } = quantityOf(given.quantity);
  const [first, last] = [units[0], units[units.length - 1] ?? units[0]];
  const usual = [siOf(given.usual, given.quantity)].flat();
  if (given.list) {
    const more = [...usual, ...usual].slice(0, given.list[0] + 2);
    return [more.map((x, k) => short((x * (1 + k / 9)) / last.factor)).join('; ') + ` ${last.symbol}`];
  }
  const moved = nudged(given, usual[0] ?? 0);
  if (given.whole) return [String(Math.round(moved))];
  const own = units.find(({ symbol }) => symbol === given.unit) ?? first;
  return [
    short(moved / own.factor).replace('.', ','),
    `${short(moved / last.factor)} ${last.symbol}`,
    `${short(moved / first.factor)}${first.symbol}`,
  ];
}

/** Somewhat more than the usual value, or less where more is not allowed. */
function nudged({ least, most, whole }: Given, usual: number): number {
  const step = whole ? 1 : Math.abs(usual) * 0.137 || (most - least) / 97;
  return usual + step <= most ? usual + step : usual - step;
}

const short = (x: number): string => Number(x.toPrecision(4)).toString();
