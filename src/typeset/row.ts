import { typeset } from '../../calculators/formula/typeset.ts';
import { held, type Line, type Row } from '../../calculators/line.ts';
import { renderTex } from './tex.ts';

/** Numbers set in place of the real ones, so that each real one gets a slot of the right size, shape and class. */
const firstStandIn = 91001;

interface Slot {
  readonly name: string;
  readonly bare: boolean;
}

/**
 * The HTML of a line with its numbers put in. Each number sits in a slot, in the visible half and in the half that is
 * heard: an element with `data-n` (the name) and, where a negative number needs parentheses, `data-held`.
 */
export function renderRow(line: Line, row: Row): string {
  const slots: Slot[] = [];
  const tex = typeset(line.tree, {
    factors: 'dotted',
    name: (name, bare) => String(firstStandIn + slots.push({ name, bare }) - 1),
  });
  return slots.reduce((html, slot, k) => fillSlot(html, firstStandIn + k, slot, row), renderTex(tex));
}

function fillSlot(html: string, standIn: number, { name, bare }: Slot, row: Row): string {
  const text = row.numbers[name] ?? '';
  const mark = `data-n="${name}"${bare ? '' : ' data-held'}`;
  const filled = html.replace(
    new RegExp(`<(span class="[^"]*"|mn)>${standIn}</(span|mn)>`, 'g'),
    (_, open: string, close: string) => `<${open} ${mark}>${bare ? text : held(text)}</${close}>`,
  );
  if (filled.includes(String(standIn))) throw new Error(`missing slot: ${name} on the line of ${tex(html)}`);
  return filled;
}

const tex = (html: string): string => html.replace(/<[^>]*>/g, '').slice(0, 80);
