import { describe, expect, it } from 'vitest';
import { World } from '../../../../src/core/physics/world.ts';
import { GownCloth } from '../../../../src/core/room/gown/GownCloth.ts';
import { GOWN_LINKS } from '../../../../src/core/room/gown/gownFacts.ts';
import { addGown, pinGown } from '../../../../src/core/room/gown/gownScene.ts';
import { settle, settledScene } from '../../../../src/core/room/settle.ts';
import { ROOMY } from '../../../support/gownRooms.ts';
import { GRAVITY } from '../../../support/physics/references.ts';

const SETTLED = settle(ROOMY);
/** Rate at which air slows the cloth, as the scene has it (1/s). */
const DRAG = 3;
const [X, Y] = [ROOMY.gown.standXM, 1.5];

/** The cloth just let go at (X, Y), held there at both shoulders. */
function letGo() {
  const scene = settledScene(ROOMY, SETTLED);
  const cloth = new GownCloth(scene);
  cloth.open(X, Y);
  const step = (): void => {
    cloth.lead('left', [X, Y]);
    cloth.lead('right', [X, Y]);
    scene.world.step();
  };
  return { scene, cloth, step };
}

/** First root of the Bessel function J0, halved: a hanging chain swings at ω = 1.2024 √(g / L) (Bernoulli; Lamb, Dynamics, "hanging chain"). */
const CHAIN = 1.2024127788;

describe('A gown that is let go', () => {
  it('falls freely against the air until its folds are out, as s = (g / k)(t − (1 − exp(−k t)) / k) says', () => {
    const { cloth, step } = letGo();
    const from = cloth.hemM;
    for (let k = 1; k <= 48; k++) {
      step();
      const t = k / 120;
      const fallen = (GRAVITY / DRAG) * (t - (1 - Math.exp(-DRAG * t)) / DRAG);
      if (t > 0.1) expect(Math.abs((from - cloth.hemM) / fallen - 1), `after ${t} s`).toBeLessThan(0.01);
    }
  });

  it('comes to hang by its own length, stretched by less than 1 mm', () => {
    const { cloth, step } = letGo();
    for (let k = 0; k < 600; k++) step();
    expect(cloth.hemM).toBeGreaterThan(Y - ROOMY.gown.lengthM - 0.001);
    expect(cloth.hemM).toBeLessThan(Y - ROOMY.gown.lengthM + 0.005);
  });

  it('swings with the period of a hanging chain, slowed by the air', () => {
    // In a world that does not bring to rest what nothing touches.
    const world = new World({ sleep: false });
    const gown = addGown(world, ROOMY, 0);
    world.finalize();
    pinGown(world, gown, true);
    const start = world.strandStart(gown.edges.left);
    for (let k = 1; k <= GOWN_LINKS; k++) world.unpinNode(start + k);
    const link = ROOMY.gown.lengthM / GOWN_LINKS;
    world.placeStrand(gown.edges.left, Array.from({ length: GOWN_LINKS + 1 }, (_, k): readonly [number, number] => [X + Math.sin(0.06) * k * link, Y - Math.cos(0.06) * k * link]));
    const passes: number[] = [];
    let before = world.x[start + GOWN_LINKS]! - X;
    for (let k = 1; passes.length < 3 && k < 1200; k++) {
      world.step();
      const now = world.x[start + GOWN_LINKS]! - X;
      if (before * now < 0) passes.push((k - now / (now - before)) / 120);
      before = now;
    }
    const omega = CHAIN * Math.sqrt(GRAVITY / ROOMY.gown.lengthM);
    const damped = Math.sqrt(omega * omega - (DRAG * DRAG) / 4);
    expect(Math.abs((passes[2]! - passes[0]!) / ((2 * Math.PI) / damped) - 1)).toBeLessThan(0.05);
  });
});
