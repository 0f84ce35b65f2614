import type { FunctionName, Operator, Tree } from './tree.ts';

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
        return `${node.value}${node.unit === 'deg' ? '^{\\circ}' : ''}`;
      case 'name':
        return node.name === 'pi' ? '\\pi' : names.name(node.name, bare);
      case 'negate': {
        const tex = `-${walk(node.of, strengthOfMinus + 1, false)}`;
        return strengthOfMinus < outer || !bare ? parens(tex) : tex;
      }
      case 'call':
        return call(node.name, node.args);
      case 'operate':
        return operate(node, outer, bare);
    }
  };

  const operate = (node: Extract<Tree, { kind: 'operate' }>, outer: number, bare: boolean): string => {
    const { op, left, right } = node;
    if (op === '/') {
      const tex = `\\frac{${walk(left)}}{${walk(right)}}`;
      return outer === strength['^'] + 1 ? parens(tex) : tex;
    }
    if (op === '^') return raise(left, right);
    const own = strength[op];
    const wrapped = own < outer;
    const join = op === '*' ? times(left, right) : ` ${signs[op] ?? op} `;
    const tex = walk(left, own, bare || wrapped) + join + walk(right, own + 1, false);
    return wrapped ? parens(tex) : tex;
  };

  const times = (left: Tree, right: Tree): string =>
    names.factors === 'dotted' || startsWithNumber(right) || endsOpen(left) ? ' \\cdot ' : ' \\, ';

  const raise = (base: Tree, exponent: Tree): string => {
    const command = base.kind === 'call' ? commands[base.name] : undefined;
    if (base.kind === 'call' && command && exponent.kind === 'number') {
      return `${command}^{${exponent.value}}${argument(base.args[0])}`;
    }
    return `${walk(base, strength['^'] + 1, false)}^{${walk(exponent)}}`;
  };

  /** One symbol needs no parentheses after sin or ln; numbers and sums do. */
  const argument = (arg: Tree | undefined): string => {
    if (!arg) return '';
    const short = arg.kind === 'name' && names.factors === 'side by side';
    return short ? ` ${walk(arg)}` : parens(walk(arg));
  };

  const call = (name: FunctionName, args: readonly Tree[]): string => {
    const [first, second, third] = args.map((arg) => walk(arg));
    const list = args.length === 1;
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
      case 'mod':
        return `${first} \\bmod ${second}`;
      case 'atan2':
        return `\\operatorname{atan2}\\left(${first},\\,${second}\\right)`;
      case 'upto':
        return `1,\\,\\dots,\\,${first}`;
      case 'sum':
        return names.factors === 'dotted' ? parens(first ?? '') : `\\sum_i ${first}`;
      case 'min':
      case 'max':
        return list && names.factors === 'side by side'
          ? `\\${name}_i\\, ${first}`
          : `\\${name}${parens([first, second, third].filter((x) => x !== undefined).join(',\\,'))}`;
      case 'if':
        return `\\begin{cases}${second} & \\text{if } ${first}\\\\ ${third} & \\text{otherwise}\\end{cases}`;
      default:
        return `${commands[name] ?? ''}${argument(args[0])}`;
    }
  };

  return walk(tree);
}

/** Would the TeX of this begin with a digit, so that it must not stand beside another factor? */
function startsWithNumber(tree: Tree): boolean {
  if (tree.kind === 'number') return true;
  return tree.kind === 'operate' && (tree.op === '*' || tree.op === '^') && startsWithNumber(tree.left);
}

/** Would a factor written behind this look like part of a function's argument, or of a sum? */
function endsOpen(tree: Tree): boolean {
  if (tree.kind === 'call')
    return commands[tree.name] !== undefined || tree.name === 'sum' || tree.name === 'min' || tree.name === 'max';
  return tree.kind === 'operate' && tree.op === '*' && endsOpen(tree.right);
}
