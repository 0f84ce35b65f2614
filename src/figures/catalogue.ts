/** Which figure a calculator is shown with, and what it says. */
export interface FigureSpec {
  readonly name: FigureName;
  /** The finding, in a sentence with `{name in unit}` for values. */
  readonly caption: string;
  /** An angle among the givens that the reader may turn in the figure, and what to call it. */
  readonly turn?: { readonly given: string; readonly label: string };
  /**
   * A result over the whole circle of a given, and maybe another: handed to the figure as `rose_at`, `rose` and
   * `rose_beside`. Of a list it is the least, and `rose_lowest` tells whose that is. `points` is how many headings.
   */
  readonly rose?: {
    readonly against: string;
    readonly of: string;
    readonly beside?: string;
    readonly points?: number;
  };
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
  | 'pole-zones'
  | 'motor-curves'
  | 'motor-wanted'
  | 'thermometer'
  | 'tooth-pairs'
  | 'wheel-pushes'
  | 'speed-climb'
  | 'stop-bars'
  | 'wheel-holds'
  | 'belt-drive'
  | 'belt-pulls'
  | 'belt-span'
  | 'rope-round-post'
  | 'axle-loads'
  | 'hub-section'
  | 'tilted-board'
  | 'load-place'
  | 'load-discs'
  | 'grip-rose'
  | 'loss-rose'
  | 'contact-ellipse'
  | 'wheel-at-edge'
  | 'step-rose'
  | 'body-clearance';

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
      'From above, straight ahead up the page. Heading {theta}, a ringed wheel matters most; after {s} the robot is off the line by {y_left}, counted to the left, and by {y_sensor} if a yaw sensor holds its heading.',
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
  'motor-point': {
    name: 'motor-curves',
    caption:
      'Over the torque, at {V}: speed, current and power, each as a share of its most. This load takes {stall_share} of the stall torque; the motor shaft turns at {omega_m} and draws {I_m}.',
  },
  'motor-choice': {
    name: 'motor-wanted',
    caption:
      'Speed and power over torque of a motor that stalls at {T_w} and runs at {omega_w} with no load, at the wheel. The load is {T_work} at {omega_v}.',
  },
  'motor-heat': {
    name: 'thermometer',
    caption:
      'At {I_m} the winding ends at {Theta_end}, with a limit of {Theta_max} and air of {Theta_a}. It may hold {I_hold} for ever, and from {I_away} on it runs away.',
  },
  'gear-ratio': {
    name: 'tooth-pairs',
    caption:
      'The speed of each pair against the {v} wanted, the nearest one ringed: {z1} teeth on the motor and {z2} on the wheel give {v_got}.',
  },
  'drive-force': {
    name: 'wheel-pushes',
    caption:
      'From above, straight ahead up the page, all to one scale. The wheels push with {f_i}; together that is {F_all} along {theta}.',
    turn: heading,
  },
  'speed-up': {
    name: 'speed-climb',
    caption:
      'Speed over time from rest to {v_reach}, which takes {t_reach}. Up to {v_hold} grip is the limit. The area below the curve is the way, {s_reach}.',
  },
  stopping: {
    name: 'stop-bars',
    caption:
      'After {s_react} before the brakes act, it stops within {s_grip} by the grip of the floor, {s_motor} by the motors, or {s_coast} with the power lost. All to one scale; keep {s_stop} clear.',
  },
  parking: {
    name: 'wheel-holds',
    caption:
      'From above, straight ahead up the page, uphill at {up}. The slope pulls with {F_up}, and the wheels hold it with {f_i}, all to one scale.',
    turn: { given: 'up', label: 'Heading that points uphill' },
  },
  'belt-length': {
    name: 'belt-drive',
    caption:
      'From the side, to scale, with the shafts where a belt of {z_b} teeth fits: the centre distance changes by {dC} for it. Of the {z_mesh} teeth in the wrap of the smaller pulley, the {z_whole} whole ones count.',
  },
  'belt-centre': {
    name: 'belt-drive',
    caption:
      'From the side, to scale: the belt of {z_b} teeth fits with the shafts {C} apart. For one tooth more a shaft would have to move by {C_tooth}; the shim moves it by {shim}.',
  },
  'belt-tension': {
    name: 'belt-pulls',
    caption:
      'Pulley 1, on the left, turns counter-clockwise and draws the upper span. That span pulls with {F_t}, the lower one with {F_s}; shaft 1 feels {F_shaft}, and {F_rest} at rest.',
  },
  'belt-note': {
    name: 'belt-span',
    caption:
      'A span that swings in one belly at {f} pulls with {F_0}. If that was the octave, with two bellies, it pulls with {F_octave}. Wanted is {F_want}, which sounds at {f_want}.',
  },
  'belt-grip': {
    name: 'rope-round-post',
    caption:
      'Round {wrap} the pull can grow {k_grip} times: {F_s} at the slack end hold {F_held} at the other. Wanted there is {F_t}.',
  },
  'shaft-overhang': {
    name: 'axle-loads',
    caption:
      'From the side, each force turned into the plane of the drawing: the loads push down, the bearings answer with {R_in} and {R_out}. Under it the bending moment, at most {M_max}. The forces are drawn to one scale.',
  },
  'hub-grip': {
    name: 'hub-section',
    caption:
      'Hub and shaft cut across. The way chosen holds {T_held}; on the shaft are {T}. The thick bars belong to it.',
  },
  'tilt-test': {
    name: 'tilted-board',
    caption:
      'From the side, to scale: at {angle_slip} the sled starts to slide, with its weight, the push of the board and friction to one scale. Friction is {mu_tilt} by the board and {mu_pull} by the scale.',
  },
  'wheel-loads': {
    name: 'load-place',
    caption:
      'From above, straight ahead up the page; the area of a disc is its load: {N_i}. The cross marks where the weight goes through the floor. No wheel lifts while it is within the dashed circle, and past the lines the robot tips.',
    turn: heading,
  },
  'all-touch': {
    name: 'load-discs',
    caption:
      'From above, straight ahead up the page; the area of a disc is its load: {N_i}. Under the ringed wheel the floor is {e_floor} higher. From the least load to the largest is {spread} of the even one.',
  },
  traction: {
    name: 'grip-rose',
    caption:
      'Speeding up to the first slip by heading, straight ahead up the page. Heading {theta} allows {a_slip}, a slope of {slope_slip}; a car with all wheels driven would do {a_car}.',
    turn: heading,
    rose: { against: 'theta', of: 'a_slip' },
  },
  'most-grip': {
    name: 'grip-rose',
    caption:
      'Speeding up by heading, straight ahead up the page: to the first slip, and dashed the most any control could get. Heading {theta} allows {a_slip}, and at the most {a_most}; a car with all wheels driven would do {a_car}.',
    turn: heading,
    rose: { against: 'theta', of: 'a_slip', beside: 'a_most' },
  },
  'rolling-loss': {
    name: 'loss-rose',
    caption:
      'Push to keep rolling by heading, straight ahead up the page. Heading {theta} costs {F_roll}, which is {C_eff} of the load.',
    turn: heading,
    rose: { against: 'theta', of: 'F_roll' },
  },
  'contact-patch': {
    name: 'contact-ellipse',
    caption:
      'The patch, {d_long} long and {d_short} wide, beside a bar for its scale, and the pressure over it: {p_peak} in the middle, nothing at the rim.',
  },
  'step-push': {
    name: 'wheel-at-edge',
    caption:
      'As the wheel leaves the floor, with the weight, the push and the force of the edge to one scale. The edge meets the wheel at {psi} from its bottom, so the push must be {push_W} times the weight: {push}.',
  },
  'step-climb': {
    name: 'wheel-at-edge',
    caption:
      'As the wheel leaves the floor. It climbs while the force of the edge points between the two lines, which lean by the angle of friction. This needs a grip of {grip_used}, and there is {mu}; the highest edge is {h_most}.',
  },
  'step-by-heading': {
    name: 'step-rose',
    caption:
      'Highest step by heading, straight ahead up the page; in each sector the number of the wheel that stops the robot, and a dotted edge where a motor stalls before a wheel slips. Heading {theta} allows {h_most}. The dashed circle is your step, {h}: where it lies within the curve the robot gets up.',
    turn: heading,
    rose: { against: 'theta', of: 'h_i', beside: 'by_stop', points: 73 },
  },
  'round-obstacle': {
    name: 'wheel-at-edge',
    caption:
      'As the wheel leaves the floor on a cable that is held, met at {psi} from the bottom. It climbs while the force of the cable points between the two lines of friction: up to a cable of {d_held}.',
  },
  'gap-crossing': {
    name: 'wheel-at-edge',
    caption:
      'As the wheel leaves the gap: it has sunk in by {sink}, and the far edge meets it at {psi} from the bottom. It gets out while the force of that edge points between the two lines of friction: out of a gap of up to {width_most}.',
  },
  'step-run-up': {
    name: 'wheel-at-edge',
    caption:
      'As the wheel knocks against the edge at {v}. The knock leaves it {kept in %} of that speed, {v_after}; to get over it must have come with {v_min}.',
  },
  clearance: {
    name: 'body-clearance',
    caption:
      'From the side, to scale, the wheels at the step. The line under the front corner is the steepest ramp, {approach}; the two lines under the middle are the sharpest crest, {breakover}. The wheel meets the edge {reach_edge} ahead of its axle.',
  },
};
