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
  const standIn = (name: string, bare: boolean): number => {
    const known = slots.findIndex((slot) => slot.name === name && slot.bare === bare);
    return firstStandIn + (known < 0 ? slots.push({ name, bare }) - 1 : known);
  };
  // Braces keep the digits together: an exponent would else take the last one only.
  const tex = typeset(line.tree, { factors: 'dotted', name: (name, bare) => `{${standIn(name, bare)}}` });
  return slots.reduce((html, slot, k) => fillSlot(html, firstStandIn + k, slot, row), renderTex(tex));
}

function fillSlot(html: string, standIn: number, { name, bare }: Slot, row: Row): string {
  const text = row.numbers[name] ?? '';
  const mark = `data-n="${name}"${bare ? '' : ' data-held'}`;
  const found = { span: 0, mn: 0 };
  const filled = html.replace(
    new RegExp(`<((span|mn)(?: class="[^"]*")?)>${standIn}</\\2>`, 'g'),
    (_, open: string, tag: keyof typeof found) => {
      found[tag]++;
      return `<${open} ${mark}>${bare ? text : held(text)}</${tag}>`;
    },
  );
  // As often in the half that is seen as in the half that is heard.
  if (found.span === 0 || found.span !== found.mn)
    throw new Error(`missing slot: ${name} in ${html.replace(/<[^>]*>/g, ' ')}`);
  return filled;
}
