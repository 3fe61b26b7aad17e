import { median, type Movement } from '../room/handlingMovement.ts';
import type { Room } from '../room/room.ts';
import type { HandlingReport, SmoothnessReport } from './result.ts';

/** Rough movements that are named. */
const ROUGHEST = 3;

/** How the hands worked so far, as it is reported. */
export function handlingOf({ hands, drift, scene, touches, gone, handling }: Room): HandlingReport {
  return {
    pathM: { left: roundMm(hands.left.pathM), right: roundMm(hands.right.pathM) },
    driftM: { left: roundMm(drift.farthest.left), right: roundMm(drift.farthest.right) },
    dropped: scene.things.filter((_, k) => touches.offField()[k] && !gone[k]).map(({ id }) => id),
    measured: {
      driftStep: { ...handling.driftStep },
      drops: handling.drops,
      smoothness: { left: smoothnessOf(handling.movements('left')), right: smoothnessOf(handling.movements('right')) },
      clearance: handling.smallestClearances.map((least) => ({ ...least, metres: roundMm(least.metres) })),
    },
  };
}

const smoothnessOf = (movements: readonly Movement[]): SmoothnessReport => {
  const middle = median(movements.map(({ logJerk }) => logJerk));
  const roughest = [...movements].sort((a, b) => b.logJerk - a.logJerk || a.startStep - b.startStep).slice(0, ROUGHEST);
  return { movements: movements.length, median: middle === null ? null : -roundHundredth(middle), roughest: roughest.map(({ startStep, logJerk }) => ({ step: startStep, value: -roundHundredth(logJerk) })) };
};

/** Reports speak in whole millimetres. */
const roundMm = (metres: number): number => Math.round(metres * 1000) / 1000;
const roundHundredth = (value: number): number => Math.round(value * 100) / 100;
