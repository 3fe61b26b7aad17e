import { describe, expect, it } from 'vitest';
import { askLine } from '../../../src/app/run/askLine.ts';
import { roomInWords } from '../../../src/app/run/Announcer.tsx';
import { holdLines } from '../../../src/app/run/holdLines.ts';
import type { Coaching } from '../../../src/app/run/LiveRun.ts';
import { shownHolds } from '../../../src/app/run/shownHolds.ts';
import { shownRequest } from '../../../src/app/run/shownRequest.ts';
import type { NextHold } from '../../../src/core/procedure/nextHold.ts';
import type { AssistantDoing } from '../../../src/core/room/picture.ts';
import { breakWith } from '../support/breakWith.ts';
import { FakeRun } from '../support/FakeRun.ts';
import { scenarioWith } from '../support/scenario.ts';

const hold = (act: NextHold['act'], place: NextHold['place'], hand: NextHold['hand'] = null, of: NextHold['of'] = null): NextHold => ({ hand, act, place, of, thing: null });

function coached(coaching: Coaching, ...holds: NextHold[]) {
  const run = new FakeRun(scenarioWith());
  run.nextHolds = holds;
  return { run, coaching, current: run.picture() };
}

/** In the fake room hands are level at (-0.25, 1.25) and (0.25, 1.25), fingers 8.5 cm before the palm; the card would be held out at (0, 1.29). */
describe('The next hold in words', () => {
  it('names the hand, what it does, and the way to there on the screen', () => {
    expect(holdLines(coached('shown', hold('grip', 'gloveEdge', 'left', 'right')))).toEqual(['left hand: grip the edge of the glove’s cuff and draw it over the knit cuff, 35 cm left']);
  });

  it('tells the way of the nearer hand where either may do it, from the palm for a place in the air', () => {
    expect(holdLines(coached('shown', hold('stay', 'heldOut')))).toEqual(['either hand: hold the tie card out in front, 25 cm right, 4 cm up']);
  });

  it('says when the hand is there', () => {
    expect(holdLines(coached('shown', hold('grip', 'fingertips', 'right', 'right')))).toEqual(['right hand: grip the right glove once it lies there: you are there']);
  });

  it('is part of what the room is in words', () => {
    expect(roomInWords(coached('shown', hold('stay', 'heldOut')))).toBe('Right hand: empty, sterile. Left hand: empty, sterile. Touching nothing. Next, either hand: hold the tie card out in front, 25 cm right, 4 cm up.');
    expect(roomInWords(coached('spoken', hold('stay', 'heldOut')))).toBe('Right hand: empty. Left hand: empty. Touching nothing.');
  });

  it('leaves out what is nowhere to be seen', () => {
    expect(holdLines(coached('shown', hold('grip', 'gownNeck')))).toEqual([]);
  });
});

describe('Holds are marked', () => {
  const next = hold('grip', 'gownNeck');

  it('under shown coaching alone', () => {
    expect((['shown', 'spoken', 'silent'] as const).map((coaching) => shownHolds(coached(coaching, next)).length)).toEqual([1, 0, 0]);
  });

  it('not while a break stands that must be answered first, nor during a remedy', () => {
    const live = coached('shown', next);
    live.run.breaks = [breakWith({})];
    expect(shownHolds(live)).toEqual([]);
    live.run.breaks = [breakWith({ remediedStep: 5 })];
    expect(shownHolds(live)).toEqual([next]);
    live.run.remedy = { remedy: 'newSheath', phase: 'running', progress: 0.5, secondsLeft: 3 } as never;
    expect(shownHolds(live)).toEqual([]);
  });
});

describe('The request that is due', () => {
  const gowning = scenarioWith({ station: 'gown' });

  function asked(coaching: Coaching, doing: AssistantDoing = 'waiting') {
    const run = new FakeRun(gowning);
    run.nextRequest = 'tieBack';
    const picture = run.picture();
    return { run, coaching, current: { ...picture, assistant: { ...picture.assistant, doing } } };
  }

  it('is marked under shown coaching alone', () => {
    expect((['shown', 'spoken', 'silent'] as const).map((coaching) => shownRequest(asked(coaching)))).toEqual(['tieBack', null, null]);
    expect((['spoken', 'silent'] as const).map((coaching) => askLine(asked(coaching)))).toEqual([null, null]);
  });

  it('is not marked while the assistant is at it or at something else, while a break stands, or during a remedy', () => {
    for (const doing of ['coming', 'tyingGown', 'wipingFace', 'leaving'] as const) expect(shownRequest(asked('shown', doing))).toBeNull();
    const live = asked('shown');
    live.run.breaks = [breakWith({})];
    expect(shownRequest(live)).toBeNull();
    live.run.breaks = [];
    live.run.remedy = { remedy: 'newSheath', phase: 'running', progress: 0.5, secondsLeft: 3 } as never;
    expect(shownRequest(live)).toBeNull();
  });

  it('is told in words with its key, and in what the room is in words', () => {
    expect(askLine(asked('shown'))).toEqual({ words: 'Ask: tie the back', cap: '[' });
    expect(roomInWords(asked('shown'))).toContain('Touching nothing. Next, ask: tie the back, key [.');
    expect(roomInWords(asked('spoken'))).not.toContain('tie the back');
  });
});
