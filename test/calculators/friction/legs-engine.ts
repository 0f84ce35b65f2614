import RAPIER from '@dimforge/rapier3d-compat';

/**
 * A stiff body on legs in the rigid-body engine Rapier, which knows gravity, contacts and friction, and nothing of load
 * transfer. It is built for bodies of some metres, so one stands in for the other: loads are shares of the weight.
 */
export interface Standing {
  /** Where the legs stand, in radii from the middle, and how high and where the centre of mass is. */
  readonly feet: readonly (readonly [x: number, y: number])[];
  readonly centre: readonly [x: number, y: number, z: number];
  /** Gravity along the ground, as shares of that down it: a slope, or what speeding up feels like. */
  readonly pull: readonly [x: number, y: number];
}

const ball = 0.05;
const rate = 240;

await RAPIER.init();

const settled = 2;
const seconds = 12;
const tipped = 0.15;

/** Loads on the legs once all has settled, as shares of the weight square to the ground; undefined where the body tips. */
export function loadsOf({ feet, centre: [x, y, z], pull: [px, py] }: Standing): readonly number[] | undefined {
  const world = new RAPIER.World({ x: px, y: py, z: -1 });
  world.timestep = 1 / rate;
  const ground = world.createCollider(
    RAPIER.ColliderDesc.cuboid(50, 50, 1)
      .setTranslation(0, 0, -1)
      .setFriction(20)
      .setFrictionCombineRule(RAPIER.CoefficientCombineRule.Max),
  );
  const inertia = { x: 0.3, y: 0.3, z: 0.3 };
  const body = world.createRigidBody(
    RAPIER.RigidBodyDesc.dynamic()
      .setCanSleep(false)
      .setAdditionalMassProperties(1, { x, y, z }, inertia, { x: 0, y: 0, z: 0, w: 1 }),
  );
  const legs = feet.map(([fx, fy]) =>
    world.createCollider(RAPIER.ColliderDesc.ball(ball).setTranslation(fx, fy, ball).setDensity(0), body),
  );
  const sums = legs.map(() => 0);
  let counted = 0;
  for (let k = 0; k < seconds * rate; k++) {
    world.step();
    const { x: qx, y: qy } = body.rotation();
    if (Math.hypot(qx, qy) > tipped / 2) {
      world.free();
      return undefined;
    }
    if (k < settled * rate) continue;
    counted++;
    legs.forEach((leg, i) => {
      world.contactPair(leg, ground, (manifold) => {
        for (let c = 0; c < manifold.numContacts(); c++) sums[i] = (sums[i] ?? 0) + manifold.contactImpulse(c) * rate;
      });
    });
  }
  world.free();
  return sums.map((sum) => sum / counted);
}
