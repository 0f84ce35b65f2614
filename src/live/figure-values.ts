import type { Value, Values } from '../../calculators/formula/evaluate.ts';
import type { Calculator } from '../../calculators/calculator.ts';
import type { Solvable } from '../../calculators/solve.ts';
import { sweep } from '../../calculators/sweep.ts';
import { rosePoints, type FigureSpec } from '../figures/catalogue.ts';
import type { FigureValues } from '../figures/values.ts';

type Drawable = Solvable & Pick<Calculator, 'given'>;

/** What a figure is handed: the values of the calculation and, for a rose, one result over the whole circle. */
export function figureValues(calculator: Drawable, { rose }: FigureSpec, values: Values): FigureValues {
  return rose ? { ...values, ...roseOf(calculator, rose, values) } : values;
}

const last = new WeakMap<Drawable, { readonly others: string; readonly rose: FigureValues }>();

/** The last rose of a calculator stands while all givens but the one it is swept over do. */
function roseOf(
  calculator: Drawable,
  { against, of, beside, points = rosePoints }: NonNullable<FigureSpec['rose']>,
  values: Values,
): FigureValues {
  const others = calculator.given.map(({ name }) => (name === against ? '' : String(values[name]))).join(';');
  const known = last.get(calculator);
  if (known?.others === others) return known.rose;
  const [first, second] = sweep(calculator, values, against, [0, 2 * Math.PI], [of, beside ?? of], points);
  const rose = {
    rose_at: first.at,
    ...leastOf(first.values),
    ...(beside === undefined ? {} : { rose_beside: second.values.map(Number) }),
  };
  last.set(calculator, { others, rose });
  return rose;
}

/** Of a list the least at each place, and whose it is. */
function leastOf(swept: readonly Value[]): FigureValues {
  const all = swept.map((value) => [value].flat());
  const rose = all.map((ones) => Math.min(...ones));
  if (swept.every((value) => typeof value === 'number')) return { rose };
  return { rose, rose_lowest: all.map((ones, k) => ones.indexOf(rose[k] ?? NaN) + 1) };
}
