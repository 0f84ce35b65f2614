import type { FunctionName, Operator, Tree } from '../../../calculators/formula/tree.ts';

/**
 * Reads TeX as a careful person reads a formula on paper, and refuses what can be read two ways:
 * - a function without parentheses reaches over every factor that stands beside it, up to a dot or a plus;
 * - a sum over the wheels reaches over every factor, dots too;
 * - a power belongs to the one sign before it;
 * - a second power, a power after the parentheses of a function and a chain of comparisons are refused.
 */
export function readTex(tex: string): Tree {
  const tokens = tokenize(tex);
  let next = 0;
  const peek = (ahead = 0): string => tokens[next + ahead] ?? 'end';
  const take = (...wanted: readonly string[]): void => {
    for (const token of wanted) {
      if (peek() !== token) throw new Error(`“${token}” is missing before “${tokens.slice(next).join(' ')}” in ${tex}`);
      next++;
    }
  };
  const accept = (...wanted: readonly string[]): boolean => {
    if (!wanted.every((token, k) => peek(k) === token)) return false;
    next += wanted.length;
    return true;
  };

  const either = (): Tree => chain(both, ['or']);
  const both = (): Tree => chain(comparison, ['and']);

  function chain(part: () => Tree, ops: readonly Operator[]): Tree {
    let left = part();
    for (let op = operatorAt(ops); op; op = operatorAt(ops)) {
      next++;
      left = { kind: 'operate', op, left, right: part() };
    }
    return left;
  }

  const operatorAt = (ops: readonly Operator[]): Operator | undefined => ops.find((op) => op === signs[peek()]);

  function comparison(): Tree {
    const left = sum();
    const op = operatorAt(['<', '<=', '>', '>=', '==']);
    if (!op) return left;
    next++;
    const right = sum();
    if (operatorAt(['<', '<=', '>', '>=', '=='])) throw new Error(`a chain of comparisons: ${tex}`);
    return { kind: 'operate', op, left, right };
  }

  function sum(): Tree {
    let left: Tree = accept('-') ? { kind: 'negate', of: term() } : term();
    for (let op = operatorAt(['+', '-']); op; op = operatorAt(['+', '-'])) {
      next++;
      left = { kind: 'operate', op, left, right: term() };
    }
    return left;
  }

  function term(): Tree {
    let left = factors();
    let plain = true;
    while (peek() === '\\cdot' || peek() === '\\bmod') {
      const remainder = peek() === '\\bmod';
      if (remainder && !plain) throw new Error(`a remainder among factors: ${tex}`);
      next++;
      const right = factors();
      left = remainder ? { kind: 'call', name: 'mod', args: [left, right] } : times(left, right);
      if (remainder && (peek() === '\\cdot' || peek() === '\\bmod'))
        throw new Error(`a remainder among factors: ${tex}`);
      plain = false;
    }
    return left;
  }

  function factors(): Tree {
    let left = factor();
    while (accept('\\,')) left = times(left, factor());
    return left;
  }

  function factor(): Tree {
    const closed = /^\\(sum|min|max)$/.exec(peek())?.[1] as FunctionName | undefined;
    if (closed && peek(1) === '_') {
      take(peek(), '_', 'i');
      accept('\\,');
      return { kind: 'call', name: closed, args: [term()] };
    }
    const name = openFunction();
    if (name === undefined) return power(atom());
    const exponent = accept('^') ? braced() : undefined;
    const grouped = peek() === '\\left' && peek(1) === '(';
    const arg = grouped ? atom().tree : factors();
    if (grouped && peek() === '^') throw new Error(`a power after the parentheses of ${name}: ${tex}`);
    const call: Tree = { kind: 'call', name, args: [arg] };
    return exponent ? { kind: 'operate', op: '^', left: call, right: exponent } : call;
  }

  function openFunction(): FunctionName | undefined {
    const word = peek() === '\\operatorname' ? peek(2) : peek();
    if (!Object.hasOwn(functions, word)) return undefined;
    next += peek() === '\\operatorname' ? 4 : 1;
    return functions[word];
  }

  /** @returns the sign, and whether a power may stand on it. */
  function atom(): Atom {
    const token = peek();
    if (/^[\d.]+$/.test(token)) return number();
    next++;
    if (token === 'e') {
      take('^');
      return { tree: { kind: 'call', name: 'exp', args: [braced()] }, takesPower: false };
    }
    if (/^[a-z]$/.test(token)) return { tree: { kind: 'name', name: token }, takesPower: true };
    switch (token) {
      case '\\pi':
        return { tree: { kind: 'name', name: 'pi' }, takesPower: true };
      case '\\frac':
        return { tree: { kind: 'operate', op: '/', left: braced(), right: braced() }, takesPower: false };
      case '\\sqrt':
        return { tree: { kind: 'call', name: 'sqrt', args: [braced()] }, takesPower: true };
      case '\\begin':
        return cases();
      case '\\operatorname':
        take('{', 'atan2', '}');
        return { tree: { kind: 'call', name: 'atan2', args: inParentheses() }, takesPower: true };
      case '\\min':
      case '\\max':
        return {
          tree: { kind: 'call', name: token === '\\min' ? 'min' : 'max', args: inParentheses() },
          takesPower: true,
        };
      case '\\left':
        next--;
        return delimited();
      default:
        throw new Error(`“${token}” cannot begin anything: ${tex}`);
    }
  }

  function number(): Atom {
    const value = Number(peek());
    next++;
    if (accept('^', '{', '\\circ', '}')) return { tree: { kind: 'number', value, unit: 'deg' }, takesPower: false };
    return { tree: { kind: 'number', value }, takesPower: true };
  }

  function delimited(): Atom {
    const open = peek(1);
    if (open === '(') {
      const [tree, ...others] = inParentheses();
      if (!tree || others.length > 0) throw new Error(`a list where one number is wanted: ${tex}`);
      return { tree, takesPower: true };
    }
    take('\\left', open);
    const inner = either();
    take('\\right', open === '|' ? '|' : open.replace('\\l', '\\r'));
    const name = open === '|' ? 'abs' : open === '\\lfloor' ? 'floor' : 'ceil';
    return { tree: { kind: 'call', name, args: [inner] }, takesPower: true };
  }

  function inParentheses(): Tree[] {
    take('\\left', '(');
    const all = [either()];
    while (accept(',')) {
      take('\\,');
      all.push(either());
    }
    take('\\right', ')');
    return all;
  }

  function braced(): Tree {
    take('{');
    const inner = either();
    take('}');
    return inner;
  }

  function cases(): Atom {
    take('{', 'cases', '}');
    const yes = either();
    take('&', 'if');
    const condition = either();
    take('\\\\');
    const no = either();
    take('&', 'otherwise', '\\end', '{', 'cases', '}');
    return { tree: { kind: 'call', name: 'if', args: [condition, yes, no] }, takesPower: false };
  }

  function power({ tree, takesPower }: Atom): Tree {
    if (!accept('^')) return tree;
    if (!takesPower) throw new Error(`a power that may belong to a part only: ${tex}`);
    const raised: Tree = { kind: 'operate', op: '^', left: tree, right: braced() };
    if (peek() === '^') throw new Error(`a second power: ${tex}`);
    return raised;
  }

  const tree = either();
  take('end');
  return tree;
}

interface Atom {
  readonly tree: Tree;
  readonly takesPower: boolean;
}

const times = (left: Tree, right: Tree): Tree => ({ kind: 'operate', op: '*', left, right });

const signs: Readonly<Record<string, Operator>> = {
  '+': '+',
  '-': '-',
  '<': '<',
  '>': '>',
  '=': '==',
  '\\le': '<=',
  '\\ge': '>=',
  and: 'and',
  or: 'or',
};

const functions: Readonly<Record<string, FunctionName>> = {
  '\\sin': 'sin',
  '\\cos': 'cos',
  '\\tan': 'tan',
  '\\arcsin': 'asin',
  '\\arccos': 'acos',
  '\\arctan': 'atan',
  '\\ln': 'ln',
  sgn: 'sign',
  round: 'round',
  count: 'count',
};

function tokenize(tex: string): string[] {
  const words = tex
    .replace(/\\;\\text\{(and|or)\}\\;/g, ' $1 ')
    .replace(/\\text\{if \}/g, ' if ')
    .replace(/\\text\{otherwise\}/g, ' otherwise ');
  const found = words.match(/\\[A-Za-z]+|\\[^A-Za-z]|\d+(?:\.\d+)?|atan2|[a-z]{2,}|\S/g) ?? [];
  return [...found, 'end'];
}
