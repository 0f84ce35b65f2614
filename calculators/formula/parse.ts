import { closesList, functionArguments, type FunctionName, type Operator, type Tree } from './tree.ts';

/** A formula that cannot be read. `position` counts characters from 0; the message shows the place. */
export class FormulaError extends Error {
  readonly formula: string;
  readonly position: number;

  constructor(problem: string, formula: string, position: number) {
    super(`${problem}\n  ${formula}\n  ${' '.repeat(position)}^`);
    this.name = 'FormulaError';
    this.formula = formula;
    this.position = position;
  }
}

interface Token {
  readonly text: string;
  readonly at: number;
}

const tokenPattern = /\s*(?:(\d+(?:\.\d+)?(?:e[+-]?\d+)?|\.\d+)|([A-Za-z][A-Za-z0-9_]*)|(<=|>=|==|[-+*/^(),<>]))/y;

function tokenize(formula: string): Token[] {
  const tokens: Token[] = [];
  const end = formula.trimEnd().length;
  tokenPattern.lastIndex = 0;
  while (tokenPattern.lastIndex < end) {
    const from = tokenPattern.lastIndex;
    const match = tokenPattern.exec(formula);
    if (!match) {
      const at = from + (/^\s*/.exec(formula.slice(from))?.[0].length ?? 0);
      throw new FormulaError(`unexpected character: ${formula.charAt(at)}`, formula, at);
    }
    const text = match[1] ?? match[2] ?? match[3] ?? '';
    tokens.push({ text, at: tokenPattern.lastIndex - text.length });
  }
  return tokens;
}

/** How tightly each operator binds. `^` is right-associative and binds tighter than a leading minus: -x^2 is -(x^2). */
const binding: Partial<Record<string, number>> = {
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
  '/': 5,
  '^': 7,
};
const bindingOfMinus = 6;

/**
 * Reads a formula such as `2 * C * cos(phi) + pi * (D + d) / 2`.
 * @param known the names it may use (`pi` is always known); leave out to allow any.
 * @throws FormulaError naming the problem and its position.
 */
export function parse(formula: string, known?: ReadonlySet<string>): Tree {
  const tokens = tokenize(formula);
  let next = 0;

  const peek = (): string | undefined => tokens[next]?.text;
  const fail = (problem: string): never => {
    throw new FormulaError(problem, formula, tokens[next]?.at ?? formula.length);
  };
  const expect = (text: string): void => {
    if (peek() !== text) fail(`missing ${text}`);
    next++;
  };

  function expression(atLeast: number): Tree {
    let left = prefix();
    for (;;) {
      const op = peek();
      const strength = op !== undefined && Object.hasOwn(binding, op) ? binding[op] : undefined;
      if (op === undefined || strength === undefined || strength < atLeast) return left;
      next++;
      const right = expression(op === '^' ? strength : strength + 1);
      left = { kind: 'operate', op: op as Operator, left, right };
    }
  }

  function prefix(): Tree {
    if (peek() !== '-') return primary();
    next++;
    return { kind: 'negate', of: expression(bindingOfMinus) };
  }

  function primary(): Tree {
    const text = peek();
    if (text === undefined) return fail('the formula ends too soon');
    if (/^[\d.]/.test(text)) return number(Number(text));
    if (text === '(') {
      next++;
      const inner = expression(0);
      expect(')');
      return inner;
    }
    if (!/^[A-Za-z]/.test(text) || text === 'and' || text === 'or') return fail(`unexpected ${text}`);
    return tokens[next + 1]?.text === '(' ? call(text) : name(text);
  }

  function number(value: number): Tree {
    if (value === Infinity) fail('the number is too large');
    next++;
    if (peek() !== 'deg') return { kind: 'number', value };
    next++;
    return { kind: 'number', value, unit: 'deg' };
  }

  function name(text: string): Tree {
    if (known && text !== 'pi' && !known.has(text)) fail(`unknown name: ${text}`);
    next++;
    return { kind: 'name', name: text };
  }

  function call(text: string): Tree {
    if (!Object.hasOwn(functionArguments, text)) fail(`unknown function: ${text}`);
    const of = text as FunctionName;
    const at = next;
    next += 2;
    const args = [expression(0)];
    while (peek() === ',') {
      next++;
      args.push(expression(0));
    }
    expect(')');
    const wanted: number | readonly [number, number] = functionArguments[of];
    const [least, most] = typeof wanted === 'number' ? [wanted, wanted] : wanted;
    if (args.length < least || args.length > most) {
      throw new FormulaError(
        `${of} takes ${least === most ? least : `${least} to ${most}`} ${most === 1 ? 'argument' : 'arguments'}, not ${args.length}`,
        formula,
        at,
      );
    }
    if (closesList(of, args.length) && args[0]?.kind !== 'name') {
      throw new FormulaError(`${of} of a list takes a single name: make the list a step of its own`, formula, at);
    }
    return { kind: 'call', name: of, args };
  }

  const tree = expression(0);
  if (next < tokens.length) fail(`unexpected ${peek() ?? ''}`);
  return tree;
}
