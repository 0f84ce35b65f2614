import type { Entries } from '../../calculators/inputs.ts';
import { toQuery } from '../../calculators/permalink.ts';
import type { Program } from '../../calculators/program.ts';
import { languageNames, languages } from '../report/code.ts';
import { setText } from './slots.ts';

/**
 * Lets the code blocks of a calculator be copied.
 * @param entries the last inputs that could be used.
 * @returns what shows them in the code.
 */
export function followWith(root: HTMLElement, program: Program, entries: () => Entries | undefined): () => void {
  const show = (): void => {
    const now = entries() ?? {};
    const address = new URL(`/calculators/${program.id}/?${toQuery(program, now)}`, location.href).href;
    for (const name of languageNames) {
      const code = root.querySelector(`[data-language="${name}"] [data-code]`);
      if (code) setText(code, languages[name].write(program, now, address));
    }
  };
  for (const block of root.querySelectorAll('[data-language]')) letCopy(block, show);
  show();
  return show;
}

function letCopy(block: Element, show: () => void): void {
  const button = block.querySelector('button');
  const code = block.querySelector('[data-code]');
  const status = block.querySelector('[data-code-copied]');
  if (!button || !code || !status) return;
  button.disabled = false;
  button.addEventListener('click', () => {
    show();
    navigator.clipboard.writeText(code.textContent).then(
      () => setText(status, 'Copied.'),
      () => {
        getSelection()?.selectAllChildren(code);
        setText(status, 'Copying is not allowed here. The code is selected: copy it from there.');
      },
    );
  });
}
