import { World, type Body, type Vec2Value } from 'planck';
import { rotate, type Motion, type Pose, type Vector } from './plane-robot.ts';

/** Where a wheel touches the floor, and the direction in which it can push. */
export interface Contact {
  readonly at: Vector;
  readonly push: Vector;
}

const rounds = 100;

/**
 * A rigid body of the engine, dragged by its wheels: each gives it an impulse at its own place, along its own direction,
 * in proportion to how far the floor under it still runs slower than the rim. All do so alike and at once, again and
 * again, until nothing changes. Nothing here knows how wheel speeds make a motion; the engine’s laws of impulse do.
 */
export class DraggedBody {
  readonly #world = new World({ gravity: { x: 0, y: 0 }, allowSleep: false });
  readonly #body: Body;
  readonly #contacts: readonly Contact[];
  #speeds: readonly number[] = [];

  constructor(contacts: readonly Contact[]) {
    this.#contacts = contacts;
    this.#body = this.#world.createBody({ type: 'dynamic' });
    // The radius of gyration is the distance of the furthest wheel, so that no impulse can overshoot.
    const reach = Math.max(...contacts.map(({ at }) => Math.hypot(...at)));
    this.#body.setMassData({ mass: 1, center: { x: 0, y: 0 }, I: reach ** 2 });
  }

  /** Lets the rims run at new speeds, each in the direction it can push, until the body has settled on a motion. */
  roll(speeds: readonly number[]): void {
    if (speeds.length !== this.#contacts.length) throw new Error('a speed for each wheel is wanted');
    this.#speeds = speeds;
    this.#settle();
  }

  #settle(): void {
    for (let k = 0; k < rounds; k++) {
      const pushes = this.#contacts.map((contact, wheel) => this.#push(contact, this.#speeds[wheel] ?? NaN));
      for (const [impulse, point] of pushes) this.#body.applyLinearImpulse(impulse, point, true);
    }
  }

  #push({ at, push }: Contact, speed: number): readonly [impulse: Vec2Value, point: Vec2Value] {
    const point = this.#body.getWorldPoint({ x: at[0], y: at[1] });
    const direction = this.#body.getWorldVector({ x: push[0], y: push[1] });
    const floor = this.#body.getLinearVelocityFromWorldPoint(point);
    const slip = speed - (floor.x * direction.x + floor.y * direction.y);
    const share = slip / this.#contacts.length;
    return [{ x: share * direction.x, y: share * direction.y }, point];
  }

  /** Lets time pass; the wheels drag the body along at every step. */
  drive(seconds: number, steps: number): void {
    for (let k = 0; k < steps; k++) {
      this.#settle();
      this.#world.step(seconds / steps);
    }
  }

  /** Its motion for each second, in its own frame. */
  get motion(): Motion {
    const { x, y } = this.#body.getLinearVelocity();
    return { travel: rotate([x, y], -this.#body.getAngle()), turn: this.#body.getAngularVelocity() };
  }

  get pose(): Pose {
    const { x, y } = this.#body.getPosition();
    return { at: [x, y], heading: this.#body.getAngle() };
  }

  spin(turn: number): void {
    this.#body.setAngularVelocity(turn);
  }
}
