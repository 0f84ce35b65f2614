import { leanOfSpan } from './pitch-circles.ts';

/** Steps about the free part of a belt between two pulleys. Need `D1`, `D2` and `C`. */
export const spanAngle = {
  name: 'phi_b',
  means: 'angle of a span to the line of shafts',
  quantity: 'angle',
  unit: 'deg',
  formula: leanOfSpan('C'),
  why: 'A span touches both pulleys, so over the centre distance it rises by the difference of the radii. The radius stands square on the span, which makes it a sine and not a tangent.',
} as const;

export const freeSpan = {
  name: 'span',
  means: 'free length of a span',
  quantity: 'length',
  unit: 'mm',
  formula: 'C * cos(phi_b)',
} as const;

/** The wrap of the smaller pulley is a step or follows from the angle of the span. */
export const teethInMesh = (wrap: string) =>
  ({
    name: 'z_mesh',
    means: 'teeth in mesh on the smaller pulley',
    quantity: 'ratio',
    unit: '',
    formula: `min(z1, z2) * ${wrap} / 360deg`,
  }) as const;
