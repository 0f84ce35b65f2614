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

export type FigureName =
  | 'wheel-angle'
  | 'top-view'
  | 'speed-rose'
  | 'stick-pads'
  | 'count-ruler'
  | 'reckoned-paths'
  | 'bent-path'
  | 'roller-slants'
  | 'rim-gaps'
  | 'pole-zones';

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
  'mix-and-limit': {
    name: 'stick-pads',
    caption:
      'The sticks with their dead band, and the robot from above, straight ahead up the page. The wheels get {command} of full, which is {k_limit in %} of what was asked for.',
  },
  'speed-resolution': {
    name: 'count-ruler',
    caption:
      'At {v} the rim passes {n_dt} counts between two readings. A reading is a whole number, so the measured speed goes in steps of {v_step}.',
  },
  'dead-reckoning': {
    name: 'reckoned-paths',
    caption:
      'Solid, the true path of {s}, up the page; dashed, the path as reckoned. It ends off to the left by {y_turn_first} if the robot turned first, {y_turn_mixed} if it turned all the way, {y_one} with one wheel wrong.',
  },
  straightness: {
    name: 'bent-path',
    caption:
      'From above, straight ahead up the page. Heading {theta}, a ringed wheel matters most; after {s} the robot is {y_left} to the left of the line, and {y_sensor} if a yaw sensor holds its heading.',
    turn: heading,
  },
  'angled-rollers': {
    name: 'roller-slants',
    caption:
      'From above, straight ahead up the page, the rollers as seen on top. The rims move at {u}. The rollers on the floor slant the other way; their axes meet at the end of the lever, which is {lever}.',
  },
  'wheel-gap': {
    name: 'rim-gaps',
    caption:
      'From the side, with a gap on the floor: the wheel drops by {drop}. With gaps half as wide it would drop by {drop_half} only.',
  },
  'pole-contact': {
    name: 'pole-zones',
    caption:
      'The ball in its drive plane, standing on a pole roller: the edge of the shell clears the floor by {clear}. The zone without a shell is {zone} of all axle angles; the roller carries at {carried}.',
  },
};
