import { initialTransition, transition } from 'xstate';
import { describe, expect, it } from 'vitest';
import { fieldMachine, type FieldEvent, type FieldSnapshot } from '../../../../src/core/procedure/field/fieldMachine.ts';

/** State after these events, one per step from step 1. */
function after(...types: FieldEvent['type'][]): FieldSnapshot {
  let [state] = initialTransition(fieldMachine);
  types.forEach((type, k) => {
    [state] = transition(fieldMachine, state, { type, step: k + 1 });
  });
  return state;
}

const ALL: readonly FieldEvent['type'][] = ['gel.applied', 'probe.reached', 'view.held', 'probe.stayed', 'anaesthetic.given', 'needle.held', 'rubbish.cleared'];

describe('The machine of the field', () => {
  it('begins with everything open and the probe unused', () => {
    expect(after().value).toEqual({ gel: 'open', view: 'open', park: 'unused', anaesthetic: 'open', ready: 'open', rubbish: 'open' });
  });

  it('comes to the end of every region', () => {
    expect(after(...ALL).value).toEqual({ gel: 'done', view: 'done', park: 'done', anaesthetic: 'done', ready: 'done', rubbish: 'done' });
  });

  it('records each step and nothing out of order', () => {
    expect(Object.values(after(...ALL).context.done).map((done) => done?.outOfOrderAfter)).toEqual([null, null, null, null, null, null]);
    expect(after(...ALL).context.done.ready?.step).toBe(6);
  });

  it('does not record the same thing twice', () => {
    expect(after('gel.applied', 'gel.applied').context.done.gel?.step).toBe(1);
    expect(after('needle.held', 'needle.held').context.done.ready?.step).toBe(1);
  });

  it('does not take a probe that lay ready for a parked one', () => {
    expect(after('probe.stayed').value.park).toBe('unused');
    expect(after('probe.stayed').context.done.park).toBeNull();
  });

  it('does not let a probe slide that was not parked', () => {
    expect(after('probe.reached', 'probe.slid').value.park).toBe('open');
  });

  it('takes parking back when the probe slides, and gives it again', () => {
    const slid = after('gel.applied', 'probe.reached', 'view.held', 'probe.stayed', 'probe.slid');
    expect([slid.value.park, slid.context.done.park]).toEqual(['slid', null]);
    expect(after('gel.applied', 'probe.reached', 'view.held', 'probe.stayed', 'probe.slid', 'probe.stayed').context.done.park).toEqual({ step: 6, outOfOrderAfter: null });
  });

  it('does not take parking back once probe and needle were ready', () => {
    expect(after(...ALL, 'probe.slid').value.park).toBe('done');
  });

  it('leaves parking alone when the first view comes after probe and needle were ready', () => {
    expect(after('gel.applied', 'probe.reached', 'probe.stayed', 'needle.held', 'view.held').value.park).toBe('done');
  });

  it('opens parking again with the first view, not with a later one', () => {
    expect(after('gel.applied', 'probe.reached', 'probe.stayed', 'view.held').value.park).toBe('open');
    expect(after('gel.applied', 'probe.reached', 'view.held', 'probe.stayed', 'view.held').value.park).toBe('done');
  });

  it('runs no effect and waits for no clock', () => {
    let [state, effects] = initialTransition(fieldMachine);
    expect(effects).toEqual([]);
    for (const type of ALL) {
      [state, effects] = transition(fieldMachine, state, { type, step: 1 });
      expect(effects).toEqual([]);
    }
  });
});
