import type { FunctionName } from '../formula/tree.ts';
import type { Language, SignedTerm } from './express.ts';

/** Nine digits tell every float from its neighbours. */
export function floatText(value: number): string {
  const text = String(Number(value.toPrecision(9)));
  return `${/[.e]/.test(text) ? text : `${text}.0`}f`;
}

const pi = floatText(Math.PI);

export interface CNames {
  /** A name as C text for one number. */
  readonly scalar: (name: string) => string;
  readonly list: (name: string) => string;
  /** The variable that holds how long a list is. */
  readonly length: (list: string) => string;
}

export const cLanguage = ({ scalar, list, length }: CNames): Language => ({
  name: (name) => (name === 'pi' ? pi : scalar(name)),
  number: (value, unit) =>
    unit === 'deg' ? `${floatText((value * Math.PI) / 180)} /* ${value} deg */` : floatText(value),
  power: (base, exponent, literal) => (literal === 2 ? `square(${base})` : `powf(${base}, ${exponent})`),
  operator: (op) => op,
  compare: (op, left, right) => `${left} ${op} ${right}`,
  logic: (op, left, right) => `${left} ${op === 'and' ? '&&' : '||'} ${right}`,
  choose: (condition, then, otherwise) => `(${condition} ? ${then} : ${otherwise})`,
  call: (name, args, careful) => call(name, args, careful),
  whole: (name, of, careful) => whole(name, `${list(of)}, ${length(of)}`, length(of), careful),
  careful: sum,
});

const plain: Partial<Record<FunctionName, string>> = {
  sin: 'sinf',
  cos: 'cosf',
  tan: 'tangent',
  asin: 'arcsine',
  acos: 'arccosine',
  atan: 'atanf',
  atan2: 'atan2f',
  sqrt: 'sqrtf',
  exp: 'expf',
  ln: 'logf',
  abs: 'fabsf',
  sign: 'sign_of',
  mod: 'modulo',
};

const tidied: Partial<Record<FunctionName, string>> = { sin: 'sine', cos: 'cosine' };

function call(name: FunctionName, args: readonly string[], careful: boolean): string {
  const [first = ''] = args;
  if (name === 'upto') return '(float)(wheel + 1)';
  if (name === 'round') return `floorf(snapped(${first}) + 0.5f)`;
  if (name === 'floor' || name === 'ceil') return `${name}f(snapped(${first}))`;
  if (name === 'min' || name === 'max') return nested(name === 'min' ? 'smaller' : 'larger', args);
  const called = (careful ? tidied[name] : undefined) ?? plain[name];
  if (called === undefined) throw new Error(`unknown function: ${name} has no form in C`);
  return `${called}(${args.join(', ')})`;
}

/** C has no functions of any number of arguments: a sum of many terms is a sum of sums. */
function sum(terms: readonly SignedTerm[]): string {
  const [first, second, third, fourth, ...others] = terms;
  if (first && second && !third) return `${second.minus ? 'minus' : 'plus'}(${first.signed}, ${second.text})`;
  const texts = [first, second, third, fourth].flatMap((one) => one?.signed ?? []);
  const text = `plus${texts.length}(${texts.join(', ')})`;
  return others.length === 0 ? text : sum([{ minus: false, text, signed: text }, ...others]);
}

const nested = (name: string, args: readonly string[]): string =>
  args.reduce((left, right) => `${name}(${left}, ${right})`);

function whole(name: FunctionName, args: string, length: string, careful: boolean): string {
  if (name === 'count') return `(float)${length}`;
  if (name === 'sum') return `${careful ? 'total_of' : 'sum_of'}(${args})`;
  return `${name === 'min' ? 'smallest_of' : 'largest_of'}(${args})`;
}
