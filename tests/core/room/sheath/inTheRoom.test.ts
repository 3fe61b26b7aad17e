import { describe, expect, it } from 'vitest';
import { STEPS_PER_SECOND } from '../../../../src/core/base/time.ts';
import { slideForceN } from '../../../../src/core/room/sheath/slideForce.ts';
import { THING_SHAPES } from '../../../../src/core/room/itemShapes.ts';
import { scenarioFields } from '../../../../src/core/scenario/fields.ts';
import { Loading } from '../../../support/loading.ts';
import { runOperator } from '../../../support/runOperator.ts';

const G = 9.81;

/**
 * Slow mode of a rigid body that hangs from a flexible cord (textbook small oscillations of a double pendulum): cord of length L and mass
 * c as a rod that turns by θ, body of mass m and inertia I about its middle, d beyond the end of the cord, that turns by φ.
 * (mL² + cL²/3) θ″ + mLd φ″ + (m + c/2) gL θ = 0 and mLd θ″ + (I + md²) φ″ + mgd φ = 0.
 */
function slowPeriod(L: number, c: number, m: number, I: number, d: number): number {
  const a = m * L * L + (c * L * L) / 3;
  const b = m * L * d;
  const e = I + m * d * d;
  const k = (m + c / 2) * G * L;
  const n = m * G * d;
  // (k − aλ)(n − eλ) − b²λ² = 0 for λ = ω²; the smaller root.
  const p = a * e - b * b;
  const q = a * n + e * k;
  const lambda = (q - Math.sqrt(q * q - 4 * p * k * n)) / (2 * p);
  return (2 * Math.PI) / Math.sqrt(lambda);
}

describe('The probe that hangs from the assistant’s hand', () => {
  it('swings with the period of the compound pendulum that it is, within 2 %', () => {
    let period = 0;
    let expected = 0;
    runOperator((op) => {
      new Loading(op).fetch().open().aside().bring();
      const { scene, assistant } = op.run.room;
      const { world, things, cord, scenario } = scene;
      const probe = things[0]!.body;
      const first = world.strandStart(cord);
      const tips = { ...assistant.state.limbs.right };
      const L = Math.hypot(world.x[first]! - tips.x, world.y[first]! - tips.y);
      const { halfLength, halfHeight } = THING_SHAPES.probe;
      const m = scenario.probe.massKg;
      expected = slowPeriod(L, scenario.cord.massKgPerM * L, m, (m * (halfLength ** 2 + halfHeight ** 2)) / 3, halfLength);
      const rest = world.bodyX[probe]!;
      world.setBodyVelocity(probe, 0.12, 0);
      // Times of the crossings from left to right, interpolated between steps.
      const crossings: number[] = [];
      for (let k = 0, before = 0; k < 5 * STEPS_PER_SECOND; k++) {
        op.wait(1 / STEPS_PER_SECOND);
        const now = world.bodyX[probe]! - rest;
        if (before < 0 && now >= 0) crossings.push(k - now / (now - before));
        before = now;
      }
      period = (crossings[2]! - crossings[0]!) / 2 / STEPS_PER_SECOND;
    }, 'sheath-short');
    expect(Math.abs(period / expected - 1)).toBeLessThan(0.02);
  });
});

describe('The film on the cord', () => {
  // Euler and Eytelwein, as tabled for a quarter, a half and a whole turn at the friction of the shipped sheaths.
  it.each([
    [0.25, Math.PI / 2, 1.4810],
    [0.25, Math.PI, 2.1933],
    [0.25, 2 * Math.PI, 4.8105],
  ])('at friction %f over %f radians takes %f times the pull of a straight cord', (friction, angle, factor) => {
    expect(slideForceN(1, friction, angle)).toBeCloseTo(factor, 3);
  });

  it('slides until the hand pulls no harder than the belt law asks for over the bends that the cord then has, within 10 %', () => {
    const ratios: number[] = [];
    runOperator((op) => {
      new Loading(op).toProbe().letGo().op.wait(1);
      const { scene, hands } = op.run.room;
      const { world, cord, cover, scenario } = scene;
      const first = world.strandStart(cord);
      const { wishX, wishY } = hands.right;
      for (let mm = 1; mm <= 40; mm++) {
        const before = cover.coveredM;
        op.send({ type: 'hand.move', hand: 'right', xMm: Math.round(wishX * 1000), yMm: Math.round(wishY * 1000) + mm }).wait(0.5);
        if (cover.coveredM - before < 1e-4) continue;
        // It has slid and come to rest: what is left of the pull is what the film withstands.
        const end = first + Math.floor(cover.coveredM / scenario.cord.linkM);
        let pulled = 0;
        for (let k = 0; k < 24; k++) {
          op.wait(1 / STEPS_PER_SECOND);
          const [ux, uy] = [world.x[end + 1]! - world.x[end]!, world.y[end + 1]! - world.y[end]!];
          const [dx, dy] = [hands.right.targetX - op.hand('right').x, hands.right.targetY - op.hand('right').y];
          pulled += (hands.right.driveN * (dx * ux + dy * uy)) / Math.hypot(ux, uy) / Math.max(Math.hypot(dx, dy), 1e-9) / 24;
        }
        let turned = 0;
        for (let i = first + 1; i < end; i++) {
          const turn = Math.atan2(world.y[i + 1]! - world.y[i]!, world.x[i + 1]! - world.x[i]!) - Math.atan2(world.y[i]! - world.y[i - 1]!, world.x[i]! - world.x[i - 1]!);
          turned += Math.abs(Math.atan2(Math.sin(turn), Math.cos(turn)));
        }
        ratios.push(pulled / (scenario.sheath.drawN * Math.exp(scenario.sheath.friction * turned)));
      }
    }, 'sheath-short');
    expect(ratios.length).toBeGreaterThan(10);
    expect(Math.min(...ratios)).toBeGreaterThan(0.95);
    expect(Math.max(...ratios)).toBeLessThan(1.05);
  });

  it('covers, once it is all drawn, what its length leaves over from the probe, measured along the cord as it lies', () => {
    let measured = 0;
    let length = 0;
    const { result } = runOperator((op) => {
      new Loading(op).toProbe().letGo().drawUp().tail();
      const { world, cord, cover, scenario } = op.run.room.scene;
      length = scenario.sheath.lengthM - 2 * THING_SHAPES.probe.halfLength;
      const first = world.strandStart(cord);
      const links = cover.coveredM / scenario.cord.linkM;
      for (let k = 0; k < links; k++) measured += Math.min(1, links - k) * Math.hypot(world.x[first + k + 1]! - world.x[first + k]!, world.y[first + k + 1]! - world.y[first + k]!);
    }, 'sheath-short');
    expect(result.breaks).toEqual([]);
    expect(Math.abs(measured / length - 1)).toBeLessThan(0.005);
  });
});

describe('Sizes of sheaths', () => {
  // On the market 30 to 244 cm (a vendor's catalogue), kits for central lines typically 91 to 150 cm, 13 to 15 cm wide lying flat (common practice).
  it.each([
    ['sheath.lengthM', 0.91, 2.44],
    ['sheath.widthM', 0.1, 0.18],
  ])('%s may be written from %f to %f m', (path, low, high) => {
    expect(scenarioFields().get(path)).toMatchObject({ low, high });
  });
});
