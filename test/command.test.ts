import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Calculator } from '../calculators/calculator.ts';
import { calculatorOf, catalogue } from '../calculators/catalogue.ts';
import type { Value } from '../calculators/formula/evaluate.ts';
import { readInputs, usualEntries } from '../calculators/inputs.ts';
import { fromQuery } from '../calculators/permalink.ts';
import { quantityOf, unitOf } from '../calculators/quantity/units.ts';
import { work } from '../calculators/work.ts';
import { CallError, readArguments } from '../src/command/arguments.ts';
import { asJson } from '../src/report/json.ts';

const root = join(import.meta.dirname, '..');

interface Ran {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

/** The command as a person runs it; npm run example does the same. */
function example(...args: readonly string[]): Ran {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['src/command/example.ts', ...args], {
    cwd: root,
    encoding: 'utf8',
  });
  return { status, out: stdout, err: stderr };
}

interface Measured {
  readonly value: Value;
  readonly unit: string;
  readonly si: Value;
  readonly spread?: Value;
}

interface Report {
  readonly calculator: string;
  readonly version: number;
  readonly given: Readonly<Record<string, Measured>>;
  readonly results: Readonly<Record<string, Measured>>;
  readonly steps: readonly Readonly<Record<string, Value | string | readonly string[]>>[];
  readonly cautions: readonly string[];
  readonly link: string;
}

describe('the command', { timeout: 30_000 }, () => {
  test('lists every calculator with its question', () => {
    const { status, out, err } = example('--list');
    expect(status).toBe(0);
    expect(err).toBe('');
    const lines = out.trimEnd().split('\n');
    expect(lines.map((line) => line.split(/ {2,}/))).toEqual(catalogue.map(({ id, question }) => [id, question]));
  });

  test('tells how it is used', () => {
    const { status, out } = example('--help');
    expect(status).toBe(0);
    expect(out).toContain(
      'npm run --silent example -- <calculator> [name=value ...] [--as text|markdown|json|c|python|csv]',
    );
  });

  test('prints a worked example as text', () => {
    const { status, out, err } = example('roll-ratio', 'v=1.2m/s', 'phi=60deg', 'r=60mm');
    expect(status).toBe(0);
    expect(err).toBe('');
    expect(out).toContain('  v = 1.2 m/s  (travel speed)\n');
    expect(out).toContain('    k_roll = cos(60°) = 0.5\n');
    expect(out).toContain('    v_roll = 1.2 * 0.5 = 0.6 m/s\n');
    expect(out).toContain('    ω_roll = 0.6 / 0.06 = 10 rad/s = 95.49 rpm\n');
    expect(out).toMatch(/\n {2}wheel speed: ω_roll = 95\.49 rpm\n/);
    expect(out).toMatch(/\nAddress: \/calculators\/roll-ratio\/\?edition=1&v=1\.2m\/s&phi=60deg&r=60mm&q=60mm\n$/);
  });

  test('prints it as Markdown for a build log', () => {
    const { status, out } = example('roll-ratio', '--as', 'markdown');
    expect(status).toBe(0);
    expect(out).toMatch(/^## Rolling ratio of an angled wheel\n/);
    expect(out).toContain('| wheel radius | r | 60 mm |\n');
    expect(out).toContain('   ω_roll = 0.3 / 0.06 = 5 rad/s = 47.75 rpm\n');
    expect(out).toContain('- wheel speed: **ω_roll = 47.75 rpm**\n');
    expect((out.match(/```/g) ?? []).length % 2).toBe(0);
  });

  test('prints it as JSON', () => {
    const { status, out } = example('wheel-speeds', 'n=4', 'v=0.6 m/s', 'theta=1/4 turn', '--as=json');
    expect(status).toBe(0);
    const report = JSON.parse(out) as Report;
    expect(report.calculator).toBe('wheel-speeds');
    expect(report.given['theta']).toEqual({ value: 0.25, unit: 'turn', si: Math.PI / 2 });
    expect(report.results['omega']).toEqual({
      value: [95.4929658551, 0, -95.4929658551, 0],
      unit: 'rpm',
      si: [expect.closeTo(10, 12), 0, expect.closeTo(-10, 12), 0],
    });
    expect(report.steps.find(({ symbol }) => symbol === 'u')).toEqual({
      symbol: 'u',
      means: 'rim speed of each wheel',
      formula: 'v * s_i + R * Omega',
      substituted: ['0.6 * 1 + 0.2 * 0', '0.6 * 0 + 0.2 * 0', '0.6 * (−1) + 0.2 * 0', '0.6 * 0 + 0.2 * 0'],
      value: [0.6, 0, -0.6, 0],
      unit: 'm/s',
    });
  });

  test.each([
    ['c', 'roll_ratio'],
    ['python', 'def roll_ratio'],
    ['csv', 'k_roll'],
  ])('prints the calculation itself as %s', (form, part) => {
    const { status, out, err } = example('roll-ratio', '--as', form);
    expect({ status, err }).toEqual({ status: 0, err: '' });
    expect(out).toContain(part);
  });

  test('prints the same thing twice', () => {
    const args = ['body-motion', 'omega=-4rad/s,-1rad/s,-2rad/s,3', '--as', 'json'] as const;
    expect(example(...args)).toEqual(example(...args));
  });

  test('carries a ± through', () => {
    const { out } = example('roll-ratio', 'r=60mm ± 1 %', '--as', 'json');
    const report = JSON.parse(out) as Report;
    expect(report.given['r']).toEqual({ value: 60, unit: 'mm', si: 0.06, spread: 0.6 });
    expect(Number(report.results['omega_roll']?.spread)).toBeCloseTo(0.477464829276, 9);
    expect(report.results['k_roll']).not.toHaveProperty('spread');
  });
});

describe('a call that cannot be answered', { timeout: 30_000 }, () => {
  test.each<[string, readonly string[], string]>([
    ['no calculator', [], 'Name a calculator; --list shows them all.'],
    ['an unknown calculator', ['flying'], 'There is no calculator “flying”; --list shows them all.'],
    ['a name of every object', ['constructor'], 'There is no calculator “constructor”; --list shows them all.'],
    ['an unknown name', ['roll-ratio', 'speed=3'], 'roll-ratio does not take “speed”; it takes v, phi, r, q.'],
    ['a name twice', ['roll-ratio', 'v=3', 'v=4'], 'v is given twice.'],
    [
      'a number below its range',
      ['roll-ratio', 'r=-60mm'],
      'r (wheel radius): give a length from 1 to 10000 mm, such as 60 mm. “−60 mm” is below that.',
    ],
    [
      'a word for a number',
      ['roll-ratio', 'r=big'],
      'r (wheel radius): give a length from 1 to 10000 mm, such as 60 mm. “big” is not a number.',
    ],
    [
      'a number with the wrong unit',
      ['roll-ratio', 'r=60kg'],
      'r (wheel radius): give a length from 1 to 10000 mm, such as 60 mm. “kg” is not a unit of length (known here: m, mm, cm, km, um, in, ft).',
    ],
    [
      'values that fit no result',
      ['speed-envelope', 'Omega=400deg/s'],
      'Yaw rate Ω is too high: turning alone takes 1.4 m/s of each wheel’s 0.942 m/s. Give less than 270°/s either way.',
    ],
    [
      'an unknown form',
      ['roll-ratio', '--as', 'pdf'],
      '--as takes one of text, markdown, json, c, python, csv, not “pdf”.',
    ],
    ['an unknown option', ['roll-ratio', '--fast'], 'There is no option --fast. See --help.'],
    [
      'a stray word',
      ['roll-ratio', 'r', '60'],
      '“r” is not of the form name=value; roll-ratio is the calculator already.',
    ],
  ])('%s', (_, args, sentence) => {
    expect(example(...args)).toEqual({ status: 2, out: '', err: `${sentence}\n` });
  });

  test('two mistakes are two sentences', () => {
    const { status, out, err } = example('roll-ratio', 'r=-60mm', 'v=fast');
    expect({ status, out }).toEqual({ status: 2, out: '' });
    expect(err.trimEnd().split('\n')).toEqual([
      expect.stringMatching(/^v \(travel speed\): .*“fast” is not a number\.$/),
      expect.stringMatching(/^r \(wheel radius\): .*“−60 mm” is below that\.$/),
    ]);
  });
});

test('any arguments are read or answered by one sentence', { timeout: 30_000 }, () => {
  const word = fc.oneof(
    fc.constantFrom(...['--as', '--as=json', '--as=', '--', '-', '=', 'v=', 'v=1', 'v=2', 'x y', 'roll-ratio', 'json']),
    fc.constantFrom('__proto__=1', 'constructor=1', 'a=b=c', 'é=1', ''),
    fc.string({ unit: 'binary', maxLength: 8 }),
  );
  fc.assert(
    fc.property(fc.array(word, { maxLength: 6 }), (args) => {
      try {
        const asked = readArguments(args, ['text', 'json']);
        expect(args).toContain(asked.id);
        expect(['text', 'json']).toContain(asked.as);
        for (const [name, text] of Object.entries(asked.texts)) expect(args).toContain(`${name}=${text}`);
      } catch (error) {
        expect(error).toBeInstanceOf(CallError);
        expect((error as CallError).message).toMatch(/^[^]+[.]$/);
      }
    }),
    { numRuns: 1500 },
  );
});

describe.each(catalogue.map((calculator): [string, Calculator] => [calculator.id, calculator]))(
  'the JSON of %s',
  (id, calculator) => {
    const worked = work(calculator, usualEntries(calculator.given));
    if (!worked.ok) throw new Error(worked.refused.message);
    const report = JSON.parse(asJson(worked.working)) as Report;

    test('has these parts and no others', () => {
      expect(Object.keys(report)).toEqual(['calculator', 'version', 'given', 'results', 'steps', 'cautions', 'link']);
      expect([report.calculator, report.version]).toEqual([id, calculator.edition]);
      expect(Object.keys(report.given)).toEqual(calculator.given.map(({ name }) => name));
      expect(Object.keys(report.results).sort()).toEqual([...calculator.results].sort());
      for (const one of [...Object.values(report.given), ...Object.values(report.results)]) {
        expect(Object.keys(one).sort()).toEqual(['si', 'unit', 'value']);
      }
      expect(report.steps.map(({ symbol }) => symbol)).toEqual(calculator.steps.map(({ name }) => name));
      for (const step of report.steps) {
        expect(Object.keys(step)).toEqual(['symbol', 'means', 'formula', 'substituted', 'value', 'unit']);
      }
    });

    test('has a list where a value differs from wheel to wheel', () => {
      for (const step of calculator.steps) {
        const shown = report.steps.find(({ symbol }) => symbol === step.name);
        expect(Array.isArray(shown?.['value'])).toBe(step.list);
        expect(Array.isArray(shown?.['substituted'])).toBe(step.list);
        if (step.list && step.kind !== 'look-up') {
          expect(shown?.['substituted']).toHaveLength((shown?.['value'] as readonly number[]).length);
        }
      }
    });

    test('has values that are its SI values in its units', () => {
      for (const { name, quantity, unit } of calculator.steps) {
        const shown = report.results[name];
        if (!shown) continue;
        expect(shown.unit).toBe(unit);
        expect(shown.si).toEqual(worked.working.values[name]);
        const { factor } = unitOf(quantityOf(quantity), unit);
        const sis = [shown.si].flat();
        const backs = [shown.value].flat().map((x) => x * factor);
        const off = backs.map((back, k) => Math.abs(back - (sis[k] ?? NaN)) / Math.max(1e-3, Math.abs(back)));
        expect(backs).toHaveLength(sis.length);
        expect(Math.max(...off)).toBeLessThan(1e-9);
      }
    });

    test('has a link that opens to the same values', () => {
      const [path, query = ''] = report.link.split('?');
      expect(path).toBe(`/calculators/${id}/`);
      const link = fromQuery(calculatorOf(id), new URLSearchParams(query));
      expect(link.problems).toEqual([]);
      const inputs = readInputs(calculator.given, link.texts);
      const wanted = Object.fromEntries(Object.entries(report.given).map(([name, { si }]) => [name, si]));
      expect(inputs.ok ? inputs.values : inputs.problems).toEqual(wanted);
    });
  },
);
