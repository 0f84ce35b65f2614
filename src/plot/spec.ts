import type { Given, Step } from '../../calculators/calculator.ts';
import { formatUnit } from '../../calculators/quantity/format.ts';
import { quantityOf, unitOf } from '../../calculators/quantity/units.ts';

/** Which result is plotted against which given. */
export interface PlotSpec {
  readonly of: string;
  readonly against: string;
}

/** The first plot of each calculator that should not be its first result against its first given. */
export const firstPlots: Readonly<Record<string, PlotSpec>> = {
  'roll-ratio': { of: 'omega_roll', against: 'phi' },
  'wheel-speeds': { of: 'omega', against: 'theta' },
  'body-motion': { of: 'theta', against: 'alpha' },
  'speed-envelope': { of: 'v_top', against: 'theta' },
  'mix-and-limit': { of: 'command', against: 'stick_turn' },
  'speed-resolution': { of: 'v_step', against: 'dt' },
  'dead-reckoning': { of: 'y_turn_first', against: 'e_R' },
  straightness: { of: 'y_left', against: 'theta' },
  'angled-rollers': { of: 'lever', against: 'gamma' },
  'wheel-gap': { of: 'drop', against: 'gap' },
  'pole-contact': { of: 'carried', against: 'proud' },
  'motor-point': { of: 'P_out', against: 'T' },
  'motor-choice': { of: 'T_w', against: 'slope' },
  'motor-heat': { of: 'Theta_end', against: 'I_m' },
  'gear-ratio': { of: 'ratio_b', against: 'omega_m' },
  'drive-force': { of: 'f_top', against: 'theta' },
  'speed-up': { of: 't_reach', against: 'mu' },
  stopping: { of: 's_stop', against: 'v' },
  parking: { of: 'T_top', against: 'up' },
  'belt-length': { of: 'wrap_1', against: 'C' },
  'belt-centre': { of: 'take', against: 'shim' },
  'belt-tension': { of: 'F_shaft', against: 'pre' },
  'belt-note': { of: 'F_0', against: 'f' },
  'belt-grip': { of: 'F_held', against: 'wrap' },
  'shaft-overhang': { of: 'margin_f', against: 'a2' },
  'hub-grip': { of: 'T_warm', against: 'dTheta' },
  'tilt-test': { of: 'mu_pull', against: 'F_pull' },
  'wheel-loads': { of: 'N_i', against: 'theta' },
  traction: { of: 'a_slip', against: 'theta' },
  'most-grip': { of: 'a_most', against: 'theta' },
  'rolling-loss': { of: 'F_roll', against: 'theta' },
  'contact-patch': { of: 'd_long', against: 'F_n' },
  'all-touch': { of: 'N_i', against: 'e_floor' },
  'step-push': { of: 'push', against: 'h' },
  'step-climb': { of: 'h_most', against: 'mu' },
  'round-obstacle': { of: 'd_held', against: 'mu' },
  'gap-crossing': { of: 'grip_used', against: 'width' },
  'step-run-up': { of: 'v_min', against: 'h' },
  clearance: { of: 'approach', against: 'under' },
};

/** Givens a plot can run along: one number that varies smoothly. */
export const plottable = (given: Given): boolean => !given.list && !given.options && !given.whole;

/** The stretch of a given that a plot shows: a whole turn for an angle, else about the value in hand. */
export function plotRange(given: Given, si: number): readonly [from: number, to: number] {
  if (given.quantity === 'angle') return [Math.max(given.least, -Math.PI), Math.min(given.most, Math.PI)];
  const usual = Number(given.usual.value) * unitOf(quantityOf(given.quantity), given.usual.unit).factor;
  const reach = 2 * Math.max(Math.abs(si), Math.abs(usual)) || (given.most - given.least) / 20;
  const to = Math.min(given.most, reach);
  if (given.least < 0) return [Math.max(given.least, -reach), to];
  // What may not be zero often stands below a fraction line: from a twentieth on, the curve is not all cliff.
  return [given.least === 0 ? 0 : Math.max(given.least, Math.min(si, reach / 20)), to];
}

export interface Axis {
  readonly label: string;
  readonly factor: number;
}

export const axisOf = (one: Given | Step): Axis => ({
  label: one.unit ? `${one.means}, ${formatUnit(one.unit).trim()}` : one.means,
  factor: unitOf(quantityOf(one.quantity), one.unit).factor,
});
