import { describe, expect, it } from 'vitest';
import { depthOf } from '../../../../src/core/room/arm.ts';
import { armOf } from '../../../../src/core/room/driveHands.ts';
import { CLOTH_R } from '../../../../src/core/room/gown/clothStrands.ts';
import type { Scenario } from '../../../../src/core/scenario/schema.ts';
import { GownWork } from '../../../support/gownWork.ts';
import { ROOMY } from '../../../support/gownRooms.ts';
import { Operator } from '../../../support/operator.ts';
import { freshRun } from '../../../support/runOperator.ts';

const { upperArmM, forearmM, foreshortening, chestDepthM } = ROOMY.operator;
const ARM_M = upperArmM + forearmM;
/** Nothing stands beside the place where it is put on. */
const SPACIOUS: Scenario = { ...ROOMY, room: { ...ROOMY.room, kitTable: { ...ROOMY.room.kitTable, xM: 1.6 } } };

/** The open gown, held by both shoulders. */
function held(room = ROOMY): GownWork {
  const work = new GownWork(new Operator(freshRun(room)));
  return work.lift().fallOpen().takeShoulder();
}

const brokenBy = ({ op }: GownWork): string[] => op.run.result().breaks.map(({ surface }) => surface);
const wristFar = ({ op }: GownWork): number => {
  const { shoulderX, shoulderY, wristX, wristY } = armOf(op.run.room.scene, 'left', op.run.room.torsoX);
  return Math.hypot(wristX - shoulderX, wristY - shoulderY);
};

describe('How far before the operator the open gown hangs', () => {
  // Design 3: both links are seen foreshortened, so that the rest of their length reaches toward the viewer (Pythagoras).
  it('is as far as the foreshortened arm reaches toward the viewer, less half the chest, where hands are in reach', () => {
    const work = held();
    work.op.wait(2);
    expect(work.gown.inDepth.nearest!.gapM).toBeCloseTo(ARM_M * Math.sqrt(1 - foreshortening ** 2) - chestDepthM / 2 - CLOTH_R, 3);
    expect(brokenBy(work)).toEqual([]);
  });

  it('shrinks as a raised arm is stretched: depth² and reach² make up the length of the arm', () => {
    const work = held().holdUp(0.6);
    work.op.wait(2);
    const far = wristFar(work);
    expect(far).toBeGreaterThan(ARM_M * foreshortening + 0.05);
    const { x } = work.gown.inDepth.lineOf('left', 'edge')!;
    expect(x[0]! ** 2 + far ** 2).toBeCloseTo(ARM_M ** 2, 3);
    expect(depthOf(ROOMY, armOf(work.op.run.room.scene, 'left', work.op.run.room.torsoX))).toBeCloseTo(x[0]!, 3);
  });

  it('comes to nothing, slowly raised, where the plumb cloth reaches the front of the chest', () => {
    const work = held().holdUp(0.55);
    let up = 0.55;
    for (; up < 0.75 && brokenBy(work).length === 0; up += 0.005) {
      for (const side of ['left', 'right'] as const) work.op.palmTo(side, work.x + (side === 'left' ? 0.17 : -0.17), work.shoulderM + up, 0.05);
      work.op.wait(1);
    }
    expect(brokenBy(work)).toEqual(['gown#1:hem']);
    // A plumb line at the distance of half the chest from the shoulders.
    expect(wristFar(work)).toBeGreaterThan(Math.sqrt(ARM_M ** 2 - (chestDepthM / 2 + 0.03) ** 2));
    expect(wristFar(work)).toBeLessThan(Math.sqrt(ARM_M ** 2 - (chestDepthM / 2 - 0.01) ** 2));
  });

  it('does not shrink by a step aside: no arm is stretched sideways', () => {
    const work = held(SPACIOUS);
    const seen = work.op.watchLeast(() => work.gown.inDepth.nearest?.gapM ?? Infinity);
    for (const aside of [0.35, 0, 0.35]) work.op.palmsTo([['right', work.x + aside - 0.17, work.shoulderM], ['left', work.x + aside + 0.17, work.shoulderM]], 1);
    work.op.wait(1);
    expect(seen.least).toBeGreaterThan(0.2);
    expect(brokenBy(work)).toEqual([]);
  });

  it('is no break where the gown, raised as high with care, hangs free: only snatched up it swings against the clothes', () => {
    const slowly = held().holdUp(0.65, 0.15);
    slowly.op.wait(2);
    expect(brokenBy(slowly)).toEqual([]);
    expect(slowly.gown.inDepth.nearest!.gapM).toBeGreaterThan(0.03);
  });
});
