import type { SnapshotFrom } from 'xstate';
import { nothingDone } from '../done.ts';
import { SHEATH_TASKS, type SheathTaskId } from '../observation.ts';
import { record, stationSetup, takeBack } from '../stationSetup.ts';
import { tasksBefore } from './tasks.ts';

/** Facts that carry the loading of the sheath on, each with the step at which it became true. */
export type SheathEvent =
  | { readonly type: 'gel.inside'; readonly step: number }
  | { readonly type: 'probe.taken'; readonly step: number }
  | { readonly type: 'cord.covered'; readonly step: number }
  | { readonly type: 'face.cleared'; readonly step: number }
  | { readonly type: 'face.spoiled'; readonly step: number }
  | { readonly type: 'bands.put'; readonly step: number }
  | { readonly type: 'probe.stayed'; readonly step: number }
  | { readonly type: 'probe.slid'; readonly step: number }
  | { readonly type: 'probe.takenUp'; readonly step: number }
  | { readonly type: 'sheath.fresh'; readonly step: number };

const sheath = stationSetup<SheathTaskId, SheathEvent>(tasksBefore).extend({
  guards: {
    'the probe is still to be laid down': ({ context }) => context.done.laidDown === null,
  },
});

/** A fresh sheath knows nothing of what was done with the one before. */
const again = (task: SheathTaskId) => ({ 'sheath.fresh': { target: 'open', actions: takeBack(task) } }) as const;

/**
 * The loading of the probe into its sheath, one region per task, since nothing keeps a person from doing them in another order. Time is
 * counted outside: the machine hears of a hold when it is complete.
 */
export const sheathMachine = sheath.createMachine({
  id: 'sheath',
  context: { done: nothingDone(SHEATH_TASKS) },
  type: 'parallel',
  states: {
    gelInside: {
      initial: 'open',
      states: { open: { on: { 'gel.inside': { target: 'done', actions: record('gelInside') } } }, done: { on: again('gelInside') } },
    },
    probeTaken: {
      initial: 'open',
      states: { open: { on: { 'probe.taken': { target: 'done', actions: record('probeTaken') } } }, done: { on: again('probeTaken') } },
    },
    covered: {
      initial: 'open',
      states: { open: { on: { 'cord.covered': { target: 'done', actions: record('covered') } } }, done: { on: again('covered') } },
    },
    airOut: {
      initial: 'open',
      states: {
        open: { on: { 'face.cleared': { target: 'done', actions: record('airOut') } } },
        done: { on: { 'face.spoiled': { target: 'open', guard: 'the probe is still to be laid down', actions: takeBack('airOut') }, ...again('airOut') } },
      },
    },
    banded: {
      initial: 'open',
      states: { open: { on: { 'bands.put': { target: 'done', actions: record('banded') } } }, done: { on: again('banded') } },
    },
    laidDown: {
      initial: 'open',
      states: {
        open: { on: { 'probe.stayed': { target: 'done', actions: record('laidDown') } } },
        done: {
          on: {
            'probe.slid': { target: 'open', actions: takeBack('laidDown') },
            // What comes after is the work on the field.
            'probe.takenUp': 'over',
            ...again('laidDown'),
          },
        },
        over: { on: again('laidDown') },
      },
    },
  },
});

export type SheathSnapshot = SnapshotFrom<typeof sheathMachine>;
