import type { FunctionName } from '../formula/tree.ts';
import type { Language, SignedTerm } from './express.ts';

export interface PythonNames {
  /** A name as Python text for one number. */
  readonly scalar: (name: string) => string;
  readonly list: (name: string) => string;
}

export const pythonLanguage = ({ scalar, list }: PythonNames): Language => ({
  name: (name) => (name === 'pi' ? 'math.pi' : scalar(name)),
  number: (value, unit) => (unit === 'deg' ? `math.radians(${value})` : String(value)),
  power: (base, exponent, literal) => (Number.isInteger(literal) ? undefined : `math.pow(${base}, ${exponent})`),
  operator: (op) => (op === '^' ? '**' : op),
  compare: (op, left, right) => `${left} ${op} ${right}`,
  logic: (op, left, right) => `${left} ${op} ${right}`,
  choose: (condition, then, otherwise) => `(${then} if ${condition} else ${otherwise})`,
  call: (name, args, careful) => call(name, args, careful),
  whole: (name, of, careful) => `${wholes[name] ?? (careful ? 'total' : 'sum')}(${list(of)})`,
  careful: sum,
});

const wholes: Partial<Record<FunctionName, string>> = { min: 'min', max: 'max', count: 'len' };

const plain: Partial<Record<FunctionName, string>> = {
  sin: 'math.sin',
  cos: 'math.cos',
  tan: 'tangent',
  asin: 'arcsine',
  acos: 'arccosine',
  atan: 'math.atan',
  atan2: 'math.atan2',
  sqrt: 'math.sqrt',
  exp: 'math.exp',
  ln: 'math.log',
  abs: 'abs',
  sign: 'sign',
  mod: 'modulo',
  min: 'min',
  max: 'max',
};

function sum(terms: readonly SignedTerm[]): string {
  const [first, second, third] = terms;
  if (first && second?.minus && !third) return `minus(${first.signed}, ${second.text})`;
  return `plus(${terms.map(({ signed }) => signed).join(', ')})`;
}

const tidied: Partial<Record<FunctionName, string>> = { sin: 'sine', cos: 'cosine' };

function call(name: FunctionName, args: readonly string[], careful: boolean): string {
  const [first = ''] = args;
  if (name === 'upto') return '(wheel + 1)';
  if (name === 'round') return `math.floor(snapped(${first}) + 0.5)`;
  if (name === 'floor' || name === 'ceil') return `math.${name}(snapped(${first}))`;
  if (args.length === 1 && (name === 'min' || name === 'max')) return first;
  const called = (careful ? tidied[name] : undefined) ?? plain[name];
  if (called === undefined) throw new Error(`unknown function: ${name} has no form in Python`);
  return `${called}(${args.join(', ')})`;
}
