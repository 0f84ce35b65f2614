import { join } from 'node:path';
import type { Calculator } from '../../../calculators/calculator.ts';
import { asC } from '../../../calculators/emit/c.ts';
import { cTaken } from '../../../calculators/emit/c-helpers.ts';
import { functionName } from '../../../calculators/emit/identifiers.ts';
import { planOf, type Plan } from '../../../calculators/emit/plan.ts';
import type { Value } from '../../../calculators/formula/evaluate.ts';
import { usualEntries } from '../../../calculators/inputs.ts';
import type { Answer } from './agreement.ts';
import type { Point } from './points.ts';
import { run, type Scratch } from './tools.ts';

/** With -O1 the compiler follows values further and finds more to warn of. */
const flags = '-std=c99 -Wall -Wextra -Werror -Wconversion -Wdouble-promotion -pedantic -O1'.split(' ');

export interface Answers {
  /** What the example in the code's last comment gives. */
  readonly example: Answer;
  readonly answers: readonly Answer[];
}

/** Compiles a calculator with a main that reads points and writes answers, as floats. */
export function compile(calculator: Calculator, scratch: Scratch): (points: readonly Point[]) => Answers {
  const { id } = calculator;
  const plan = planOf(calculator, cTaken);
  const source = asC(calculator, usualEntries(calculator.given), `/calculators/${id}/`);
  scratch.write(`${id}.c`, source);
  const main = scratch.write(`${id}-main.c`, mainText(calculator, plan, exampleIn(source)));
  const program = join(scratch.folder, id);
  run('gcc', [...flags, main, '-o', program, '-lm']);
  return (points) => {
    const [example, ...answers] = readAnswers(calculator, plan, run(program, [], writePoints(calculator, points)));
    return { example, answers };
  };
}

const exampleIn = (source: string): string => /\/\* Example:\n([^]*)\n\*\/\n$/.exec(source)?.[1] ?? '';

/** Reads floats, a list as all its places and how many are used; writes the answer and the result as they stand in memory. */
function mainText({ id, given }: Calculator, { called }: Plan, example: string): string {
  const name = functionName(id);
  const reads = given.flatMap(({ name: own, list }) => {
    const member = `given.${called(own)}`;
    return list
      ? [`get(${member}, ${list[1]});`, 'get(&count, 1);', `${member}_count = (int)count;`]
      : [`get(&${member}, 1);`];
  });
  return `#include "${id}.c"
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static void get(float *to, size_t many)
{
    if (fread(to, sizeof *to, many, stdin) != many) {
        exit(0);
    }
}

static void answer(bool found, const ${name}_result *result)
{
    const int told = found;
    fwrite(&told, sizeof told, 1, stdout);
    fwrite(result, sizeof *result, 1, stdout);
}

static void show_example(void)
{
${example}
    answer(found, &result);
}

int main(void)
{
    show_example();
    for (;;) {
        ${name}_given given;
        ${name}_result result;
        float count = 0.0f;
        memset(&result, 0, sizeof result);
        (void)count;
        ${reads.join('\n        ')}
        answer(${name}(&given, &result), &result);
    }
}
`;
}

function writePoints({ given }: Calculator, points: readonly Point[]): Uint8Array {
  const numbers = points.flatMap((point) =>
    given.flatMap(({ name, list }) => {
      const values = [point[name] ?? NaN].flat();
      return list ? [...Array.from({ length: list[1] }, (_, k) => values[k] ?? 0), values.length] : values;
    }),
  );
  return new Uint8Array(Float32Array.from(numbers).buffer);
}

function readAnswers({ results, steps }: Calculator, { lengths }: Plan, bytes: Buffer): Answer[] {
  const shown = results.filter((name) => steps.some((step) => step.name === name));
  const counts = [...new Set(shown.flatMap((name) => lengths.get(name) ?? []))];
  const answers: Answer[] = [];
  for (let at = 0; at < bytes.length;) {
    const next = (): number => (at += 4) - 4;
    const found = bytes.readInt32LE(next());
    const used = new Map(counts.map((length) => [length, bytes.readInt32LE(next())]));
    const values = shown.map((name): [string, Value] => {
      const length = lengths.get(name);
      if (!length) return [name, bytes.readFloatLE(next())];
      return [name, Array.from({ length: length.most }, () => bytes.readFloatLE(next())).slice(0, used.get(length))];
    });
    answers.push(found === 0 ? undefined : Object.fromEntries(values));
  }
  return answers;
}
