import type { SnapshotFrom } from 'xstate';
import { nothingDone } from '../done.ts';
import { GOWN_TASKS, type GownTaskId } from '../observation.ts';
import { record, stationSetup, takeBack } from '../stationSetup.ts';
import { tasksBefore } from './tasks.ts';

/** Facts that carry gowning and gloving on, each with the step at which it became true. */
export type GownEvent =
  | { readonly type: `done.${GownTaskId}`; readonly step: number }
  | { readonly type: 'gown.fresh'; readonly step: number }
  | { readonly type: 'glove.off'; readonly step: number };

const gown = stationSetup<GownTaskId, GownEvent>(tasksBefore);

/** One task: open until it is done; a fresh gown opens it again, and a glove that comes off the second glove. */
const region = (task: GownTaskId) => {
  const takenBack = { target: 'open', actions: takeBack(task) } as const;
  return {
    initial: 'open',
    states: {
      open: { on: { [`done.${task}`]: { target: 'done', actions: record(task) } } },
      done: { on: { 'gown.fresh': takenBack, ...(task === 'secondGlove' ? { 'glove.off': takenBack } : {}) } },
    },
  } as const;
};

/** Gowning and gloving, one region per task, since nothing keeps a person from doing them in another order. Time is counted outside. */
export const gownMachine = gown.createMachine({
  id: 'gown',
  context: { done: nothingDone(GOWN_TASKS) },
  type: 'parallel',
  states: {
    opened: region('opened'), armsIn: region('armsIn'), tied: region('tied'), firstGlove: region('firstGlove'), secondGlove: region('secondGlove'),
    turned: region('turned'), waited: region('waited'),
  },
});

export type GownSnapshot = SnapshotFrom<typeof gownMachine>;
