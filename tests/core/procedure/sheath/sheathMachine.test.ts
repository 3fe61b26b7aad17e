import { initialTransition, transition } from 'xstate';
import { describe, expect, it } from 'vitest';
import { sheathMachine, type SheathEvent, type SheathSnapshot } from '../../../../src/core/procedure/sheath/sheathMachine.ts';

/** State after these events, one per step from step 1. */
function after(...types: SheathEvent['type'][]): SheathSnapshot {
  let [state] = initialTransition(sheathMachine);
  types.forEach((type, k) => {
    [state] = transition(sheathMachine, state, { type, step: k + 1 });
  });
  return state;
}

const ALL: readonly SheathEvent['type'][] = ['gel.inside', 'probe.taken', 'cord.covered', 'face.cleared', 'bands.put', 'probe.stayed'];
const OPEN = { gelInside: 'open', probeTaken: 'open', covered: 'open', airOut: 'open', banded: 'open', laidDown: 'open' };
const missing = (...types: SheathEvent['type'][]) => Object.fromEntries(Object.entries(after(...types).context.done).flatMap(([task, done]) => (done ? [[task, done.outOfOrderAfter]] : [])));

describe('The machine of the sheath', () => {
  it('begins with everything open', () => {
    expect(after().value).toEqual(OPEN);
  });

  it('comes to the end of every region and records each step', () => {
    expect(after(...ALL).value).toEqual({ gelInside: 'done', probeTaken: 'done', covered: 'done', airOut: 'done', banded: 'done', laidDown: 'done' });
    expect(Object.values(after(...ALL).context.done)).toEqual([1, 2, 3, 4, 5, 6].map((step) => ({ step, outOfOrderAfter: null })));
  });

  it('does not record the same thing twice', () => {
    expect(after('gel.inside', 'gel.inside').context.done.gelInside?.step).toBe(1);
  });

  it.each([
    ['air, bands, cord', ['face.cleared', 'bands.put', 'cord.covered']],
    ['bands, air, cord', ['bands.put', 'face.cleared', 'cord.covered']],
    ['bands, cord, air', ['bands.put', 'cord.covered', 'face.cleared']],
  ] as const)('takes %s in this order for right', (_, order) => {
    expect(Object.values(missing('gel.inside', 'probe.taken', ...order, 'probe.stayed'))).toEqual([null, null, null, null, null, null]);
  });

  it('names the first that should have come before', () => {
    expect(missing('probe.taken', 'gel.inside')).toEqual({ gelInside: null, probeTaken: 'gelInside' });
    expect(missing('gel.inside', 'bands.put', 'probe.taken')).toEqual({ gelInside: null, banded: 'probeTaken', probeTaken: null });
    expect(missing('gel.inside', 'probe.taken', 'bands.put', 'probe.stayed').laidDown).toBe('covered');
    expect(missing('gel.inside', 'probe.taken', 'cord.covered', 'bands.put', 'probe.stayed').laidDown).toBe('airOut');
    expect(missing('gel.inside', 'probe.taken', 'cord.covered', 'face.cleared', 'probe.stayed').laidDown).toBe('banded');
  });

  it('takes the air back until the probe is laid down, and no longer', () => {
    expect(after(...ALL.slice(0, 5), 'face.spoiled').value.airOut).toBe('open');
    expect(after(...ALL.slice(0, 5), 'face.spoiled').context.done.airOut).toBeNull();
    expect(after(...ALL, 'face.spoiled').value.airOut).toBe('done');
    expect(after(...ALL, 'probe.slid', 'face.spoiled').value.airOut).toBe('open');
  });

  it('takes laying down back when the probe slides, and gives it again', () => {
    expect(after(...ALL, 'probe.slid').context.done.laidDown).toBeNull();
    expect(after(...ALL, 'probe.slid', 'probe.stayed').context.done.laidDown).toEqual({ step: 8, outOfOrderAfter: null });
    expect(after('probe.slid').value.laidDown).toBe('open');
  });

  it('leaves laying down alone once the probe was taken up again', () => {
    const taken = after(...ALL, 'probe.takenUp', 'probe.slid');
    expect([taken.value.laidDown, taken.context.done.laidDown?.step]).toEqual(['over', 6]);
    expect(after(...ALL.slice(0, 5), 'probe.takenUp', 'probe.stayed', 'probe.slid').value.laidDown).toBe('open');
  });

  it('begins anew with a fresh sheath, whatever was done', () => {
    for (let k = 0; k <= ALL.length; k++) {
      const { value, context } = after(...ALL.slice(0, k), 'sheath.fresh');
      expect([value, Object.values(context.done)]).toEqual([OPEN, [null, null, null, null, null, null]]);
    }
    expect(after(...ALL, 'probe.takenUp', 'sheath.fresh').value).toEqual(OPEN);
  });

  it('runs no effect and waits for no clock', () => {
    let [state, effects] = initialTransition(sheathMachine);
    expect(effects).toEqual([]);
    for (const type of ALL) {
      [state, effects] = transition(sheathMachine, state, { type, step: 1 });
      expect(effects).toEqual([]);
    }
  });
});
