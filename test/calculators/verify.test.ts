import { describe, expect, test } from 'vitest';
import { defineCalculator, given, type Calculator, type CalculatorSource } from '../../calculators/calculator.ts';
import { faultsOf } from '../../calculators/verify.ts';

const v = given('v', 'speed', 'velocity', '0.6 m/s', ['0 m/s', '10 m/s']);
const r = given('r', 'radius', 'length', '60 mm', ['1 mm', '1 m']);
const turn = {
  name: 'omega',
  means: 'wheel speed',
  quantity: 'angular velocity',
  unit: 'rpm',
  formula: 'v / r',
} as const;

const good: CalculatorSource = {
  id: 'small',
  edition: 1,
  module: 'motors',
  title: 'Small',
  question: 'How fast?',
  given: [v, r],
  steps: [turn],
  results: ['omega'],
  limits: [],
};
const define = (change: Partial<CalculatorSource>): Calculator => defineCalculator({ ...good, ...change });
const faults = (change: Partial<CalculatorSource>): string[] => faultsOf(define(change));

test('a sound calculator has no faults', () => {
  expect(faults({})).toEqual([]);
});

describe('what the author got wrong is found', () => {
  test.each<[string, Partial<CalculatorSource>, string]>([
    [
      'a formula of another dimension',
      { steps: [{ ...turn, formula: 'v * r' }] },
      'omega: the formula gives m^2 s^-1, not s^-1',
    ],
    [
      'a sum of metres and seconds',
      { steps: [{ ...turn, formula: 'v / r + v / r^2 ' }] },
      'omega: invalid dimensions: sum',
    ],
    [
      'a condition that compares unlike things',
      { cautions: [{ when: 'v > r', says: 'Oh.' }] },
      'a condition: invalid dimensions: comparison',
    ],
    ['a given without use', { given: [v, r, given('q', 'other', 'length', '1 m', ['0 m', '2 m'])] }, 'unused given: q'],
    [
      'a sentence with a name nobody knows',
      { cautions: [{ says: 'At {speed} it flies.' }] },
      'unknown value in a sentence: speed',
    ],
    [
      'usual values that are refused',
      { requires: [{ given: 'v', holds: 'v < 0', says: 'Too fast.' }] },
      'usual values: Too fast.',
    ],
    [
      'a result that is no number',
      { steps: [{ ...turn, formula: 'v / (r - r)' }] },
      'usual values: There is no wheel speed',
    ],
    [
      'a name kept for links',
      { given: [v, r, given('edition', 'edition', 'ratio', '1', ['0', '2'])] },
      'invalid name: edition is kept for links',
    ],
  ])('%s', (_, change, fault) => {
    expect(faults(change)).toEqual(expect.arrayContaining([expect.stringContaining(fault)]));
  });

  test.each<[string, Partial<CalculatorSource>, string]>([
    ['a given named twice', { given: [v, r, v] }, 'invalid calculator: a given named twice (small)'],
    ['a step with the name of a given', { steps: [{ ...turn, name: 'v' }] }, 'invalid step: v is taken (small)'],
    ['a step with the name of another', { steps: [turn, turn] }, 'invalid step: omega is taken (small)'],
    ['a result that is no step', { results: ['speed'] }, 'unknown result: speed (small)'],
    [
      'a formula with a later name',
      {
        steps: [
          { ...turn, formula: 'w' },
          { ...turn, name: 'w' },
        ],
      },
      'unknown name: w',
    ],
    ['a unit of something else', { steps: [{ ...turn, unit: 'mm' }] }, 'unknown unit: mm (angular velocity)'],
    ['a condition with an unknown name', { cautions: [{ when: 'w > 0', says: 'Oh.' }] }, 'unknown name: w'],
  ])('%s, when it is defined', (_, change, message) => {
    expect(() => define(change)).toThrow(message);
  });

  test('a given with a usual value or range that cannot be read', () => {
    expect(() => given('v', 'speed', 'velocity', 'fast', ['0', '1'])).toThrow(
      'invalid given: v: “fast” is not a number',
    );
    expect(() => given('v', 'speed', 'velocity', '1 m/s', ['0', '1 kg'])).toThrow(
      'invalid given: v: “kg” is not a unit',
    );
  });
});
