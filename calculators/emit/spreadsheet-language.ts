import type { FunctionName, Operator } from '../formula/tree.ts';
import type { Language } from './express.ts';

export interface Cells {
  /** The cell of a name; for a list, that of the wheel at hand. */
  readonly cell: (name: string) => string;
  /** The cells of a list. */
  readonly range: (name: string) => string;
  /** The number of the wheel at hand, from 1. */
  readonly wheel: number;
}

/** How far two compared values may be apart, in SI, and still count as equal. */
export const dust = '1e-12';

export const numberText = (value: number): string => String(value);

export const cellLanguage = ({ cell, range, wheel }: Cells): Language => ({
  name: (name) => (name === 'pi' ? 'PI()' : cell(name)),
  number: (value, unit) => (unit === 'deg' ? `RADIANS(${numberText(value)})` : numberText(value)),
  power: (base, exponent) => `POWER(${base},${exponent})`,
  operator: (op) => op,
  compare: (op, left, right, exact) => (exact ? `${left}${signs[op] ?? op}${right}` : loosely(op, left, right)),
  logic: (op, left, right) => `${op === 'and' ? 'AND' : 'OR'}(${left},${right})`,
  choose: (condition, then, otherwise) => `IF(${condition},${then},${otherwise})`,
  call: (name, args, _, exact) => call(name, args, wheel, exact),
  whole: (name, list) => `${wholes[name] ?? 'SUM'}(${range(list)})`,
});

const signs: Partial<Record<Operator, string>> = { '==': '=' };

/** A spreadsheet has no helper functions, so it is the comparison that allows for rounding, not the sum. */
function loosely(op: Operator, left: string, right: string): string {
  const apart = right === '0' ? left : `${left} - ${closed(right)}`;
  switch (op) {
    case '<':
      return `${apart}<-${dust}`;
    case '<=':
      return `${apart}<=${dust}`;
    case '>':
      return `${apart}>${dust}`;
    case '>=':
      return `${apart}>=-${dust}`;
    default:
      return `ABS(${apart})<=${dust}`;
  }
}

const closed = (text: string): string => (/^[\w$.]+$/.test(text) ? text : `(${text})`);

const wholes: Partial<Record<FunctionName, string>> = { min: 'MIN', max: 'MAX', count: 'COUNT' };

const plain: Partial<Record<FunctionName, string>> = {
  sin: 'SIN',
  cos: 'COS',
  tan: 'TAN',
  atan: 'ATAN',
  sqrt: 'SQRT',
  exp: 'EXP',
  ln: 'LN',
  abs: 'ABS',
  min: 'MIN',
  max: 'MAX',
};

function call(name: FunctionName, args: readonly string[], wheel: number, exact: boolean): string {
  const [first = '', second = ''] = args;
  switch (name) {
    case 'upto':
      return String(wheel);
    case 'asin':
    case 'acos':
      return `${name.toUpperCase()}(IF(ABS(${first})<1+${dust},MAX(-1,MIN(1,${first})),${first}))`;
    case 'atan2':
      // Spreadsheets take the level part first, and none at all at the origin.
      return `IF(ABS(${first})<=${dust},IF(${second}<-${dust},PI(),0),ATAN2(${second},${first}))`;
    case 'sign':
      return `IF(ABS(${first})<=${dust},0,SIGN(${first}))`;
    case 'floor':
      return floor(snapped(first));
    case 'ceil':
      return `(-${floor(snapped(`-(${first})`))})`;
    case 'round':
      return floor(`${snapped(first)} + 0.5`);
    case 'mod':
      if (exact) return `MOD(${first},${second})`;
      return `(${first} - ${closed(second)}*${floor(snapped(`${closed(first)}/${closed(second)}`))})`;
    default:
      return `${plain[name] ?? ''}(${args.join(',')})`;
  }
}

/** Whole numbers missed by a hair are meant. */
const snapped = (text: string): string => `ROUND(${text},9)`;

/** INT would do, but not every spreadsheet rounds it down below zero. */
const floor = (text: string): string => `(${text} - MOD(${text},1))`;
