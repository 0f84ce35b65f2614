import type { Program } from '../../calculators/program.ts';
import type { Problem } from '../../calculators/inputs.ts';
import { formatNumber } from '../../calculators/quantity/format.ts';

type Field = HTMLInputElement | HTMLSelectElement;

/** The fields of a calculator: their texts, and the sentences beside them. */
export class Fields {
  readonly #fields = new Map<string, Field>();

  readonly #choices: HTMLSelectElement[];

  constructor(root: HTMLElement, program: Program) {
    this.#choices = [...root.querySelectorAll('select')];
    for (const { name } of program.given) {
      const field = root.querySelector<Field>(`[name="${name}"]`);
      if (field) this.#fields.set(name, field);
    }
  }

  /** Fields are disabled until the page can answer them. */
  enable(): void {
    for (const field of [...this.#fields.values(), ...this.#choices]) field.disabled = false;
  }

  texts(): Record<string, string> {
    return Object.fromEntries([...this.#fields].map(([name, field]) => [name, field.value]));
  }

  set(name: string, text: string): void {
    const field = this.#fields.get(name);
    if (field) field.value = text;
  }

  show(problems: readonly Problem[]): void {
    for (const [name, field] of this.#fields) {
      const problem = problems.find((one) => one.given === name);
      const note = document.getElementById(`${field.id}-problem`);
      if (note && note.textContent !== (problem?.message ?? '')) note.textContent = problem?.message ?? '';
      if (problem) {
        field.setAttribute('aria-invalid', 'true');
        field.closest('details')?.setAttribute('open', '');
      } else field.removeAttribute('aria-invalid');
    }
  }
}

/** Arrow keys move the number in a field by one in its second digit, Shift ten times that; the unit stays. */
export function nudge(text: string, up: boolean, large: boolean): string | undefined {
  const match = /^\s*([+−-]?\d+(?:\.\d+)?)(\s*[^,;]*)$/.exec(text);
  if (!match) return undefined;
  const [, digits = '', unit = ''] = match;
  const value = Number(digits.replace('−', '-'));
  const whole = !digits.includes('.') && Math.abs(value) < 20;
  const size = whole ? 1 : 10 ** (Math.floor(Math.log10(Math.abs(value) || 1)) - 1);
  return formatNumber(value + (up ? size : -size) * (large ? 10 : 1), 6) + unit;
}
