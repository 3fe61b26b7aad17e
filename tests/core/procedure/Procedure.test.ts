import { describe, expect, it } from 'vitest';
import { StateHash } from '../../../src/core/base/hash.ts';
import { secondsToSteps } from '../../../src/core/base/time.ts';
import { FieldProcedure } from '../../../src/core/procedure/field/FieldProcedure.ts';
import { FIELD_TASKS, SHEATH_TASKS, type FieldObservation, type LoadingObservation } from '../../../src/core/procedure/observation.ts';
import { Procedure } from '../../../src/core/procedure/Procedure.ts';
import { QUIET } from './field/FieldDriver.ts';
import { FOLDED, loadedUpTo, sheathScenario } from './sheath/SheathDriver.ts';

const FIELD = sheathScenario({ station: 'field' });
const SHEATH = sheathScenario();
const BOTH = sheathScenario({ followedBy: ['field'] });

const digest = (procedure: Pick<Procedure, 'hashInto'>): string => {
  const hash = new StateHash();
  procedure.hashInto(hash);
  return hash.digest();
};

/** Shows scenes of both stations for so many seconds each. */
class Shown {
  private step = 0;

  constructor(readonly procedure: Procedure) {}

  for(seconds: number, field: Partial<FieldObservation>, sheath: Partial<LoadingObservation> | null): this {
    for (let k = 0; k < secondsToSteps(seconds); k++) {
      const step = this.step++;
      this.procedure.observe({ gown: null, field: { ...QUIET, ...field, step }, sheath: sheath === null ? null : { ...FOLDED, ...sheath, step } });
    }
    return this;
  }
}

/** The sheath as it is when all of the loading is done, step by step as the driver showed it. */
const LOADED = loadedUpTo('laidDown').scene;
const taken: Partial<LoadingObservation> = { ...LOADED, probe: { ...LOADED.probe, heldThrough: 'right', lyingOnField: false } };
const atSite = (coupled: boolean): FieldObservation['probe'] => ({ heldBy: 'right', atSite: true, speed: 0, coupled, lyingOnField: false });

/** A run in which all of the loading is done. */
const loaded = (): Shown => new Shown(new Procedure(BOTH)).for(0.5, {}, { sheath: 'open', gelMl: 6 }).for(0.5, {}, { ...taken, coveredM: 0, bands: FOLDED.bands }).for(1, {}, taken).for(4, {}, LOADED);

describe('A run on the field alone', () => {
  it('is to the bit what the procedure of the field is', () => {
    const whole = new Procedure(FIELD);
    const field = new FieldProcedure(FIELD);
    for (let step = 0; step < 500; step++) {
      const seen: FieldObservation = { ...QUIET, step, gelOnSite: step / 400, probe: atSite(true) };
      whole.observe({ gown: null, field: seen, sheath: null });
      field.observe(seen);
      expect(digest(whole)).toBe(digest(field));
    }
    expect(whole.snapshot()).toEqual(field.snapshot());
    expect(whole.progress).toEqual(field.progress);
    const other = new Procedure(FIELD);
    other.restore(field.snapshot());
    expect(digest(other)).toBe(digest(field));
  });
});

describe('A run of loading alone', () => {
  it('has the tasks of the sheath, no steadiness and no sharps', () => {
    const { progress } = new Shown(new Procedure(SHEATH)).for(1, { sharpsBinned: ['needle'] }, {}).procedure;
    expect(progress.tasks.map(({ task }) => task)).toEqual(SHEATH_TASKS);
    expect(progress).toMatchObject({ current: 'gelInside', steadyShare: null, sharpsBinned: [] });
  });

  it('must be shown the sheath', () => {
    expect(() => new Shown(new Procedure(SHEATH)).for(1, {}, null)).toThrow('sheath');
  });
});

describe('A run through both stations', () => {
  it('has the tasks of both in their order', () => {
    expect(new Procedure(BOTH).progress.tasks.map(({ task }) => task)).toEqual([...SHEATH_TASKS, ...FIELD_TASKS]);
  });

  it('goes on to the field when the probe is laid down, with its hint', () => {
    const { progress } = loaded().procedure;
    expect([progress.current, progress.hint]).toEqual(['gel', 'Take the gel packet and put gel on the site.']);
  });

  it('asks first for what is open at the first station, also when the second is under way', () => {
    const run = new Shown(new Procedure(BOTH)).for(1, { gelOnSite: 1 }, {});
    expect(run.procedure.progress).toMatchObject({ current: 'gelInside', hint: 'Take the sheath, and open its mouth with the other hand.' });
    expect(run.procedure.progress.tasks.find(({ task }) => task === 'gel')?.doneStep).toBe(0);
  });

  it('gives no picture while air lies under the face', () => {
    const run = loaded().for(0.5, { gelOnSite: 1 }, LOADED).for(5, { gelOnSite: 1, probe: atSite(false) }, { ...taken, faceSpoiled: 0.6 });
    expect(run.procedure.progress).toMatchObject({ current: 'view', hint: 'No picture: there is air under the face of the probe. Stroke it away.', steadyShare: 0 });
    run.for(3, { gelOnSite: 1, probe: atSite(true) }, taken);
    expect(run.procedure.progress.current).toBe('park');
    expect(run.procedure.progress.steadyShare).toBeCloseTo(3 / 8);
  });

  it('comes to an end with the words of the last station', () => {
    const run = loaded()
      .for(3.5, { gelOnSite: 1, probe: atSite(true) }, taken)
      .for(4, { gelOnSite: 1 }, LOADED)
      .for(2.5, { gelOnSite: 1, anaesthetic: 1, probe: atSite(true), needle: { heldBy: 'left', tipToSite: 0, speed: 0 } }, taken)
      .for(0.1, { gelOnSite: 1, anaesthetic: 1, rubbishLeft: [], sharpsBinned: ['needle'] }, LOADED);
    const { progress } = run.procedure;
    expect(progress.tasks.map(({ outOfOrderAfter }) => outOfOrderAfter)).toEqual(progress.tasks.map(() => null));
    expect(progress).toMatchObject({ current: 'finished', sharpsBinned: ['needle'], hint: 'All done. One thing for next time: needles belong in the sharps container.' });
  });

  it('goes on from a snapshot, also through JSON, exactly as it would have', () => {
    const first = loaded();
    const second = new Procedure(BOTH);
    second.restore(JSON.parse(JSON.stringify(first.procedure.snapshot())));
    expect(digest(second)).toBe(digest(first.procedure));
    const { step } = (first.procedure.snapshot() as readonly { step: number }[])[0]!;
    for (let k = 1; k < 600; k++) {
      const seen = { gown: null, field: { ...QUIET, gelOnSite: 1, probe: atSite(true), step: step + k }, sheath: { ...FOLDED, ...taken, step: step + k } };
      first.procedure.observe(seen);
      second.observe(seen);
    }
    expect(digest(second)).toBe(digest(first.procedure));
    expect(second.progress).toEqual(first.procedure.progress);
  });

  it('hashes what either station depends on', () => {
    const hashes = [{}, { gelOnSite: 0.2 }].flatMap((field) => [{}, { gelMl: 1 }].map((sheath) => digest(new Shown(new Procedure(BOTH)).for(0.1, field, sheath).procedure)));
    expect(new Set(hashes).size).toBe(4);
  });
});
