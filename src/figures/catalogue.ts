/** Which figure a calculator is shown with, and what it says. */
export interface FigureSpec {
  readonly name: FigureName;
  /** The finding, in a sentence with `{name in unit}` for values. */
  readonly caption: string;
  /** An angle among the givens that the reader may turn in the figure, and what to call it. */
  readonly turn?: { readonly given: string; readonly label: string };
  /** A result drawn over the whole circle of a given: handed to the figure as `rose_at` and `rose`. */
  readonly rose?: { readonly against: string; readonly of: string };
}

export type FigureName = 'wheel-angle' | 'top-view' | 'speed-rose';

/** How many headings a rose is drawn with. */
export const rosePoints = 145;

const heading = { given: 'theta', label: 'Heading of travel' };

export const figures: Readonly<Record<string, FigureSpec>> = {
  'roll-ratio': {
    name: 'wheel-angle',
    caption:
      'One wheel from above, driving up the page. At {phi} to the travel it rolls at {v_roll}, and its rollers take {v_free}.',
    turn: { given: 'phi', label: 'Angle of the travel to the drive direction' },
  },
  'wheel-speeds': {
    name: 'top-view',
    caption: 'From above, straight ahead up the page. Travel at {theta}; the rims move at {u}.',
    turn: heading,
  },
  'body-motion': {
    name: 'top-view',
    caption:
      'From above, straight ahead up the page. The rims move at {u}, so the robot travels at {v}, heading {theta}.',
  },
  'speed-envelope': {
    name: 'speed-rose',
    caption:
      'Top speed by heading, straight ahead up the page. Heading {theta} allows {v_top}; the quickest, marked by a dot, {v_best}; the inner circle is what it keeps whichever way it points, {v_keep}.',
    turn: heading,
    rose: { against: 'theta', of: 'v_top' },
  },
};
