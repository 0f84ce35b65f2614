import type { Value, Values } from './formula/evaluate.ts';
import { printValue } from './line.ts';
import type { QuantityName } from './quantity/units.ts';

export interface Fillable {
  readonly name: string;
  readonly quantity: QuantityName;
  readonly unit: string;
}

const place = /\{(\w+)(?:\[(\d+)\])?(?: in ([^}]*))?\}/g;

/**
 * Puts values into a sentence: `{v}` in its usual unit, `{omega[2] in rpm}` for wheel 2 in the unit named.
 * @param names what may stand in braces (givens and steps).
 * @throws Error for a name or wheel that is not there: an author's mistake.
 */
export function fill(text: string, names: readonly Fillable[], values: Values, digits = 3): string {
  return text.replace(place, (_, name: string, wheel: string | undefined, unit: string | undefined) => {
    const one = names.find((candidate) => candidate.name === name);
    const value = one && pick(values[name], wheel);
    if (!one || value === undefined) throw new Error(`unknown value: {${name}} in “${text}”`);
    return printValue(value, one.quantity, unit ?? one.unit, digits);
  });
}

/** One wheel's value by its number from 1, or the whole. */
function pick(value: Value | undefined, wheel: string | undefined): Value | undefined {
  if (wheel === undefined) return value;
  return typeof value === 'object' ? value[Number(wheel) - 1] : undefined;
}
