import type { Given } from '../../calculators/calculator.ts';
import type { Program } from '../../calculators/program.ts';
import { readGiven, toValues, type Problem, type ReadInputs } from '../../calculators/inputs.ts';
import type { Entry } from '../../calculators/quantity/parse.ts';
import { formatNumber } from '../../calculators/quantity/format.ts';
import { TextPlace } from './slots.ts';

type Field = HTMLInputElement | HTMLSelectElement;

/** A text, and what it was read as: an entry, or the sentence that says what is wrong. */
interface Reading {
  readonly text: string;
  readonly as: Entry | string;
}

/** The fields of a calculator: their texts, and the sentences beside them. */
export class Fields {
  readonly #givens: readonly Given[];
  readonly #fields = new Map<string, Field>();
  readonly #notes = new Map<string, TextPlace>();
  readonly #readings = new Map<string, Reading>();
  readonly #choices: HTMLSelectElement[];

  constructor(root: HTMLElement, program: Program) {
    this.#choices = [...root.querySelectorAll('select')];
    this.#givens = program.given;
    for (const { name } of program.given) {
      const field = root.querySelector<Field>(`[name="${name}"]`);
      if (!field) continue;
      this.#fields.set(name, field);
      const note = document.getElementById(`${field.id}-problem`);
      if (note) this.#notes.set(name, new TextPlace(note));
    }
  }

  /** Fields are disabled until the page can answer them. */
  enable(): void {
    for (const field of [...this.#fields.values(), ...this.#choices]) field.disabled = false;
  }

  read(): ReadInputs {
    const entries: Record<string, Entry> = {};
    const problems: Problem[] = [];
    for (const given of this.#givens) {
      const read = this.#readOne(given);
      if (typeof read === 'string') problems.push({ given: given.name, message: read });
      else entries[given.name] = read;
    }
    return problems.length > 0
      ? { ok: false, problems }
      : { ok: true, entries, values: toValues(this.#givens, entries) };
  }

  /** A text that stands is not read again. */
  #readOne(given: Given): Entry | string {
    const field = this.#fields.get(given.name);
    if (!field) return given.usual;
    const known = this.#readings.get(given.name);
    if (known?.text === field.value) return known.as;
    const as = readGiven(given, field.value);
    this.#readings.set(given.name, { text: field.value, as });
    return as;
  }

  set(name: string, text: string): void {
    const field = this.#fields.get(name);
    if (field) field.value = text;
  }

  show(problems: readonly Problem[]): void {
    for (const [name, field] of this.#fields) {
      const problem = problems.find((one) => one.given === name);
      this.#notes.get(name)?.show(problem?.message ?? '');
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
