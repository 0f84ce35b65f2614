import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { defineCalculator, given, type Calculator } from '../../calculators/calculator.ts';
import { catalogue } from '../../calculators/catalogue.ts';
import { namesBehind } from '../../calculators/dependencies.ts';
import type { Value, Values } from '../../calculators/formula/evaluate.ts';
import { readInputs, toValues, type Entries } from '../../calculators/inputs.ts';
import { solve } from '../../calculators/solve.ts';
import { describeShares, printSpread, spreadsOf } from '../../calculators/uncertainty.ts';

const shell = {
  edition: 1,
  module: 'wheel-kinematics',
  title: 'For a test',
  question: 'Does it hold?',
  cautions: [],
  limits: [],
} as const;

const length = (name: string) => given(name, name, 'length', '1 m', ['0 m', '1000 m']);

function spreadIn(calculator: Calculator, texts: Record<string, string>) {
  const inputs = readInputs(calculator.given, texts);
  if (!inputs.ok) throw new Error(inputs.problems.map(({ message }) => message).join());
  const { values } = solve(calculator, inputs.values);
  return { values, spreads: spreadsOf(calculator, inputs.entries, values) };
}

describe('published examples of the propagation of errors', () => {
  // J. Nichols: Lab Manual, Propagation of Uncertainties, public repository PhysicsLabs, worked example after (R3); read.
  test('a volume of 100 x 50 x 20, each ± 0.5, is 100 000 ± 2738.6', () => {
    const volume = defineCalculator({
      ...shell,
      id: 'volume',
      given: [length('x'), length('y'), length('z'), length('unit')],
      steps: [
        { name: 'face', means: 'face', quantity: 'area', unit: 'm^2', formula: 'x * y' },
        { name: 'cubes', means: 'unit cubes in it', quantity: 'ratio', unit: '', formula: 'face * z / unit^3' },
      ],
      results: ['cubes'],
    });
    const { values, spreads } = spreadIn(volume, { x: '100 ± 0.5 m', y: '50 ± 0.5 m', z: '20 ± 0.5 m' });
    expect(values['cubes']).toBeCloseTo(100_000, 6);
    expect(Number(spreads.get('cubes')?.spread)).toBeCloseTo(2738.6, 1);
    expect(describeShares(spreads.get('cubes')?.shares ?? [])).toBe('z 83 %, y 13 %, x 3 %');
  });

  // J. R. Taylor: An Introduction to Error Analysis, 2nd edition, University Science Books 1997, section 3.9 (a pendulum);
  // from memory: l = 92.95 ± 0.1 cm, T = 1.936 ± 0.004 s give g = 979 ± 4 cm/s².
  test('a pendulum gives g = 979 ± 4 cm/s²', () => {
    const pendulum = defineCalculator({
      ...shell,
      id: 'pendulum',
      given: [length('l'), given('T_0', 'period', 'time', '1 s', ['0.1 s', '10 s'])],
      steps: [
        { name: 'g', means: 'free fall', quantity: 'acceleration', unit: 'm/s^2', formula: '4 * pi^2 * l / T_0^2' },
      ],
      results: ['g'],
    });
    const { values, spreads } = spreadIn(pendulum, { l: '92.95 ± 0.1 cm', T_0: '1.936 ± 0.004 s' });
    expect(Math.round(100 * Number(values['g']))).toBe(979);
    expect(Math.round(100 * Number(spreads.get('g')?.spread))).toBe(4);
  });
});

describe('a root carries the ± through', () => {
  test('x with x² = A has ± of ΔA / 2x', () => {
    const root = defineCalculator({
      ...shell,
      id: 'root',
      given: [given('A', 'area', 'area', '4 m^2', ['0.01 m^2', '100 m^2'])],
      steps: [
        {
          name: 'x',
          means: 'side',
          quantity: 'length',
          unit: 'm',
          solve: 'x^2',
          equals: 'A',
          between: ['0 * sqrt(A)', '10 * sqrt(A)'],
        },
      ],
      results: ['x'],
    });
    expect(Number(spreadIn(root, { A: '4 ± 0.2 m^2' }).spreads.get('x')?.spread)).toBeCloseTo(0.05, 9);
  });
});

/** A standard normal number from two uniform ones (Box and Muller), so that a seed decides it. */
function* normals(seed: number): Generator<number, never> {
  let state = seed >>> 0;
  const uniform = (): number => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
  for (;;) yield Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}

/**
 * Every smooth given with a ± of a thousandth, moved off its usual value: at 90° a sine has no slope, at a full stick a
 * limit begins, and the lesser of two alike has none.
 */
function withSpreads(calculator: Calculator): Entries {
  return Object.fromEntries(
    calculator.given.map(({ name, usual, whole, options }, k) => {
      const moved = (x: number): number => (0.93 - k / 400) * x + (x === 0 ? 0.7 : 0);
      const spread = (x: number): number => 1e-3 * Math.abs(moved(x));
      if (whole || options) return [name, usual];
      const { value, unit } = usual;
      return typeof value === 'number'
        ? [name, { value: moved(value), unit, spread: spread(value) }]
        : [name, { value: value.map(moved), unit, spread: value.map(spread) }];
    }),
  );
}

/** Steps that are rounded, or worked out from one that is: they jump, so they have no slope. */
function jumping({ steps }: Calculator): ReadonlySet<string> {
  const jumps = new Set<string>();
  for (const step of steps) {
    const rounded = step.kind === 'formula' && /\b(round|floor|ceil)\(/.test(step.formula);
    if (rounded || namesBehind(step).some((name) => jumps.has(name))) jumps.add(step.name);
  }
  return jumps;
}

/** The ± of the givens in SI: entries whose values are their spreads. */
const spreadValues = (calculator: Calculator, entries: Entries): Values =>
  toValues(
    calculator.given,
    Object.fromEntries(
      Object.entries(entries).map(([name, { spread, unit, value }]) => [name, { unit, value: spread ?? nil(value) }]),
    ),
  );

const nil = (value: Value): Value => (typeof value === 'number' ? 0 : value.map(() => 0));

const trials = 4000;

/** Results of many trials: for each step and wheel, what was drawn. */
function monteCarlo(calculator: Calculator, centre: Values, spreads: Values): ReadonlyMap<string, number[]> {
  const random = normals(20_261_125);
  const seen = new Map<string, number[]>();
  for (let k = 0; k < trials; k++) {
    const draw = (x: number, by: number): number => x + by * random.next().value;
    const inputs = Object.fromEntries(
      Object.entries(centre).map(([name, value]) => {
        const by = spreads[name] ?? 0;
        return [
          name,
          typeof value === 'number' ? draw(value, Number(by)) : value.map((x, i) => draw(x, [by].flat()[i] ?? NaN)),
        ];
      }),
    );
    const { values } = solve(calculator, inputs);
    for (const { name } of calculator.steps) {
      [values[name] ?? NaN].flat().forEach((x, i) => {
        const key = `${name} ${i}`;
        const list = seen.get(key);
        if (list) list.push(x);
        else seen.set(key, [x]);
      });
    }
  }
  return seen;
}

function deviationOf(all: readonly number[]): number {
  const mean = all.reduce((sum, one) => sum + one, 0) / all.length;
  return Math.sqrt(all.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (all.length - 1));
}

describe.each(catalogue.map((calculator) => [calculator.id, calculator] as const))('%s', (_, calculator) => {
  test('the ± of every smooth step agrees with a Monte Carlo', () => {
    const entries = withSpreads(calculator);
    const { values, refusal } = solve(calculator, toValues(calculator.given, entries));
    expect(refusal).toBeUndefined();
    const centre = toValues(calculator.given, entries);
    const drawn = monteCarlo(calculator, centre, spreadValues(calculator, entries));
    const predicted = spreadsOf(calculator, entries, values);
    const jumps = jumping(calculator);
    for (const { name } of calculator.steps.filter((step) => step.quantity !== 'count' && !jumps.has(step.name))) {
      [values[name] ?? NaN].flat().forEach((x, i) => {
        const deviation = deviationOf(drawn.get(`${name} ${i}`) ?? []);
        const spread = [predicted.get(name)?.spread ?? 0].flat()[i] ?? 0;
        // A standard deviation from N draws scatters by 1/sqrt(2N), here 1.1 %; five times that is allowed, and a little
        // for the curvature that a slope leaves out.
        const allowed = 0.056 * spread + 2e-6 * Math.abs(x);
        expect(
          Math.abs(deviation - spread),
          `${name} ${i + 1}: ${deviation} drawn, ${spread} predicted`,
        ).toBeLessThanOrEqual(allowed);
      });
    }
    expect(predicted.size).toBeGreaterThan(0);
  }, 30_000);
});

describe('printing', () => {
  test('the ± has two digits and the value ends at the same place', () => {
    expect(printSpread(5.004, 0.0417, 'angular velocity', 'rad/s')).toBe('5.004 ± 0.042 rad/s');
    expect(printSpread(-0.3, 0.006, 'velocity', 'm/s')).toBe('−0.3000 ± 0.0060 m/s');
    expect(printSpread(2, 0, 'length', 'm')).toBe('2 m');
  });

  test('any value and ± print without NaN', () => {
    fc.assert(
      fc.property(
        fc.double({ noNaN: true, min: -1e9, max: 1e9 }),
        fc.double({ noNaN: true, min: 0, max: 1e9 }),
        (x, by) => {
          expect(printSpread(x, by, 'length', 'm')).not.toMatch(/NaN|Infinity|undefined/);
        },
      ),
    );
  });
});
