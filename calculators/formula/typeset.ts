import { closesList, type FunctionName, type Operator, type Tree } from './tree.ts';

type Call = Extract<Tree, { kind: 'call' }>;

/** How names appear: as symbols, or as numbers put in their place. */
export interface Names {
  /** @param bare whether a negative number here needs no parentheses. */
  readonly name: (name: string, bare: boolean) => string;
  /** Numbers stand apart with a dot between factors; symbols stand side by side. */
  readonly factors: 'dotted' | 'side by side';
}

const strength: Record<Operator, number> = {
  or: 1,
  and: 2,
  '<': 3,
  '<=': 3,
  '>': 3,
  '>=': 3,
  '==': 3,
  '+': 4,
  '-': 4,
  '*': 5,
  '/': 8,
  '^': 7,
};
const strengthOfMinus = 6;
/** What surrounds the base of a power: nothing open may stand there. */
const asBase = strength['^'] + 1;
const signs: Partial<Record<Operator, string>> = {
  '+': '+',
  '-': '-',
  '<=': '\\le',
  '>=': '\\ge',
  '<': '<',
  '>': '>',
  '==': '=',
  and: '\\;\\text{and}\\;',
  or: '\\;\\text{or}\\;',
};

const commands: Partial<Record<FunctionName, string>> = {
  sin: '\\sin',
  cos: '\\cos',
  tan: '\\tan',
  asin: '\\arcsin',
  acos: '\\arccos',
  atan: '\\arctan',
  ln: '\\ln',
  sign: '\\operatorname{sgn}',
  round: '\\operatorname{round}',
  count: '\\operatorname{count}',
};

const parens = (tex: string): string => `\\left(${tex}\\right)`;

/** The TeX of a formula, without its left-hand side. */
export function typeset(tree: Tree, names: Names): string {
  const walk = (node: Tree, outer = 0, bare = true): string => {
    switch (node.kind) {
      case 'number':
        return numberTex(node, outer);
      case 'name':
        return node.name === 'pi' ? '\\pi' : names.name(node.name, bare);
      case 'negate': {
        const tex = `-${walk(node.of, strengthOfMinus + 1, false)}`;
        return strengthOfMinus < outer || !bare ? parens(tex) : tex;
      }
      case 'call':
        return call(node, outer);
      case 'operate':
        return operate(node, outer, bare);
    }
  };

  const operate = (node: Extract<Tree, { kind: 'operate' }>, outer: number, bare: boolean): string => {
    const { op, left, right } = node;
    if (op === '/') {
      const tex = `\\frac{${walk(left)}}{${walk(right)}}`;
      return outer === asBase ? parens(tex) : tex;
    }
    if (op === '^') return outer === asBase ? parens(raise(left, right)) : raise(left, right);
    const own = strength[op];
    const wrapped = own < outer;
    const join = op === '*' ? times(left, right) : ` ${signs[op] ?? op} `;
    const before = op === '*' && endsInList(left) ? parens(walk(left)) : walk(left, leftOf(op), bare || wrapped);
    const tex = before + join + walk(right, own + 1, false);
    return wrapped ? parens(tex) : tex;
  };

  /** A factor behind a sum over the wheels would read as part of it. */
  const endsInList = (tree: Tree): boolean => names.factors === 'side by side' && closesListAtEnd(tree);

  const times = (left: Tree, right: Tree): string =>
    names.factors === 'dotted' || startsWithNumber(right) || endsOpen(left) ? ' \\cdot ' : ' \\, ';

  const raise = (base: Tree, exponent: Tree): string => {
    const command = base.kind === 'call' ? commands[base.name] : undefined;
    if (base.kind === 'call' && command && exponent.kind === 'number') {
      return `${command}^{${walk(exponent)}}${argument(base.args[0])}`;
    }
    return `${walk(base, asBase, false)}^{${walk(exponent)}}`;
  };

  /** One symbol needs no parentheses after sin or ln; numbers and sums do. */
  const argument = (arg: Tree | undefined): string => {
    if (!arg) return '';
    const short = arg.kind === 'name' && names.factors === 'side by side';
    return short ? ` ${walk(arg)}` : parens(walk(arg));
  };

  const call = ({ name, args }: Call, outer: number): string => {
    const tex = name === 'mod' ? remainder(args) : callTex(name, args);
    return outer >= (heldFrom(name, args.length, names.factors) ?? Infinity) ? parens(tex) : tex;
  };

  const remainder = (args: readonly Tree[]): string =>
    args.map((arg) => (endsInList(arg) ? parens(walk(arg)) : walk(arg, strength['*'] + 1, false))).join(' \\bmod ');

  const callTex = (name: FunctionName, args: readonly Tree[]): string => {
    const all = args.map((arg) => walk(arg));
    const [first, second, third] = all;
    switch (name) {
      case 'sqrt':
        return `\\sqrt{${first}}`;
      case 'abs':
        return `\\left|${first}\\right|`;
      case 'exp':
        return `e^{${first}}`;
      case 'floor':
        return `\\left\\lfloor ${first}\\right\\rfloor`;
      case 'ceil':
        return `\\left\\lceil ${first}\\right\\rceil`;
      case 'atan2':
        return `\\operatorname{atan2}\\left(${first},\\,${second}\\right)`;
      case 'upto':
        return `1,\\,\\dots,\\,${first}`;
      case 'sum':
        return names.factors === 'dotted' ? parens(first ?? '') : `\\sum_i ${first}`;
      case 'min':
      case 'max':
        return all.length === 1 && names.factors === 'side by side'
          ? `\\${name}_i\\, ${first}`
          : `\\${name}${parens(all.join(',\\,'))}`;
      case 'if':
        return `\\begin{cases}${second} & \\text{if } ${first}\\\\ ${third} & \\text{otherwise}\\end{cases}`;
      default:
        return `${commands[name] ?? ''}${argument(args[0])}`;
    }
  };

  return walk(tree);
}

/** Very small and very large numbers have powers of ten, as in print. */
function numberTex({ value, unit }: Extract<Tree, { kind: 'number' }>, outer: number): string {
  const [mantissa = '', exponent] = String(value).split('e');
  const tex = exponent === undefined ? mantissa : `${mantissa} \\cdot 10^{${Number(exponent)}}`;
  const whole = unit === 'deg' ? `${exponent === undefined ? tex : parens(tex)}^{\\circ}` : tex;
  return outer === asBase && whole !== mantissa ? parens(whole) : whole;
}

/** `a < b < c` would read as a chain. */
const leftOf = (op: Operator): number => (strength[op] === strength['<'] ? strength['<'] + 1 : strength[op]);

/** From which binding of the surroundings on a call needs parentheses; `undefined` when its own TeX is closed. */
function heldFrom(name: FunctionName, args: number, factors: Names['factors']): number | undefined {
  if (name === 'upto') return 1;
  if (name === 'mod') return strength['*'];
  if (name === 'exp' || name === 'if' || commands[name]) return asBase;
  return factors === 'side by side' && closesList(name, args) ? asBase : undefined;
}

/** Would the TeX of this begin with a digit, so that it must not stand beside another factor? */
function startsWithNumber(tree: Tree): boolean {
  if (tree.kind === 'number') return true;
  return tree.kind === 'operate' && (tree.op === '*' || tree.op === '^') && startsWithNumber(tree.left);
}

/** Would a factor written behind this look like part of a function's argument? */
function endsOpen(tree: Tree): boolean {
  if (tree.kind === 'call') return commands[tree.name] !== undefined || tree.name === 'min' || tree.name === 'max';
  if (tree.kind === 'negate') return endsOpen(tree.of);
  if (tree.kind !== 'operate') return false;
  return (tree.op === '*' && endsOpen(tree.right)) || (tree.op === '^' && endsOpen(tree.left));
}

function closesListAtEnd(tree: Tree): boolean {
  if (tree.kind === 'call') return commands[tree.name] === undefined && closesList(tree.name, tree.args.length);
  if (tree.kind === 'negate') return closesListAtEnd(tree.of);
  return tree.kind === 'operate' && tree.op === '*' && closesListAtEnd(tree.right);
}
