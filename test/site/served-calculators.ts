import { describe, expect, test } from 'vitest';
import type { Calculator } from '../../calculators/calculator.ts';
import { catalogue } from '../../calculators/catalogue.ts';
import { readInputs } from '../../calculators/inputs.ts';
import { toQuery } from '../../calculators/permalink.ts';
import { languageNames, languages, type LanguageName } from '../../src/report/code.ts';
import { documentOf, pagesWith } from './built.ts';
import { calculatorPage, expectWhole, expectWorked } from './calculator.ts';
import { actAndRead, type Shown } from './shown.ts';

/** A browser reads every line break of a page as one sign. */
export const lines = (text: string | null | undefined): string => (text ?? '').replaceAll('\r\n', '\n');

/** What a calculator is in a language, with some texts in its fields. */
export function written(
  calculator: Calculator,
  name: LanguageName,
  texts: Readonly<Record<string, string>>,
  site = '',
): string {
  const inputs = readInputs(calculator.given, texts);
  if (!inputs.ok) throw new Error('unreadable');
  const at = `${site}/calculators/${calculator.id}/?${toQuery(calculator, inputs.entries)}`;
  return lines(languages[name].write(calculator, inputs.entries, at));
}

/** What a reader without JavaScript gets, read from the pages as the server wrote them. */
export function readServedCalculators(): void {
  describe.each(pagesWith('<crab-'))('%s as it is served', (path) => {
    const calculators = [...documentOf(path).querySelectorAll('crab-calculator')];

    test('has working and results as the core gives them, with figure and plot', () => {
      expect(calculators.length + documentOf(path).querySelectorAll('crab-question').length).toBeGreaterThan(0);
      for (const root of calculators) {
        const [shown] = JSON.parse(actAndRead(root, [{}])) as Shown[];
        if (!shown) throw new Error('Nothing was read.');
        const plot = root.querySelector('[data-plot]');
        if (plot) expectWhole(shown);
        else expectWorked(shown);
        expect(shown.results.length).toBeGreaterThan(0);
        expect(shown.steps.flatMap(({ rows }) => rows).length).toBeGreaterThan(0);
        expect(root.querySelectorAll('[data-drawing] svg').length).toBe(shown.figure === '' ? 0 : 1);
        expect(root.querySelectorAll('noscript code').length).toBeGreaterThan(0);
        if (plot) expect(plot.querySelectorAll('svg path').length).toBeGreaterThan(3);
      }
    });

    test('lets nothing be filled or chosen that would not answer', () => {
      const controls = documentOf(path).querySelectorAll('main :is(input, select, button)');
      // The style sheet hides what copies: no-script.test.ts looks at that.
      const dead = [...controls].filter((one) => !one.matches('[type=radio], [disabled], [data-copy]'));
      expect(dead.map((one) => one.outerHTML)).toEqual([]);
    });

    test('has the answer of each question, with its working', () => {
      for (const question of documentOf(path).querySelectorAll('crab-question')) {
        const answer = question.querySelector('details p')?.textContent ?? '';
        expect(answer).toMatch(/\S/);
        expect(question.textContent).toContain('Its working, line by line');
      }
    });
  });

  test.each(catalogue)('$id: the server writes it in each language, with the usual inputs', (calculator) => {
    const page = documentOf(calculatorPage(calculator.id));
    for (const name of languageNames) {
      const shown = page.querySelector(`[data-language=${name}] [data-code]`)?.textContent;
      expect(lines(shown)).toBe(written(calculator, name, {}));
    }
  });
}
