import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { catalogue } from '../calculators/catalogue.ts';
import { readCheckFile, type CheckFile } from '../src/evidence/check.ts';
import { compareFile, type Row } from '../src/evidence/compare.ts';

const content = join(import.meta.dirname, '..', 'content');
const checksFolder = join(content, 'checks');
const sourcesFolder = join(content, 'sources');

const yamlNames = (folder: string): string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => name.replace(/\.yaml$/, ''))
    .sort();

const readYaml = (folder: string, name: string): unknown => parse(readFileSync(join(folder, `${name}.yaml`), 'utf8'));

const checkFiles: [id: string, CheckFile][] = yamlNames(checksFolder).map((id) => [
  id,
  readCheckFile(readYaml(checksFolder, id)),
]);
const sources = yamlNames(sourcesFolder);

const title = ({ about, of, disagrees }: Row): string => `${about}: ${of}${disagrees ? ' (differs)' : ''}`;

describe.each(yamlNames(checksFolder))('published figures: %s', (id) => {
  const rows = compareFile(readYaml(checksFolder, id)).map((row): [string, Row] => [title(row), row]);

  test.each(rows)('%s', (_, { printed, ours, unit, difference, tolerance, agrees, disagrees }) => {
    const why = `${printed.join(', ')} ${unit} printed, ${ours.join(', ')} ours, ${difference} apart, ${tolerance} allowed`;
    expect(ours.length, why).toBe(printed.length);
    expect(ours.every(Number.isFinite), why).toBe(true);
    expect(agrees, why).toBe(disagrees === undefined);
    expect(Math.abs(difference) <= tolerance, why).toBe(agrees);
  });
});

describe('the collection of checks', () => {
  test('there is one file for every calculator, named after it', () => {
    expect(checkFiles.map(([id]) => id)).toEqual(catalogue.map(({ id }) => id).sort());
    expect(checkFiles.map(([, { calculator }]) => calculator)).toEqual(checkFiles.map(([id]) => id));
  });

  test.each(checkFiles)('%s: at least three checks from two sources rest on more than memory', (_, { checks }) => {
    const seen = checks.filter(({ known, disagrees }) => known !== 'memory' && disagrees === undefined);
    expect(seen.length).toBeGreaterThanOrEqual(3);
    expect(new Set(seen.map(({ source }) => source)).size).toBeGreaterThanOrEqual(2);
  });

  test.each(checkFiles)('%s: every source cited is in the bibliography', (_, { checks }) => {
    expect(checks.map(({ source }) => source).filter((id) => !sources.includes(id))).toEqual([]);
  });

  test('every source is cited', () => {
    const cited = readdirSync(content, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && !join(entry.parentPath, entry.name).startsWith(sourcesFolder))
      .map((entry) => readFileSync(join(entry.parentPath, entry.name), 'utf8'))
      .join('\n');
    const words = new Set(cited.split(/[^\w-]+/));
    expect(sources.filter((id) => !words.has(id))).toEqual([]);
  });
});

const tyre = {
  about: 'a tyre',
  source: 'a-book',
  place: 'p. 1',
  known: 'read',
  given: { v: '15.0 m/s', phi: '0 deg', r: '0.300 m' },
  compare: [{ of: 'omega_roll', unit: 'rad/s', printed: '50.0' }],
};

const fileWith = (change: object): unknown => ({ calculator: 'roll-ratio', checks: [{ ...tyre, ...change }] });
const fileOf = (change: object): unknown => fileWith({ compare: [{ ...tyre.compare[0], ...change }] });
const wheels = (printed: unknown): unknown => ({
  calculator: 'wheel-speeds',
  checks: [
    {
      ...tyre,
      given: { n: '3', alpha: '0 deg', R: '1 m', r: '1 m', v: '1 m/s', theta: '90 deg', Omega: '0 rad/s' },
      compare: [{ of: 'u', unit: 'm/s', printed }],
    },
  ],
});

describe('comparing', () => {
  test('a row says what was compared and how it ended', () => {
    const { about, source, place, known, given } = tyre;
    const asked = { calculator: 'roll-ratio', about, source, place, known, given, of: 'omega_roll', unit: 'rad/s' };
    const found = { printed: ['50.0'], ours: [50], difference: 0, tolerance: 0.05, agrees: true };
    expect(compareFile(fileWith({}))).toEqual([{ ...asked, ...found }]);
  });

  test.each([
    ['half the last digit is allowed', '50.04', 0.005, false],
    ['a slack takes its place', '50.04', 0.1, true],
    ['whole numbers are good to a half', '50', 0.5, true],
    ['an expression is exact', '15 / 0.3', 5e-8, true],
    ['an expression has no half digit', '15.1 / 0.3', 15.1 / 0.3e9, false],
  ])('%s', (_, printed, tolerance, agrees) => {
    const slack = tolerance === 0.1 ? { slack: tolerance } : {};
    const checks = [{ ...tyre, note: 'why', compare: [{ of: 'omega_roll', unit: 'rad/s', printed, ...slack }] }];
    const [row] = compareFile({ calculator: 'roll-ratio', checks });
    expect(row?.tolerance).toBeCloseTo(tolerance, 12);
    expect(row?.agrees).toBe(agrees);
  });

  test('a list is compared wheel by wheel, and one wheel off is enough to disagree', () => {
    expect(compareFile(wheels(['1', '-1/2', '-1/2']))[0]?.agrees).toBe(true);
    const [row] = compareFile(wheels(['1', '-1/2', '1/2']));
    expect(row?.agrees).toBe(false);
    expect(row?.difference).toBeCloseTo(-1, 12);
  });

  test('with an expression in a list its whole numbers are exact too', () => {
    expect(compareFile(wheels(['1', '-1/2', '-1/2']))[0]?.tolerance).toBe(1e-9);
  });

  test('a figure that is marked as disagreeing and does is a row like others', () => {
    const checks = [{ ...tyre, disagrees: 'a slip', compare: [{ of: 'omega_roll', unit: 'rad/s', printed: '60.0' }] }];
    const [row] = compareFile({ calculator: 'roll-ratio', checks });
    expect(row).toMatchObject({ agrees: false, disagrees: 'a slip', difference: -10 });
  });
});

describe('a broken file is refused', () => {
  test.each<[string, unknown, RegExp]>([
    ['no file', undefined, /names with values wanted/],
    ['a list', [], /names with values wanted/],
    ['no checks', { calculator: 'roll-ratio' }, /missing: checks/],
    ['an empty list of checks', { calculator: 'roll-ratio', checks: [] }, /list is empty/],
    ['an unknown key beside the checks', { calculator: 'roll-ratio', checks: [tyre], x: 1 }, /unknown: x/],
    ['an unknown calculator', { calculator: 'roll', checks: [tyre] }, /unknown calculator: roll/],
    [
      'a missing key',
      { calculator: 'roll-ratio', checks: [{ about: 'a tyre', source: 'a-book' }] },
      /number 1: missing: place, known, given, compare/,
    ],
    ['an unknown key', fileWith({ placed: 'p. 1' }), /number 1: unknown: placed/],
    ['a blank text', fileWith({ about: ' ' }), /about: the text is empty/],
    ['an unknown way of knowing', fileWith({ known: 'guessed' }), /read, memory or derived/],
    ['a given that is a bare number', fileWith({ given: { v: 15 } }), /given: v: a text wanted/],
    ['givens as a list', fileWith({ given: [] }), /given: names with values wanted/],
    ['an unknown given', fileWith({ given: { ...tyre.given, w: '1' } }), /unknown given: w/],
    ['a given out of range', fileWith({ given: { ...tyre.given, r: '-1 m' } }), /wheel radius/],
    ['a given left at its usual value', fileWith({ given: { v: '15.0 m/s', r: '0.300 m' } }), /depends on phi/],
    ['an empty comparison', fileWith({ compare: [] }), /compare: the list is empty/],
    ['a comparison without its formula', fileWith({ compare: [{ unit: '', printed: '1' }] }), /missing: of/],
    ['an unknown key in a comparison', fileOf({ tolerance: 1 }), /compare 1: unknown: tolerance/],
    ['an unknown name', fileOf({ of: 'omega_wheel' }), /unknown name: omega_wheel/],
    ['a formula that cannot be read', fileOf({ of: 'omega_roll *' }), /ends too soon/],
    ['an unknown unit', fileOf({ unit: 'furlong' }), /unknown unit: furlong/],
    ['a unit of something else', fileOf({ unit: 'm/s' }), /m\/s is no unit for it/],
    ['a unit left out', fileOf({ unit: null }), /unit: a text wanted/],
    ['a printed number that is no text', fileOf({ printed: 50.0 }), /printed: a text wanted/],
    ['a printed text that is no number', fileOf({ printed: 'fifty' }), /unknown name: fifty/],
    ['a list for one number', fileOf({ printed: ['50.0'] }), /one is a list/],
    ['one number for a list', wheels('1'), /one is a list/],
    ['a wheel too few', wheels(['1', '-1/2']), /gives 3, printed are 2/],
    ['an empty list of figures', wheels([]), /printed: the list is empty/],
    ['a figure nearly anything agrees with', wheels(['0', '1', '1']), /too coarse/],
    ['a slack without a reason', fileOf({ slack: 0.1 }), /slack needs its reason/],
    ['a slack of nothing', fileOf({ slack: 0 }), /a number above 0 wanted/],
    ['a slack that is a text', fileOf({ slack: '0.1' }), /a number above 0 wanted/],
    ['disagreement that is none', fileWith({ disagrees: 'a slip' }), /marked as disagreeing, and agrees/],
  ])('%s', (_, parsed, problem) => {
    expect(() => compareFile(parsed)).toThrow(problem);
  });

  test('inputs that are refused together', () => {
    const given = { R: '1 m', r: '1 m', omega_max: '1 rad/s', Omega: '2 rad/s' };
    const compare = [{ of: 'v_worst', unit: 'm/s', printed: '1.0' }];
    expect(() => compareFile({ calculator: 'speed-envelope', checks: [{ ...tyre, given, compare }] })).toThrow(
      /too high/,
    );
  });
});
