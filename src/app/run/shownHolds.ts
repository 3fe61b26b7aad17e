import type { NextHold } from '../../core/procedure/nextHold.ts';
import type { LiveRun } from './LiveRun.ts';

type Shown = Pick<LiveRun, 'run' | 'coaching'>;

/** Whether what comes next is marked: under shown coaching, while no break stands that must be answered first. */
export const isNextShown = ({ run, coaching }: Shown): boolean => coaching === 'shown' && !run.remedy && run.breaks.every(({ remediedStep }) => remediedStep !== null);

/** Holds that are marked in the room. */
export const shownHolds = (live: Shown): readonly NextHold[] => (isNextShown(live) ? live.run.nextHolds : []);
