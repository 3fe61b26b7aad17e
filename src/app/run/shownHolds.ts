import type { NextHold } from '../../core/procedure/nextHold.ts';
import type { LiveRun } from './LiveRun.ts';

/** Holds that are marked in the room: under shown coaching, while no break stands that must be answered first. */
export function shownHolds({ run, coaching }: Pick<LiveRun, 'run' | 'coaching'>): readonly NextHold[] {
  if (coaching !== 'shown' || run.remedy || run.breaks.some(({ remediedStep }) => remediedStep === null)) return [];
  return run.nextHolds;
}
