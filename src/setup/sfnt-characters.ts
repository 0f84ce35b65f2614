/** The code points that a font maps to a glyph, read from the `cmap` table of its uncompressed form. */
export function sfntCharacters(font: Uint8Array): Set<number> {
  const view = new DataView(font.buffer, font.byteOffset, font.byteLength);
  const cmap = tableOffset(view, 'cmap');
  const codes = new Set<number>();
  const subtables = view.getUint16(cmap + 2);
  for (let i = 0; i < subtables; i += 1) {
    const subtable = cmap + view.getUint32(cmap + 8 + 8 * i);
    const format = view.getUint16(subtable);
    if (format === 4) addSegments(view, subtable, codes);
    if (format === 12) addGroups(view, subtable, codes);
  }
  return codes;
}

function tableOffset(view: DataView, tag: string): number {
  const tables = view.getUint16(4);
  for (let i = 0; i < tables; i += 1) {
    const record = 12 + 16 * i;
    const name = String.fromCharCode(...[0, 1, 2, 3].map((k) => view.getUint8(record + k)));
    if (name === tag) return view.getUint32(record + 8);
  }
  throw new Error(`The font has no ${tag} table.`);
}

/** Format 4: segments of the first 65,536 code points. */
function addSegments(view: DataView, subtable: number, codes: Set<number>): void {
  const doubled = view.getUint16(subtable + 6);
  const ends = subtable + 14;
  const starts = ends + doubled + 2;
  const deltas = starts + doubled;
  const offsets = deltas + doubled;
  for (let i = 0; i < doubled; i += 2) {
    const first = view.getUint16(starts + i);
    const last = view.getUint16(ends + i);
    const delta = view.getUint16(deltas + i);
    const offset = view.getUint16(offsets + i);
    for (let code = first; code <= last && code < 0xffff; code += 1) {
      const listed = offset === 0 ? code : view.getUint16(offsets + i + offset + 2 * (code - first));
      const glyph = offset !== 0 && listed === 0 ? 0 : (listed + delta) % 0x10000;
      if (glyph !== 0) codes.add(code);
    }
  }
}

/** Format 12: groups of any code points. */
function addGroups(view: DataView, subtable: number, codes: Set<number>): void {
  const groups = view.getUint32(subtable + 12);
  for (let i = 0; i < groups; i += 1) {
    const group = subtable + 16 + 12 * i;
    const first = view.getUint32(group);
    const last = view.getUint32(group + 4);
    const glyph = view.getUint32(group + 8);
    for (let code = first; code <= last; code += 1) if (glyph + code - first !== 0) codes.add(code);
  }
}
