import type { ModuleId } from '../calculators/calculator.ts';

export interface Module {
  readonly id: ModuleId;
  readonly title: string;
  /** Ids of its lessons, `module/lesson`, in reading order. Order lives here only; addresses carry none. */
  readonly lessons: readonly string[];
}

/** The course in reading order. */
export const modules: readonly Module[] = [
  {
    id: 'wheel-kinematics',
    title: 'Wheel kinematics',
    lessons: [
      'wheel-kinematics/half-speed',
      'wheel-kinematics/one-equation-a-wheel',
      'wheel-kinematics/driving-turning-mixing',
      'wheel-kinematics/how-fast-which-way',
      'wheel-kinematics/where-am-i',
      'wheel-kinematics/driving-straight',
      'wheel-kinematics/rollers-at-45',
      'wheel-kinematics/ball-shaped-wheels',
    ],
  },
  {
    id: 'motors',
    title: 'Motors and gearing',
    lessons: ['motors/two-numbers', 'motors/which-motor', 'motors/wheel-push', 'motors/up-to-speed'],
  },
  {
    id: 'belt-drives',
    title: 'Belt drives',
    lessons: [
      'belt-drives/teeth-and-ratio',
      'belt-drives/how-long-a-belt',
      'belt-drives/tight-enough',
      'belt-drives/listening-to-a-belt',
      'belt-drives/holding-the-pulley',
    ],
  },
  {
    id: 'friction',
    title: 'Friction',
    lessons: [
      'friction/what-friction-can-do',
      'friction/weight-on-each-wheel',
      'friction/half-the-grip',
      'friction/carpet',
      'friction/three-wheels-or-four',
    ],
  },
  {
    id: 'step-climbing',
    title: 'Step climbing',
    lessons: [
      'step-climbing/wheel-at-a-kerb',
      'step-climbing/grip-at-the-edge',
      'step-climbing/which-way-to-face',
      'step-climbing/cables-hoses-gaps',
    ],
  },
];
