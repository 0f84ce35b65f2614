/** A belt that a standard fixes. */
export interface StandardBelt {
  /** The standard's own code. */
  readonly code: string;
  /** In metres. */
  readonly pitch: number;
  /** How far the cord runs outside the tips of the pulley, in metres, where the standard's table gave it. */
  readonly outside?: number;
  /** Id of an entry of the bibliography, and the place in it. */
  readonly source: string;
  readonly place: string;
}

const mm = 1e-3;
const inch = 0.0254;

const round = (code: string, pitch: number, outside: number): StandardBelt => ({
  code,
  pitch: pitch * mm,
  outside: outside * mm,
  source: 'iso-13050',
  place: 'belt teeth, profile H',
});

const trapezoidal = (code: string, pitch: number): StandardBelt => ({
  code,
  pitch: pitch * inch,
  source: 'iso-5296',
  place: 'pitch codes',
});

export const standardBelts: readonly StandardBelt[] = [
  round('H3M', 3, 0.381),
  round('H5M', 5, 0.572),
  round('H8M', 8, 0.686),
  round('H14M', 14, 1.397),
  round('H20M', 20, 2.159),
  trapezoidal('MXL', 0.08),
  trapezoidal('XL', 0.2),
  trapezoidal('L', 0.375),
  trapezoidal('H', 0.5),
  trapezoidal('XH', 0.875),
  trapezoidal('XXH', 1.25),
];
