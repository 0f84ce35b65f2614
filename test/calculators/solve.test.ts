import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  defineCalculator,
  given,
  type Calculator,
  type CalculatorSource,
  type Table,
} from '../../calculators/calculator.ts';
import { readInputs } from '../../calculators/inputs.ts';
import { solve } from '../../calculators/solve.ts';
import { faultsOf } from '../../calculators/verify.ts';
import { substituted, work, type Worked, type WorkedStep } from '../../calculators/work.ts';
import { asJson } from '../../src/report/json.ts';
import { asText } from '../../src/report/text.ts';
import { isTrue, press } from './pocket-calculator.ts';

const define = (
  source: Pick<CalculatorSource, 'given' | 'steps' | 'results'> & Partial<CalculatorSource>,
): Calculator =>
  defineCalculator({
    id: 'small',
    edition: 1,
    module: 'belt-drives',
    title: 'Small',
    question: 'What is it?',
    limits: [],
    ...source,
  });

function works(calculator: Calculator, texts: Readonly<Record<string, string>>): Worked {
  const read = readInputs(calculator.given, texts);
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join('\n'));
  return work(calculator, read.entries);
}

function stepOf(worked: Worked, name: string): WorkedStep {
  if (!worked.ok) throw new Error(worked.refused.message);
  return worked.working.steps.find(({ step }) => step.name === name) ?? fail(name);
}

function fail(name: string): never {
  throw new Error(`no step ${name}`);
}

const refusal = (worked: Worked): string => (worked.ok ? 'worked' : worked.refused.message);

/** The side of a square of a given area: a root whose answer everybody knows. */
const square = define({
  given: [given('area', 'area of the square', 'area', '9 cm^2', ['1 mm^2', '1 m^2'])],
  steps: [
    {
      name: 'side',
      means: 'side of the square',
      quantity: 'length',
      unit: 'mm',
      solve: 'side^2',
      equals: 'area',
      between: ['0', 'sqrt(area) + 2 * area / sqrt(area)'],
    },
  ],
  results: ['side'],
});

/** Belt round two pulleys: the distance of the centres for a length of belt has no closed form. */
const belt = define({
  given: [
    given('L', 'length of the belt', 'length', '400 mm', ['10 mm', '10 m']),
    given('D', 'large pulley', 'length', '60 mm', ['1 mm', '1 m']),
    given('d', 'small pulley', 'length', '20 mm', ['1 mm', '1 m']),
  ],
  steps: [
    { name: 'diff', means: 'half the difference', quantity: 'length', unit: 'mm', formula: '(D - d) / 2', brief: true },
    {
      name: 'C_least',
      means: 'distance at which they touch',
      quantity: 'length',
      unit: 'mm',
      formula: '(D + d) / 2',
      brief: true,
    },
    {
      name: 'C',
      means: 'distance of the centres',
      quantity: 'length',
      unit: 'mm',
      solve: '2 * C * cos(asin(diff / C)) + pi * (D + d) / 2 + 2 * diff * asin(diff / C)',
      equals: 'L',
      between: ['C_least', 'L / 2'],
    },
    { name: 'phi', means: 'angle of a run', quantity: 'angle', unit: 'deg', formula: 'asin(diff / C)' },
  ],
  results: ['C', 'phi'],
});

describe('a root', () => {
  test('is found', () => {
    const side = stepOf(works(square, {}), 'side');
    expect(side.value).toBeCloseTo(0.03, 15);
    expect(side.text).toBe('30 mm');
    expect(faultsOf(square)).toEqual([]);
  });

  test('is found for any area, to the last digits', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1, noNaN: true }), (area) => {
        const { side } = solve(square, { area }).values;
        expect(Number(side) / Math.sqrt(area)).toBeCloseTo(1, 13);
      }),
    );
  });

  test('at an end of its interval is found too', () => {
    const from = define({
      given: square.given,
      steps: [
        {
          name: 'side',
          means: 'side',
          quantity: 'length',
          unit: 'mm',
          solve: 'side^2',
          equals: 'area',
          between: ['sqrt(area)', '2 * sqrt(area)'],
        },
      ],
      results: ['side'],
    });
    expect(solve(from, { area: 0.25 }).values['side']).toBe(0.5);
    const falling = define({
      given: [...square.given, given('other', 'other side', 'length', '500 mm', ['1 mm', '1 m'])],
      steps: [
        {
          name: 'side',
          means: 'side',
          quantity: 'length',
          unit: 'mm',
          solve: 'area / side',
          equals: 'other',
          between: ['other / 10', 'other'],
        },
      ],
      results: ['side'],
    });
    expect(solve(falling, { area: 0.25, other: 0.5 }).values['side']).toBeCloseTo(0.5, 12);
  });

  test('outside its interval is refused with a sentence', () => {
    const narrow = define({
      given: square.given,
      steps: [
        {
          name: 'side',
          means: 'side of the square',
          quantity: 'length',
          unit: 'mm',
          solve: 'side^2',
          equals: 'area',
          between: ['0', 'sqrt(area) / 2'],
        },
      ],
      results: ['side'],
    });
    expect(refusal(works(narrow, {}))).toBe(
      'There is no side of the square for these values: the formula has no finite result.',
    );
  });

  test('of a belt is where the belt has its length', () => {
    const inputs = fc.record({
      L: fc.double({ min: 0.5, max: 3, noNaN: true }),
      D: fc.double({ min: 0.01, max: 0.08, noNaN: true }),
      d: fc.double({ min: 0.01, max: 0.08, noNaN: true }),
    });
    fc.assert(
      fc.property(inputs, ({ L, D, d }) => {
        const { values } = solve(belt, { L, D, d });
        const C = Number(values['C']);
        const phi = Math.asin((D - d) / 2 / C);
        const length = 2 * C * Math.cos(phi) + ((Math.PI + 2 * phi) * D) / 2 + ((Math.PI - 2 * phi) * d) / 2;
        expect(length / L).toBeCloseTo(1, 11);
        expect(values['phi']).toBeCloseTo(phi, 11);
      }),
    );
  });

  test('too short a belt is refused', () => {
    expect(refusal(works(belt, { L: '100 mm' }))).toContain('There is no distance of the centres');
  });

  test('is printed with a check that gives the target', () => {
    const C = stepOf(works(belt, {}), 'C');
    const [row] = C.rows;
    if (!C.line || !row) throw new Error('no check');
    const line = substituted(C.line, row);
    expect(row.result).toBe('400 mm');
    expect(isTrue(line, row.result, Number(press(line, row.result)))).toBe(true);
    const worked = works(belt, {});
    const text = worked.ok ? asText(worked.working) : '';
    expect(text).toContain(`check: ${line} = 400 mm = L`);
    expect(text).toContain(`solved for C = ${C.text}`);
  });

  test('may not be sought for an expression', () => {
    const step = { name: 's', means: 's', quantity: 'length', unit: 'm', solve: 's^2', between: ['0', '1'] } as const;
    expect(() => define({ given: square.given, steps: [{ ...step, equals: '2 * area' }], results: ['s'] })).toThrow(
      'invalid target: 2 * area: make it a step of its own',
    );
  });
});

const table = (between: Table['between']): Table => ({
  title: 'Speeds of sound',
  source: 'invented',
  place: 'nowhere',
  of: 'temperature',
  rows: [
    [0, 331],
    [10, 337],
    [30, 349],
  ],
  between,
});

const lookUp = (between: Table['between'], list = false): Calculator =>
  define({
    given: [
      list
        ? given('at', 'where', 'ratio', '0, 10, 30', ['-100', '100'], { list: [3, 8] })
        : given('at', 'where', 'ratio', '10', ['-100', '100']),
    ],
    steps: [
      { name: 'c', means: 'tabled speed', quantity: 'velocity', unit: 'm/s', table: table(between), at: 'at' },
      { name: 'twice', means: 'twice that', quantity: 'velocity', unit: 'm/s', formula: '2 * c' },
    ],
    results: ['twice'],
  });

describe('a look-up', () => {
  test.each([
    [0, 331],
    [10, 337],
    [30, 349],
    [5, 334],
    [20, 343],
    [29, 348.4],
  ])('by straight lines at %d', (at, c) => {
    expect(solve(lookUp('straight lines'), { at }).values['c']).toBeCloseTo(c, 12);
  });

  test.each([0, 10, 30, 10 + 1e-10])('at a row, %d', (at) => {
    const { refusal: refused, values } = solve(lookUp('rows only'), { at });
    expect(refused).toBeUndefined();
    expect([331, 337, 349]).toContain(values['c']);
  });

  test.each([5, 10.001, -1, 31])('between rows, %d, where only rows count, is refused', (at) => {
    expect(solve(lookUp('rows only'), { at }).refusal?.says).toBe(
      'There is no tabled speed for these values: the formula has no finite result.',
    );
  });

  test.each([-0.001, 30.001, -100, 100])('outside the table, %d, is refused', (at) => {
    expect(refusal(works(lookUp('straight lines'), { at: String(at) }))).toContain('There is no tabled speed');
  });

  test('of each wheel', () => {
    expect(solve(lookUp('straight lines', true), { at: [0, 20, 30, 5] }).values['twice']).toEqual([662, 686, 698, 668]);
    expect(solve(lookUp('straight lines', true), { at: [0, 20, 31] }).refusal).toBeDefined();
  });

  test('never leaves the rows it stands between', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 30, noNaN: true }), (at) => {
        const c = Number(solve(lookUp('straight lines'), { at }).values['c']);
        const [low, high] = at <= 10 ? [331, 337] : [337, 349];
        expect(c).toBeGreaterThanOrEqual(low);
        expect(c).toBeLessThanOrEqual(high);
      }),
    );
  });

  test('is printed with the place it was read in, and has no line of its own', () => {
    const worked = works(lookUp('straight lines'), {});
    expect(stepOf(worked, 'c').rows).toEqual([]);
    if (!worked.ok) return fail('c');
    expect(asText(worked.working)).toContain('c = 337 m/s, from “Speeds of sound”, nowhere');
    const { steps } = JSON.parse(asJson(worked.working)) as { steps: object[] };
    expect(steps[0]).toMatchObject({
      symbol: 'c',
      formula: 'Speeds of sound',
      substituted: '',
      value: 337,
      unit: 'm/s',
    });
  });
});

describe('what must hold', () => {
  const ladder = define({
    given: [
      given('a', 'ladder', 'length', '5 m', ['1 m', '10 m']),
      given('b', 'foot', 'length', '3 m', ['0 m', '10 m']),
    ],
    steps: [{ name: 'h', means: 'height', quantity: 'length', unit: 'm', formula: 'sqrt(a^2 - b^2)' }],
    results: ['h'],
    requires: [
      { given: 'b', holds: 'b < a', says: 'The foot at {b in cm} is further out than the ladder of {a} reaches.' },
    ],
    cautions: [{ says: 'Hold the ladder.' }, { when: 'b > a / 2', says: 'At {b} it is flat: it reaches {h in cm}.' }],
  });

  test('is refused beside its given, in the units of the sentence', () => {
    expect(works(ladder, { b: '6 m' })).toEqual({
      ok: false,
      refused: { given: 'b', message: 'The foot at 600 cm is further out than the ladder of 5 m reaches.' },
    });
  });

  test('comes before what has no result', () => {
    expect(solve(ladder, { a: 5, b: 6 }).refusal?.given).toBe('b');
    expect(solve({ ...ladder, requires: [] }, { a: 5, b: 6 }).refusal).toEqual({
      says: 'There is no height for these values: the formula has no finite result.',
    });
  });

  test('cautions stand where they apply, with their values', () => {
    const cautions = (b: string): readonly string[] => {
      const worked = works(ladder, { b });
      return worked.ok ? worked.working.cautions : [];
    };
    expect(cautions('1 m')).toEqual(['Hold the ladder.']);
    expect(cautions('3 m')).toEqual(['Hold the ladder.', 'At 3 m it is flat: it reaches 400 cm.']);
  });
});
