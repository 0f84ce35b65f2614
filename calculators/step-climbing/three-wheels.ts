import { towardsWheel } from '../friction/load-steps.ts';
import { across, along } from '../wheel-kinematics/wheel-steps.ts';

/**
 * Steps of three wheels at a step: for each wheel, who stands where at the moment it leaves the floor. Written in the
 * frame of the heading: ahead is into the step, left square to it. The other two wheels are b, the one of them that came
 * to the edge last (one behind, if none has yet), and k.
 */
const shares = 'share of the heading along the';

export const whoStandsWhere = [
  { name: 'i', brief: true, means: 'wheel number', quantity: 'count', unit: '', formula: 'upto(3)' },
  {
    name: 'alpha_i',
    means: 'where each wheel stands',
    quantity: 'angle',
    unit: 'deg',
    formula: 'alpha + (i - 1) * 120deg',
    why: 'Three wheels share the circle evenly, counted counter-clockwise from wheel 1.',
  },
  {
    name: 's_i',
    means: `${shares} drive direction of the wheel`,
    quantity: 'ratio',
    unit: '',
    formula: along('theta'),
    why: 'A wheel drives square to the line from the centre to it. Where this is 0 it only pushes sideways: at the edge it is a passive wheel.',
  },
  {
    name: 'c_i',
    means: `${shares} axle of the wheel, its reach ahead in radii R`,
    quantity: 'ratio',
    unit: '',
    formula: across('theta'),
    why: 'The wheel with the largest comes to the edge first.',
  },
  {
    name: 'c_next',
    means: 'the same of the next wheel round',
    brief: true,
    quantity: 'ratio',
    unit: '',
    formula: 'cos(theta - alpha_i - 120deg)',
  },
  {
    name: 'c_prev',
    means: 'the same of the wheel before',
    brief: true,
    quantity: 'ratio',
    unit: '',
    formula: 'cos(theta - alpha_i + 120deg)',
  },
  {
    name: 'side_b',
    means: 'wheel b, the one of the other two that came to the edge last: 1 the next wheel round, −1 the one before',
    brief: true,
    quantity: 'ratio',
    unit: '',
    formula:
      'if(c_next >= c_i - 0.000000001 and (c_prev < c_i - 0.000000001 or c_next <= c_prev + 0.000000001), 1, -1)',
  },
  {
    name: 's_b',
    means: `${shares} drive direction of wheel b`,
    brief: true,
    quantity: 'ratio',
    unit: '',
    formula: 'sin(theta - alpha_i - side_b * 120deg)',
  },
  {
    name: 'c_b',
    means: `${shares} axle of wheel b`,
    brief: true,
    quantity: 'ratio',
    unit: '',
    formula: 'cos(theta - alpha_i - side_b * 120deg)',
  },
  {
    name: 's_k',
    means: `${shares} drive direction of wheel k, the third`,
    brief: true,
    quantity: 'ratio',
    unit: '',
    formula: 'sin(theta - alpha_i + side_b * 120deg)',
  },
  {
    name: 'c_k',
    means: `${shares} axle of wheel k`,
    brief: true,
    quantity: 'ratio',
    unit: '',
    formula: 'cos(theta - alpha_i + side_b * 120deg)',
  },
  {
    name: 'floor_b',
    means: 'is wheel b still on the floor: 1 yes, 0 no',
    brief: true,
    quantity: 'ratio',
    unit: '',
    formula: 'if(c_b < c_i - 0.000000001, 1, 0)',
  },
  {
    name: 'floor_k',
    means: 'is wheel k still on the floor: 1 yes, 0 no',
    brief: true,
    quantity: 'ratio',
    unit: '',
    formula: 'if(c_k < c_i - 0.000000001, 1, 0)',
  },
  {
    name: 'gap_b',
    means: 'how far wheel b is ahead of the wheel',
    quantity: 'length',
    unit: 'mm',
    formula: 'R * max(c_b - c_i, 0)',
  },
  {
    name: 'W_r',
    means: 'weight of the robot',
    quantity: 'force',
    unit: 'N',
    formula: 'm * g',
  },
  {
    name: 'x_h',
    means: 'how far the centre of mass lies ahead of wheel k',
    quantity: 'length',
    unit: 'mm',
    formula: 'x * cos(theta) + y * sin(theta) - R * c_k',
  },
  {
    name: 'y_h',
    means: 'how far it lies to the left of wheel k',
    quantity: 'length',
    unit: 'mm',
    formula: 'y * cos(theta) - x * sin(theta) + R * s_k',
  },
  towardsWheel,
  {
    name: 'N_level',
    means: 'load on each wheel before the step',
    quantity: 'force',
    unit: 'N',
    formula: 'W_r / 3 * (1 + 2 * x_i / R)',
  },
  { name: 'N_least', means: 'least load', brief: true, quantity: 'force', unit: 'N', formula: 'min(N_level)' },
] as const;
