import { dimensionless, type Dimension } from './dimension.ts';

/**
 * Units and their factors to coherent SI, from A. Thompson and B. N. Taylor, *Guide for the Use of the International
 * System of Units (SI)*, NIST Special Publication 811, 2008 edition, Appendix B. Factors printed there in bold are exact;
 * everything here is built from exact ones, never typed as a rounded product.
 */
const inch = 0.0254;
const foot = 12 * inch;
const mile = 5280 * foot;
const pound = 0.45359237;
const ounce = pound / 16;
/** Standard acceleration of free fall, exact by definition. */
const standardGravity = 9.80665;
const degree = Math.PI / 180;
const turn = 2 * Math.PI;
const minute = 60;
const hour = 3600;

export interface Unit {
  /** As printed and as typed: `kgf cm`. */
  readonly symbol: string;
  /** Multiply a number in this unit by this to get SI. */
  readonly factor: number;
  /** Other spellings a reader may type. */
  readonly also?: readonly string[];
}

export interface Quantity {
  readonly name: string;
  /** With its article, for sentences: "a length". */
  readonly phrase: string;
  readonly dimension: Dimension;
  /** The first one is coherent SI. */
  readonly units: readonly [Unit, ...Unit[]];
}

const unit = (symbol: string, factor: number, ...also: string[]): Unit => ({ symbol, factor, also });

const perSecond: Dimension = [0, 0, -1, 0, 0];
const torqueOrEnergy: Dimension = [1, 2, -2, 0, 0];

export const quantities = [
  {
    name: 'ratio',
    phrase: 'a plain number',
    dimension: dimensionless,
    units: [unit('', 1), unit('%', 0.01, 'percent')],
  },
  { name: 'count', phrase: 'a whole number', dimension: dimensionless, units: [unit('', 1)] },
  {
    name: 'angle',
    phrase: 'an angle',
    dimension: dimensionless,
    units: [
      unit('rad', 1, 'radian', 'radians'),
      unit('deg', degree, '°', 'degree', 'degrees'),
      unit('turn', turn, 'turns', 'rev'),
    ],
  },
  {
    name: 'length',
    phrase: 'a length',
    dimension: [0, 1, 0, 0, 0],
    units: [
      unit('m', 1, 'metre', 'metres', 'meter', 'meters'),
      unit('mm', 1e-3),
      unit('cm', 1e-2),
      unit('km', 1e3),
      unit('um', 1e-6, 'µm', 'μm', 'micron', 'microns'),
      unit('in', inch, 'inch', 'inches', '"', '″'),
      unit('ft', foot, 'foot', 'feet'),
    ],
  },
  {
    name: 'area',
    phrase: 'an area',
    dimension: [0, 2, 0, 0, 0],
    units: [unit('m^2', 1), unit('mm^2', 1e-6), unit('cm^2', 1e-4), unit('in^2', inch ** 2)],
  },
  {
    name: 'curvature',
    phrase: 'a turn for each metre',
    dimension: [0, -1, 0, 0, 0],
    units: [unit('rad/m', 1, '1/m'), unit('deg/m', degree, '°/m')],
  },
  {
    name: 'time',
    phrase: 'a time',
    dimension: [0, 0, 1, 0, 0],
    units: [unit('s', 1, 'sec'), unit('ms', 1e-3), unit('min', minute), unit('h', hour, 'hr', 'hours')],
  },
  {
    name: 'velocity',
    phrase: 'a speed',
    dimension: [0, 1, -1, 0, 0],
    units: [
      unit('m/s', 1),
      unit('mm/s', 1e-3),
      unit('cm/s', 1e-2),
      unit('km/h', 1e3 / hour, 'kph', 'kmh'),
      unit('in/s', inch, 'ips'),
      unit('ft/s', foot, 'fps'),
      unit('mph', mile / hour, 'mi/h'),
    ],
  },
  {
    name: 'acceleration',
    phrase: 'an acceleration',
    dimension: [0, 1, -2, 0, 0],
    units: [unit('m/s^2', 1, 'm/s/s'), unit('mm/s^2', 1e-3), unit('ft/s^2', foot), unit('gn', standardGravity)],
  },
  {
    name: 'angular velocity',
    phrase: 'a turning speed',
    dimension: perSecond,
    units: [
      unit('rad/s', 1),
      unit('rpm', turn / minute, 'r/min', 'rev/min', '1/min'),
      unit('deg/s', degree, '°/s'),
      unit('turn/s', turn, 'rev/s', 'rps'),
    ],
  },
  {
    name: 'angular acceleration',
    phrase: 'a change of turning speed',
    dimension: [0, 0, -2, 0, 0],
    units: [unit('rad/s^2', 1), unit('deg/s^2', degree, '°/s^2')],
  },
  { name: 'frequency', phrase: 'a frequency', dimension: perSecond, units: [unit('Hz', 1), unit('kHz', 1e3)] },
  {
    name: 'mass',
    phrase: 'a mass',
    dimension: [1, 0, 0, 0, 0],
    units: [unit('kg', 1), unit('g', 1e-3), unit('lb', pound, 'lbs'), unit('oz', ounce)],
  },
  {
    name: 'linear density',
    phrase: 'a mass for each length',
    dimension: [1, -1, 0, 0, 0],
    units: [unit('kg/m', 1), unit('g/m', 1e-3), unit('lb/ft', pound / foot)],
  },
  {
    name: 'moment of inertia',
    phrase: 'a moment of inertia',
    dimension: [1, 2, 0, 0, 0],
    units: [
      unit('kg m^2', 1),
      unit('kg cm^2', 1e-4),
      unit('g cm^2', 1e-7),
      unit('lb ft^2', pound * foot ** 2),
      unit('lb in^2', pound * inch ** 2),
    ],
  },
  {
    name: 'force',
    phrase: 'a force',
    dimension: [1, 1, -2, 0, 0],
    units: [
      unit('N', 1),
      unit('kN', 1e3),
      unit('kgf', standardGravity),
      unit('gf', standardGravity / 1e3),
      unit('lbf', pound * standardGravity),
      unit('ozf', ounce * standardGravity),
    ],
  },
  {
    name: 'torque',
    phrase: 'a torque',
    dimension: torqueOrEnergy,
    units: [
      unit('N m', 1),
      unit('mN m', 1e-3),
      unit('N cm', 1e-2),
      unit('kgf cm', standardGravity * 1e-2, 'kg cm'),
      unit('gf cm', standardGravity * 1e-5, 'g cm'),
      unit('lbf in', pound * standardGravity * inch, 'lb in', 'in lbf', 'in lb'),
      unit('lbf ft', pound * standardGravity * foot, 'lb ft', 'ft lbf', 'ft lb'),
      unit('ozf in', ounce * standardGravity * inch, 'oz in'),
    ],
  },
  {
    name: 'energy',
    phrase: 'an energy',
    dimension: torqueOrEnergy,
    units: [unit('J', 1), unit('kJ', 1e3), unit('W h', hour)],
  },
  {
    name: 'power',
    phrase: 'a power',
    dimension: [1, 2, -3, 0, 0],
    units: [unit('W', 1), unit('mW', 1e-3), unit('kW', 1e3)],
  },
  {
    name: 'pressure',
    phrase: 'a pressure',
    dimension: [1, -1, -2, 0, 0],
    units: [
      unit('Pa', 1),
      unit('kPa', 1e3),
      unit('MPa', 1e6, 'N/mm^2'),
      unit('GPa', 1e9),
      unit('psi', (pound * standardGravity) / inch ** 2),
    ],
  },
  {
    name: 'second moment of area',
    phrase: 'a second moment of area',
    dimension: [0, 4, 0, 0, 0],
    units: [unit('m^4', 1), unit('mm^4', 1e-12), unit('in^4', inch ** 4)],
  },
  {
    name: 'section modulus',
    phrase: 'a section modulus',
    dimension: [0, 3, 0, 0, 0],
    units: [unit('m^3', 1), unit('mm^3', 1e-9), unit('in^3', inch ** 3)],
  },
  {
    name: 'stiffness',
    phrase: 'a stiffness',
    dimension: [1, 0, -2, 0, 0],
    units: [unit('N/m', 1), unit('N/mm', 1e3), unit('lbf/in', (pound * standardGravity) / inch)],
  },
  { name: 'current', phrase: 'a current', dimension: [0, 0, 0, 1, 0], units: [unit('A', 1), unit('mA', 1e-3)] },
  { name: 'voltage', phrase: 'a voltage', dimension: [1, 2, -3, -1, 0], units: [unit('V', 1), unit('mV', 1e-3)] },
  {
    name: 'resistance',
    phrase: 'a resistance',
    dimension: [1, 2, -3, -2, 0],
    units: [unit('ohm', 1, 'Ω', 'Ω', 'ohms'), unit('mohm', 1e-3, 'mΩ', 'mΩ')],
  },
  {
    name: 'motor constant',
    phrase: 'a torque for each ampere',
    dimension: [1, 2, -2, -1, 0],
    units: [unit('N m/A', 1, 'V s/rad', 'V s'), unit('mN m/A', 1e-3)],
  },
  {
    name: 'Celsius temperature',
    phrase: 'a temperature',
    dimension: [0, 0, 0, 0, 1],
    units: [unit('degC', 1, '°C', 'C', 'celsius')],
  },
  {
    name: 'temperature difference',
    phrase: 'a difference of temperature',
    dimension: [0, 0, 0, 0, 1],
    units: [unit('K', 1, 'kelvin', 'degC', '°C')],
  },
  {
    name: 'temperature coefficient',
    phrase: 'a change for each kelvin',
    dimension: [0, 0, 0, 0, -1],
    units: [unit('1/K', 1, '1/degC'), unit('%/K', 0.01), unit('ppm/K', 1e-6)],
  },
  {
    name: 'thermal resistance',
    phrase: 'a thermal resistance',
    dimension: [-1, -2, 3, 0, 1],
    units: [unit('K/W', 1, '°C/W', 'degC/W', 'C/W')],
  },
] as const satisfies readonly Quantity[];

export type QuantityName = (typeof quantities)[number]['name'];
