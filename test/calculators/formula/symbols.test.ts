import katex from 'katex';
import { describe, expect, test } from 'vitest';
import { symbolTex, symbolText } from '../../../calculators/formula/symbols.ts';

describe('names as symbols', () => {
  test.each([
    ['v', 'v', 'v'],
    ['v_x', 'v_{x}', 'v_x'],
    ['z1', 'z_{1}', 'z_1'],
    ['omega_max', '\\omega_{\\mathrm{max}}', 'ω_max'],
    ['Omega', '\\Omega', 'Ω'],
    ['Omega_limit', '\\Omega_{\\mathrm{limit}}', 'Ω_limit'],
    ['phi', '\\varphi', 'φ'],
    ['epsilon', '\\varepsilon', 'ε'],
    ['ratio', '\\mathrm{ratio}', 'ratio'],
    ['best_over_worst', '\\mathrm{best}_{\\mathrm{over}\\,\\mathrm{worst}}', 'best_over_worst'],
    ['theta2_phi', '\\theta_{2\\,\\varphi}', 'θ_2_φ'],
    ['constructor', '\\mathrm{constructor}', 'constructor'],
    ['toString_valueOf', '\\mathrm{toString}_{\\mathrm{valueOf}}', 'toString_valueOf'],
  ])('%s', (name, tex, text) => {
    expect(symbolTex(name)).toBe(tex);
    expect(symbolText(name)).toBe(text);
  });

  test.each([
    ['u', 'u_{i}', 'u_i'],
    ['u_x', 'u_{x\\,i}', 'u_x_i'],
    ['alpha_i', '\\alpha_{i}', 'α_i'],
    ['i', 'i', 'i'],
    ['i_e', 'i_{e}', 'i_e'],
  ])('%s of each wheel', (name, tex, text) => {
    expect(symbolTex(name, true)).toBe(tex);
    expect(symbolText(name, true)).toBe(text);
  });

  test.each(['v', 'omega_max', 'phi', 'ratio', 'best_over_worst', 'theta2_phi', 'constructor'])(
    '%s can be set',
    (name) => {
      for (const list of [false, true]) {
        const html = katex.renderToString(symbolTex(name, list), { throwOnError: true, strict: 'error' });
        expect(html).toContain('katex');
      }
    },
  );
});
