/** A row of the sheet before its place is known: its texts are asked for when every row has one. */
export interface GridRow {
  /** By what other rows find it. */
  readonly key: string;
  readonly head: readonly [name: string, meaning: string, unit: string];
  readonly cells: readonly (() => string)[];
}

/** The columns before the values: name, meaning, unit. */
const before = 3;

/** `D` for the first value of a row. */
export function columnOf(k: number): string {
  let text = '';
  for (let left = k + before; left >= 0; left = Math.floor(left / 26) - 1)
    text = String.fromCharCode(65 + (left % 26)) + text;
  return text;
}

/** Where rows stand, when `above` others stand above the first. */
export class Places {
  readonly #places: ReadonlyMap<string, number>;

  constructor(rows: readonly GridRow[], above: number) {
    this.#places = new Map(rows.map((row, k) => [row.key, above + 1 + k]));
  }

  row(key: string): number {
    const place = this.#places.get(key);
    if (place === undefined) throw new Error(`unknown cell: ${key}`);
    return place;
  }

  /** `$D$7`: a cell that stays when a formula is copied. */
  fixed(key: string, k = 0): string {
    return `$${columnOf(k)}$${this.row(key)}`;
  }

  /** `E7`: a cell that moves with the column. */
  moving(key: string, k: number): string {
    return `${columnOf(k)}${this.row(key)}`;
  }

  range(from: string, to: string, first: number, last: number): string {
    return `$${columnOf(first)}$${this.row(from)}:$${columnOf(last)}$${this.row(to)}`;
  }
}
