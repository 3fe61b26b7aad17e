import { describe, expect, it } from 'vitest';
import { StateHash } from '../../../../src/core/base/hash.ts';
import { secondsToSteps } from '../../../../src/core/base/time.ts';
import type { RequestId } from '../../../../src/core/commands/command.ts';
import { GownProcedure } from '../../../../src/core/procedure/gown/GownProcedure.ts';
import { requestAmong } from '../../../../src/core/procedure/nextAct.ts';
import { UNSEEN, type Seen } from '../../../../src/core/procedure/gown/seen.ts';
import { ROOMY } from '../../../support/gownRooms.ts';

/** Shows one scene after the other, each for so many seconds. */
class Shown {
  readonly procedure = new GownProcedure(ROOMY);
  private step = 0;
  private seen: Seen = UNSEEN;

  for(seconds: number, change: Partial<Seen>): this {
    this.seen = { ...this.seen, ...change };
    for (let k = 0; k < Math.max(1, secondsToSteps(seconds)); k++) this.procedure.observe({ step: this.step++, ...this.seen });
    return this;
  }

  get done(): string[] {
    return this.procedure.progress.tasks.filter(({ doneStep }) => doneStep !== null).map(({ task }) => task);
  }

  get outOfOrder(): (readonly [string, string])[] {
    return this.procedure.progress.tasks.flatMap(({ task, outOfOrderAfter }) => (outOfOrderAfter === null ? [] : [[task, outOfOrderAfter] as const]));
  }

  get request(): RequestId | null {
    return requestAmong(this.procedure.nextActs);
  }

  get hint(): string {
    return this.procedure.progress.hint;
  }
}

const both = { left: true, right: true };
const inCuffs = { left: 0.05, right: 0.05 };
const on = (left: boolean, right: boolean): Partial<Seen> => ({ gloves: { left: left ? 'on' : 'lying', right: right ? 'on' : 'lying' }, overlapM: { left: left ? 0.1 : 0, right: right ? 0.1 : 0 } });
/** Both gloves on, the cuff of the right one turned back. */
const turnedBack: Partial<Seen> = { ...on(true, true), overlapM: { left: 0.1, right: 0 } };
const opened = (): Shown => new Shown().for(0.1, { gown: 'carried' }).for(0.6, { gown: 'open', holding: both, hemM: 0.3 });
const gowned = (): Shown => opened().for(0.1, { gown: 'onArms', holding: { left: false, right: false }, toCuffM: inCuffs }).for(0.1, { gown: 'tied' });
const gloved = (): Shown => gowned().for(0.1, on(false, true)).for(0.1, on(true, true));

describe('The tasks of gowning and gloving', () => {
  it('are done in the order in which it is taught', () => {
    const all = gloved().for(0.1, { card: 'tied' }).for(ROOMY.tasks.waitS, { handsTogether: true });
    expect(all.done).toEqual(['opened', 'armsIn', 'tied', 'firstGlove', 'secondGlove', 'turned', 'waited']);
    expect(all.outOfOrder).toEqual([]);
    expect(all.procedure.progress.current).toBe('finished');
  });

  it.each([
    ['a hem on the floor', { gown: 'open', holding: both, hemM: 0 }],
    ['one hand at the shoulders', { gown: 'open', holding: { left: true, right: false }, hemM: 0.3 }],
  ] as const)('do not count a gown as opened with %s', (_, change) => expect(new Shown().for(1, change).done).toEqual([]));

  it('ask for both hands near the end of their cuffs', () => {
    expect(opened().for(0.1, { gown: 'onArms', toCuffM: { left: 0.05, right: 0.3 } }).done).toEqual(['opened']);
    expect(opened().for(0.1, { gown: 'onArms', toCuffM: { left: 0.05, right: 0.1 } }).done).toEqual(['opened', 'armsIn']);
  });

  it('may have the back tied after gloving, but not the card passed before', () => {
    const late = opened().for(0.1, { gown: 'onArms', toCuffM: inCuffs }).for(0.1, on(true, false)).for(0.1, on(true, true)).for(0.1, { gown: 'tied' });
    expect(late.outOfOrder).toEqual([]);
    expect(gowned().for(0.1, { card: 'tied' }).outOfOrder).toEqual([['turned', 'firstGlove']]);
  });

  it('take a wait only with gloves on, hands together, and no longer interruption', () => {
    const ready = gloved().for(0.1, { card: 'tied' }).for(ROOMY.tasks.waitS / 2, { handsTogether: true }).for(1, { handsTogether: false }).for(ROOMY.tasks.waitS / 2, { handsTogether: true });
    expect(ready.done).not.toContain('waited');
    expect(ready.for(ROOMY.tasks.waitS, {}).done).toContain('waited');
  });

  it('begin anew with a fresh gown', () => {
    expect(gloved().for(0.1, { gown: 'lying', toCuffM: { left: null, right: null }, ...on(false, false) }).done).toEqual([]);
  });

  it('give the second glove back when one comes off', () => {
    expect(gloved().for(0.1, on(true, false)).done).not.toContain('secondGlove');
  });
});

describe('The hint', () => {
  it('names the next hold of gloving', () => {
    const work = gowned();
    expect(work.hint).toBe('Through the sleeve: take the right glove with the left hand, by its cuff.');
    expect(work.for(0.1, { gloves: { left: 'lying', right: 'taken' } }).hint).toContain('its fingers toward the elbow');
    expect(work.for(0.1, { gloves: { left: 'lying', right: 'laid' } }).hint).toContain('draw it over the whole knit cuff');
    expect(work.for(0.1, { gloves: { left: 'lying', right: 'over' }, overlapM: { left: 0, right: 0.04 } }).hint).toContain('over the whole knit cuff');
    expect(work.for(0.1, { gloves: { left: 'lying', right: 'over' }, overlapM: { left: 0, right: 0.13 } }).hint).toContain('Stretch the right arm');
    expect(work.for(0.1, on(false, true)).hint).toBe('Now the left glove: take it with the right hand.');
  });

  it('says when hem or sleeves hang close to the own clothes', () => {
    expect(opened().for(0.1, { clothesGapM: 0.27 }).hint).not.toMatch(/clothes/);
    expect(opened().for(0.1, { clothesGapM: 0.08 }).hint).toMatch(/close to your own clothes/);
    expect(opened().for(0.1, { clothesGapM: null }).hint).not.toMatch(/clothes/);
  });

  it('leads to the assistant with the back to tie and with the card in hand, and never else', () => {
    const work = opened();
    expect(work.request).toBeNull();
    expect([work.for(0.1, { gown: 'onArms', holding: { left: false, right: false }, toCuffM: inCuffs }).hint, work.request]).toEqual(['Ask the assistant to tie the back.', 'tieBack']);
    expect([work.for(0.1, { isHelped: true }).hint, work.request]).toEqual(['Hold both cuffs and keep still: the assistant ties the back.', null]);
    expect(work.for(0.1, { gown: 'tied', isHelped: false }).request).toBeNull();
    expect(work.for(0.1, on(false, true)).for(0.1, { ...on(true, true), card: 'hanging' }).request).toBeNull();
    expect([work.for(0.1, { card: 'held' }).hint, work.request]).toEqual(['Ask the assistant to take the card.', 'takeCard']);
    // A knit cuff that shows is covered first.
    expect(work.for(0.1, turnedBack).request).toBeNull();
    expect(work.for(0.1, { ...on(true, true), card: 'passed' }).request).toBeNull();
  });

  it('stops who has a finger out, and who has dropped the gown', () => {
    expect(gowned().for(0.1, { toCuffM: { left: 0.05, right: -0.02 } }).hint).toBe('A finger of the right hand is out of its cuff. Stop: new gown, or stretch the hand out for open gloving.');
    expect(opened().for(0.1, { gown: 'dropped' }).hint).toBe('The gown has fallen. Stop and take a new one.');
  });
});

describe('A glove that came off in the middle of the work', () => {
  const off: Partial<Seen> = { gloves: { left: 'on', right: 'lying' }, toCuffM: { left: 0.05, right: -0.16 }, isOut: { left: false, right: true } };
  const worked = (): Shown => gloved().for(0.1, { card: 'tied' });

  it('is put on by the open method, which the hint tells hold by hold', () => {
    const work = worked().for(0.1, { ...off, gloves: { left: 'on', right: 'away' } });
    expect(work.hint).toBe('The assistant opens a new right glove on the gown table.');
    work.for(0.1, off);
    expect(work.hint).toBe('Take the new right glove with the gloved left hand, under its turned-back cuff.');
    expect(work.for(0.1, { gloves: { left: 'on', right: 'taken' } }).hint).toContain('slip the bare right hand in from above');
    expect(work.for(0.1, { gloves: { left: 'on', right: 'entered' } }).hint).toContain('on into the glove');
    expect(work.for(0.1, { ...turnedBack, isOut: { left: false, right: false } }).hint).toContain('Draw the cuff of the right glove');
    expect(work.for(0.1, on(true, true)).done).toContain('secondGlove');
  });

  it('is taken by its inside as long as both hands are bare, the bare hand first that is farther along', () => {
    const both = worked().for(0.1, { ...on(false, false), toCuffM: { left: -0.16, right: -0.16 }, isOut: { left: true, right: true } });
    expect(both.hint).toBe('Take the right glove with the left hand by its turned-back cuff, which is its inside.');
    expect(both.for(0.1, { gloves: { left: 'taken', right: 'lying' } }).hint).toContain('slip the bare left hand in');
  });

  it('does not count as on again while its cuff is turned back', () => {
    expect(worked().for(0.1, off).for(0.1, turnedBack).done).not.toContain('secondGlove');
  });
});

it('A snapshot goes on to the same', () => {
  const first = gloved();
  const second = new GownProcedure(ROOMY);
  second.restore(JSON.parse(JSON.stringify(first.procedure.snapshot())));
  const digest = (procedure: GownProcedure): string => {
    const hash = new StateHash();
    procedure.hashInto(hash);
    return hash.digest();
  };
  expect(digest(second)).toBe(digest(first.procedure));
  expect(second.progress).toEqual(first.procedure.progress);
});
