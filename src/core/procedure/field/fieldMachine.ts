import { and, type SnapshotFrom } from 'xstate';
import { nothingDone } from '../done.ts';
import { FIELD_TASKS, type FieldTaskId } from '../observation.ts';
import { record, stationSetup, takeBack } from '../stationSetup.ts';
import { tasksBefore } from './tasks.ts';

/** Facts that carry the work on, each with the step at which it became true. */
export type FieldEvent =
  | { readonly type: 'gel.applied'; readonly step: number }
  | { readonly type: 'probe.reached'; readonly step: number }
  | { readonly type: 'view.held'; readonly step: number }
  | { readonly type: 'probe.stayed'; readonly step: number }
  | { readonly type: 'probe.slid'; readonly step: number }
  | { readonly type: 'anaesthetic.given'; readonly step: number }
  | { readonly type: 'needle.held'; readonly step: number }
  | { readonly type: 'rubbish.cleared'; readonly step: number }
  | { readonly type: 'rubbish.appeared'; readonly step: number };

const field = stationSetup<FieldTaskId, FieldEvent>(tasksBefore).extend({
  guards: {
    'the probe is still needed where it lies': ({ context }) => context.done.ready === null,
    'it was parked before there was a view': ({ context }) => context.done.view === null,
  },
});

/**
 * The work on the field, one region per task, since nothing keeps a person from doing them in another order. Time is counted
 * outside: the machine hears of a hold when it is complete.
 */
export const fieldMachine = field.createMachine({
  id: 'field',
  context: { done: nothingDone(FIELD_TASKS) },
  type: 'parallel',
  states: {
    gel: {
      initial: 'open',
      states: { open: { on: { 'gel.applied': { target: 'done', actions: record('gel') } } }, done: {} },
    },
    view: {
      initial: 'open',
      states: { open: { on: { 'view.held': { target: 'done', actions: record('view') } } }, done: {} },
    },
    park: {
      initial: 'unused',
      states: {
        // The probe lies ready on the field at first; that is not the work of this person.
        unused: { on: { 'probe.reached': 'open' } },
        open: { on: { 'probe.stayed': { target: 'done', actions: record('park') } } },
        slid: { on: { 'probe.stayed': { target: 'done', actions: record('park') } } },
        done: {
          on: {
            'probe.slid': { target: 'slid', guard: 'the probe is still needed where it lies', actions: takeBack('park') },
            'view.held': { target: 'open', guard: and(['it was parked before there was a view', 'the probe is still needed where it lies']), actions: takeBack('park') },
          },
        },
      },
    },
    anaesthetic: {
      initial: 'open',
      states: { open: { on: { 'anaesthetic.given': { target: 'done', actions: record('anaesthetic') } } }, done: {} },
    },
    ready: {
      initial: 'open',
      states: { open: { on: { 'needle.held': { target: 'done', actions: record('ready') } } }, done: {} },
    },
    rubbish: {
      initial: 'open',
      states: {
        open: { on: { 'rubbish.cleared': { target: 'done', actions: record('rubbish') } } },
        done: { on: { 'rubbish.appeared': { target: 'open', actions: takeBack('rubbish') } } },
      },
    },
  },
});

export type FieldSnapshot = SnapshotFrom<typeof fieldMachine>;
