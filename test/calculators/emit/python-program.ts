import { join } from 'node:path';
import type { Calculator } from '../../../calculators/calculator.ts';
import { functionName } from '../../../calculators/emit/identifiers.ts';
import { planOf } from '../../../calculators/emit/plan.ts';
import { asPython } from '../../../calculators/emit/python.ts';
import { pythonTaken } from '../../../calculators/emit/python-helpers.ts';
import type { Value, Values } from '../../../calculators/formula/evaluate.ts';
import { usualEntries } from '../../../calculators/inputs.ts';
import type { Answer } from './agreement.ts';
import type { Point } from './points.ts';
import { run, type Scratch } from './tools.ts';

/** Calls every module at its points, the first time with nothing but its usual values; null stands for a refusal. */
const runner = `
import importlib, json, sys

sys.path.insert(0, sys.argv[1])

def answer(function, point):
    try:
        return function(**point)
    except (ValueError, ArithmeticError):
        return None

asked = json.load(sys.stdin)
answers = {}
for name, points in asked.items():
    function = getattr(importlib.import_module(name), name)
    answers[name] = [answer(function, point) for point in [{}, *points]]
json.dump(answers, sys.stdout)
`;

/** What the Python code of each calculator says at its points; before them, with the usual values by default. */
export function askAll(asked: ReadonlyMap<Calculator, readonly Point[]>, scratch: Scratch): Map<Calculator, Answer[]> {
  const points = [...asked].map(([calculator, at]): [string, Values[]] => {
    const name = functionName(calculator.id);
    const plan = planOf(calculator, pythonTaken);
    scratch.write(`${name}.py`, asPython(calculator, usualEntries(calculator.given), `/calculators/${calculator.id}/`));
    const renamed = (point: Point): Values =>
      Object.fromEntries(Object.entries(point).map(([own, value]) => [plan.called(own), value]));
    return [name, at.map(renamed)];
  });
  const script = scratch.write('runner.py', runner);
  const output = run('python3', [script, scratch.folder], JSON.stringify(Object.fromEntries(points)));
  const answers = JSON.parse(output.toString()) as Record<string, (Readonly<Record<string, Value>> | null)[]>;
  return new Map(
    [...asked.keys()].map((calculator): [Calculator, Answer[]] => {
      const told = answers[functionName(calculator.id)] ?? [];
      return [calculator, told.map((answer) => answer ?? undefined)];
    }),
  );
}

/** What a module prints when it is run by itself. */
export const printed = ({ id }: Calculator, scratch: Scratch): string =>
  run('python3', [join(scratch.folder, `${functionName(id)}.py`)]).toString();
