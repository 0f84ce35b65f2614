import { Box, Circle, Edge, Settings, World, type Body } from 'planck';

/**
 * A wheel at a step in the rigid-body engine planck. The engine knows gravity, contacts and friction, and nothing of contact angles.
 * It is built for bodies of some metres and keeps a little air between them, so the wheel is large, and its radius is counted with that air.
 */
export interface Trial {
  /** Height of the step over the wheel radius. */
  readonly h: number;
  /** Level push over the weight. */
  readonly push: number;
  readonly mu: number;
  /** A free wheel turns as it likes; a driven one has torque to spare and a speed it may not pass. */
  readonly driven: boolean;
}

export interface Pace {
  readonly rate: number;
  readonly rounds: readonly [velocity: number, position: number];
}

export const coarse: Pace = { rate: 60, rounds: [8, 3] };
export const fine: Pace = { rate: 240, rounds: [20, 10] };

const drawn = 10;
const g = 10;
const mass = 1;
const topTurn = 0.5;
const seconds = 60;

const emptyWorld = () => new World({ gravity: { x: 0, y: -g }, allowSleep: false });
type Room = ReturnType<typeof emptyWorld>;

/** Does the axle come up by the height of the step? */
export function getsOver(trial: Trial, pace: Pace): boolean {
  const world = emptyWorld();
  const radius = drawn + 2 * Settings.linearSlop;
  const height = trial.h * radius;
  ground(world, height, trial.mu);
  const reach = Math.sqrt(radius ** 2 - (radius - height) ** 2);
  // At rest against the edge: from a thousandth of the radius away the start alone carries it a tenth higher.
  const wheel = wheelOf(world, { x: -reach, y: radius }, trial.mu);
  for (let k = 0; k < seconds * pace.rate; k++) {
    wheel.applyForceToCenter({ x: trial.push * mass * g, y: 0 }, true);
    if (trial.driven && wheel.getAngularVelocity() > -topTurn) wheel.applyTorque(-1.5 * mass * g * radius, true);
    world.step(1 / pace.rate, ...pace.rounds);
    if (wheel.getPosition().y - radius > 0.9 * height) return true;
  }
  return false;
}

/** Does a free disc that rolls at the step get over it? The speed is a share of the root of g times the radius. */
export function rollsOver(h: number, speed: number, pace: Pace): boolean {
  const world = emptyWorld();
  const radius = drawn + 2 * Settings.linearSlop;
  const height = h * radius;
  // So much friction that nothing slides in the knock.
  ground(world, height, 20);
  const reach = Math.sqrt(radius ** 2 - (radius - height) ** 2);
  const wheel = wheelOf(world, { x: -reach - radius / 10, y: radius }, 20);
  const v = speed * Math.sqrt(g * radius);
  wheel.setLinearVelocity({ x: v, y: 0 });
  wheel.setAngularVelocity(-v / radius);
  for (let k = 0; k < 20 * pace.rate; k++) {
    world.step(1 / pace.rate, ...pace.rounds);
    if (wheel.getPosition().x > 0) return true;
  }
  return false;
}

/** Level floor up to the edge at the origin, and level again on top of it. */
function ground(world: Room, height: number, friction: number): void {
  const far = 40 * drawn;
  const body = world.createBody();
  body.createFixture({ shape: new Edge({ x: -far, y: 0 }, { x: 0, y: 0 }), friction });
  body.createFixture({ shape: new Box(far / 2, height / 2, { x: far / 2, y: height / 2 }, 0), friction });
}

function wheelOf(world: Room, position: { x: number; y: number }, friction: number): Body {
  const wheel = world.createBody({ type: 'dynamic', position });
  wheel.createFixture({ shape: new Circle(drawn), friction, restitution: 0 });
  wheel.setMassData({ mass, center: { x: 0, y: 0 }, I: (mass * drawn ** 2) / 2 });
  return wheel;
}
