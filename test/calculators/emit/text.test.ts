import { describe, expect, test } from 'vitest';
import type { Calculator } from '../../../calculators/calculator.ts';
import { calculatorOf, catalogue } from '../../../calculators/catalogue.ts';
import { ascii } from '../../../calculators/emit/ascii.ts';
import { asC } from '../../../calculators/emit/c.ts';
import { identifiers } from '../../../calculators/emit/identifiers.ts';
import { asPython } from '../../../calculators/emit/python.ts';
import { asCells } from '../../../calculators/emit/spreadsheet.ts';
import { readInputs, usualEntries } from '../../../calculators/inputs.ts';
import { programOf } from '../../../calculators/program.ts';
import { smallCalculators } from './small-calculators.ts';

const writers = { C: asC, Python: asPython, cells: asCells };
const named = Object.entries(writers);
const address = '/calculators/somewhere/?edition=1';
const small = (id: string): Calculator => {
  const found = smallCalculators.find((one) => one.id === id);
  if (!found) throw new Error(`unknown calculator: ${id}`);
  return found;
};
const usual = (calculator: Calculator): string[] =>
  named.map(([, write]) => write(calculator, usualEntries(calculator.given), address));

describe.each(named)('%s', (_, write) => {
  test.each(catalogue.map((one): [string, Calculator] => [one.id, one]))(
    '%s says where it is from',
    (id, calculator) => {
      const text = write(calculator, usualEntries(calculator.given), address);
      expect(text).toContain(`${id}, edition ${calculator.edition}`);
      expect(text).toContain(address);
      expect(text).toMatch(/SI units/);
      expect(text).toMatch(/radians/);
      expect(text).toMatch(/[Rr]ounding dust/);
      for (const { means } of [...calculator.given, ...calculator.steps]) {
        expect(text).toContain(write === asPython ? means : ascii(means));
      }
    },
  );

  test('the program of a page gives the same text as its calculator', () => {
    for (const calculator of [...catalogue, ...smallCalculators]) {
      const entries = usualEntries(calculator.given);
      expect(write(programOf(calculator), entries, address)).toBe(write(calculator, entries, address));
    }
  });
});

test('what C code and cells say is ASCII, but for letters', () => {
  expect(ascii('a wheel’s “drop” – 45° × 2 · 3 ± 1…, −µ')).toBe(`a wheel's "drop" - 45 deg x 2 * 3 +/- 1..., -µ`);
});

test('the reader’s own numbers are the example', () => {
  const calculator = calculatorOf('wheel-speeds');
  const inputs = readInputs(calculator.given, { theta: '30 deg', r: '2 in', n: '4' });
  if (!inputs.ok) throw new Error('unreadable');
  const [c = '', python = '', cells = ''] = named.map(([, write]) => write(calculator, inputs.entries, address));
  expect(c).toContain('.r = 0.0508f, // 2 in');
  expect(c).toContain('.theta = 0.523598776f, // 30 deg');
  expect(python).toContain('r=0.0508,  # 2 in');
  expect(python).toContain('theta=math.radians(30),  # 30 deg');
  expect(python).toContain('theta=math.radians(90),  # heading of travel');
  expect(cells).toContain(',0.0508\r\n');
  expect(cells).toContain('=RADIANS(30)');
  expect(cells).toContain('wheel 4\r\n');
});

describe('names', () => {
  test('taken ones get an underscore, never the name of another', () => {
    const taken = ['int', 'y1'];
    expect([...identifiers(['int', 'int_', 'y1', 'v'], taken)]).toEqual([
      ['int', 'int__'],
      ['int_', 'int_'],
      ['y1', 'y1_'],
      ['v', 'v'],
    ]);
  });

  test('words of the languages and of their libraries are kept clear of', () => {
    const [c = '', python = '', cells = ''] = usual(small('a-root'));
    expect(c).toContain('const float gamma_ = square(y) * (2.0f + lambda);');
    expect(c).toContain('result->y1_ = y1_;');
    expect(python).toContain('gamma = y ** 2 * (2 + lambda_)');
    expect(python).toContain('"y1": y1,');
    expect(cells).toContain('\r\nlambda,');
  });
});

describe('formulas keep their shape', () => {
  const wheelSpeeds = usual(calculatorOf('wheel-speeds'));
  const mix = usual(calculatorOf('mix-and-limit'));
  const everything = usual(small('every-function'));

  test('C', () => {
    expect(wheelSpeeds[0]).toContain('u_free[wheel] = v * c_i[wheel];');
    expect(wheelSpeeds[0]).toContain('const float omega_top = largest_of(omega_abs, wheels);');
    expect(mix[0]).toContain('direction[wheel] = command[wheel] < 0.0f ? 0.0f : 1.0f;');
    expect(everything[0]).toContain('0.523598776f /* 30 deg */');
    expect(everything[0]).not.toMatch(/\b(double|malloc|printf|M_PI)\b/);
  });

  test('Python', () => {
    expect(wheelSpeeds[1]).toContain('u_free = [v * c_i[wheel] for wheel in range(wheels)]');
    expect(mix[1]).toContain('k_limit = 1 / max(1, mix_top)');
    expect(mix[1]).toContain('direction = [0 if command[wheel] < 0 else 1 for wheel in range(wheels)]');
    expect(everything[1]).toContain('1 if (a[wheel] > 0 and b[wheel] < 1) or static >= 0.2 else 2');
  });

  test('cells', () => {
    expect(wheelSpeeds[2]).toMatch(/,=\$D\$\d+ \* D\d+,=\$D\$\d+ \* E\d+,=\$D\$\d+ \* F\d+\r\n$/);
    expect(wheelSpeeds[2]).toMatch(/=MAX\(\$D\$(\d+):\$F\$\1\)/);
    expect(mix[2]).toMatch(/"=IF\(D\d+<-1e-12,0,1\)"/);
  });

  test('sums that a comparison hangs on drop dust, others are plain', () => {
    const python = usual(calculatorOf('angled-rollers'))[1] ?? '';
    expect(mix[1]).toContain('plus(alpha, (i[wheel] - 1) * math.radians(360) / n)');
    expect(python).toContain('ahead_i = [v_x - y_i[wheel] * Omega for wheel in range(wheels)]');
    expect(usual(calculatorOf('speed-resolution'))[1]).not.toContain('DUST');
  });
});
