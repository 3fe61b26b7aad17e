import { describe, expect, it } from 'vitest';
import { nextEvent } from '../../../src/core/debrief/events.ts';
import { follow, followables } from '../../../src/core/debrief/follow.ts';
import { heatMapOf } from '../../../src/core/debrief/heatMap.ts';
import { nearMisses } from '../../../src/core/debrief/nearMisses.ts';
import { timeline } from '../../../src/core/debrief/timeline.ts';
import { indexOf } from '../../../src/core/debrief/logIndex.ts';
import type { ClearanceSeries } from '../../../src/core/debrief/traceTypes.ts';
import { log } from '../ledger/log.ts';
import { roomLogged as logged, runLog } from './runLogs.ts';

/* Right palm on the rail at 0, said at 360, glove changed by 600; left palm on the pole at 700, said at 2200, never remedied. */
const run = logged(
  log()
    .tap('gloveR#1:palm', 'railR:all').wait(359).notice().wait(240).remedy('changeGlove', 'gloveR#1').wait(100)
    .touch('gloveL#1:palm', 'pole:all').wait(30).part('gloveL#1:palm', 'pole:all').wait(1470).notice().wait(100).notice(),
  200,
);

describe('The lanes', () => {
  const lanes = timeline(run);

  it('breaks last until nothing of them is left, or to the end', () => {
    expect(lanes.breaks.map(({ number, rule, fromStep, toStep, open }) => [number, rule, fromStep, toStep, open])).toEqual([
      [1, 'glove-on-rail', 0, 600, false],
      [2, 'glove-on-pole', 700, 2500, true],
    ]);
    expect(lanes.breaks[1]!.words).toBe('Left glove, palm on the pole:all.');
  });

  it('notices say how late they are, and when nothing was broken', () => {
    expect(lanes.notices).toEqual([
      { step: 360, breaks: [1], lateSteps: 360, words: 'after 3 s', late: false },
      { step: 2200, breaks: [2], lateSteps: 1500, words: '13 s late', late: true },
      { step: 2300, breaks: [], lateSteps: null, words: 'nothing was broken', late: false },
    ]);
  });

  it('remedies say what they answer', () => {
    expect(lanes.remedies).toEqual([{ remedy: 'changeGlove', things: ['glove.right#1'], words: 'right glove', fromStep: 580, toStep: 600, breaks: [1] }]);
  });

  it('touches last until they end, the surface is taken away, or the log is over', () => {
    const open = logged(log().touch('gloveR#1:palm', 'gel#1:all').wait(5).touch('gloveL#1:palm', 'gel#1:all').wait(5).remedy('changeGlove', 'gloveR#1'), 10);
    expect(timeline(open).touches.map(({ touch, fromStep, toStep, side, spoils }) => [touch, fromStep, toStep, side, spoils])).toEqual([
      [1, 0, 10, 'right', false],
      [2, 5, 20, 'left', false],
    ]);
    expect(lanes.touches.map(({ spoils }) => spoils)).toEqual([true, true]);
  });
});

describe('To the next', () => {
  it('break, touch or command, forth and back', () => {
    expect([nextEvent(run, 'break', 0, 1), nextEvent(run, 'break', 700, 1), nextEvent(run, 'break', 701, -1), nextEvent(run, 'break', 700, -1), nextEvent(run, 'break', 0, -1)]).toEqual([700, null, 700, 0, null]);
    expect([nextEvent(run, 'touch', 0.5, 1), nextEvent(run, 'touch', 700, -1)]).toEqual([700, 0]);
    const commanded = runLog(run.facts, {
      steps: run.steps,
      commands: [{ step: 3, commands: [{ type: 'hand.move', hand: 'left', xMm: 0, yMm: 900 }] }, { step: 5, commands: [{ type: 'hand.grip', hand: 'left' }] }, { step: 9000, commands: [{ type: 'notice' }] }],
    });
    expect([nextEvent(commanded, 'command', 0, 1), nextEvent(commanded, 'command', 5, 1), nextEvent(commanded, 'command', 9, -1)], 'moving is none; what is not played yet neither').toEqual([5, null, 5]);
  });

  it('touch leaves out what no hand is part of, unless it spoiled something', () => {
    const still = logged(log().tap('cord#1:0', 'drape#1:1').wait(5).tap('drape#1:1', 'bare:all').wait(5).tap('gloveL#1:palm', 'gel#1:all'));
    expect([nextEvent(still, 'touch', -1, 1), nextEvent(still, 'touch', 6, 1)]).toEqual([6, 12]);
  });

  it('touch finds the moment at which a touch that had begun before spoiled something', () => {
    const late = logged(log().touch('cord#1:0', 'drape#1:1').wait(50).tap('gloveL#1:palm', 'gel#1:all').wait(20).tap('drape#1:1', 'bare:all'));
    expect([nextEvent(late, 'touch', -1, 1), nextEvent(late, 'touch', 50, 1), nextEvent(late, 'touch', 71, 1)]).toEqual([50, 71, null]);
    expect(indexOf(late).spoiledAt.get(1)).toBe(71);
  });

  it('tenth of a second, within the log', () => {
    expect([nextEvent(run, 'tenth', 100, 1), nextEvent(run, 'tenth', 5, -1), nextEvent(run, 'tenth', 0, -1), nextEvent(run, 'tenth', 2495, 1), nextEvent(run, 'tenth', 2500, 1)]).toEqual([112, 0, null, 2500, null]);
  });
});

describe('Following', () => {
  it('a surface gives what it touched, in order, with its state before and after', () => {
    const story = logged(log().touch('gloveR#1:palm', 'gel#1:all').wait(10).part('gloveR#1:palm', 'gel#1:all').wait(5).tap('gloveR#1:palm', 'railR:all').tap('drape#1:0', 'gloveR#1:palm'), 4);
    const followed = follow(story, { surface: 'glove.right#1:palm' });
    expect(followed.touches.map(({ fromStep, toStep, other, before, after, spoils }) => [fromStep, toStep, other, before, after, spoils])).toEqual([
      [0, 10, 'gel#1:all', 'sterile', 'sterile', false],
      [15, 15, 'railR:all', 'sterile', 'became', true],
      [16, 16, 'drape#1:0', 'became', 'became', true],
    ]);
    expect(followed.intervals).toEqual([{ fromStep: 0, toStep: 15, mark: 'sterile' }, { fromStep: 15, toStep: story.steps, mark: 'became' }]);
  });

  it('a thing goes through its generations, spoiled as soon as one part is', () => {
    const glove = follow(run, { object: 'glove.right' });
    expect(glove.intervals).toEqual([{ fromStep: 0, toStep: 600, mark: 'became' }, { fromStep: 600, toStep: run.steps, mark: 'sterile' }]);
    expect(glove.touches.map(({ surface, other }) => `${surface} ${other}`)).toEqual(['glove.right#1:palm railR:all']);
  });

  it('a thing of which a strip lies in the margin is used on, and is unsterile by place only when all of it is', () => {
    const drape = logged(log().enter('drape#1:3', 'margin').wait(9), 1);
    expect(follow(drape, { object: 'drape' }).intervals).toEqual([{ fromStep: 0, toStep: drape.steps, mark: 'sterile' }]);
    const gel = logged(log().wait(4).enter('gel#1:all', 'offField').wait(9), 1);
    expect(follow(gel, { object: 'gel' }).intervals.map(({ fromStep, mark }) => [fromStep, mark])).toEqual([[0, 'sterile'], [4, 'unsterile']]);
  });

  it('can be done with everything that has to be sterile or prepared', () => {
    const things = followables(run);
    expect(things.find(({ object }) => object === 'glove.right')).toEqual({ object: 'glove.right', words: 'right glove', touches: 1, spoiled: true });
    expect(things.map(({ object }) => object)).not.toContain('railR');
    expect(things.every(({ object }) => follow(run, { object }).intervals.length > 0)).toBe(true);
  });
});

describe('Near misses', () => {
  const series = (metres: readonly number[], part: Partial<ClearanceSeries> = {}): ClearanceSeries => ({ side: 'right', thing: 'pole', steps: Float64Array.from(metres, (_, k) => k * 40), metres: Float64Array.from(metres), ...part });
  const quiet = logged(log().wait(2000));

  it('are the nearest moments of approaches under 3 cm; what comes again within two seconds is one', () => {
    const far = Array.from({ length: 6 }, () => Infinity);
    const found = nearMisses(quiet, [series([Infinity, 0.05, 0.029, 0.012, 0.02, 0.2, 0.02, 0.011, ...far, 0.025, 0.0299, 0.03])]);
    expect(found.map(({ step, metres }) => [step, metres])).toEqual([[280, 0.011], [560, 0.025]]);
    expect(found[0]).toMatchObject({ side: 'right', thing: 'pole', words: 'pole' });
  });

  it('are none where it came to a touch, by the readings or by the log between them', () => {
    expect(nearMisses(quiet, [series([0.02, 0, 0.02])])).toEqual([]);
    const touched = (other: string) => logged(log().wait(58).tap('gloveR#1:cuff', other).wait(2000));
    expect(nearMisses(touched('pole:all'), [series([0.02, 0.001, 0.02])])).toEqual([]);
    expect(nearMisses(touched('gel#1:all'), [series([0.02, 0.001, 0.02])]).length, 'of something else').toBe(1);
    expect(nearMisses(touched('pole:all'), [series([0.02, 0.001, 0.02], { side: 'left' })]).length, 'of the other hand').toBe(1);
  });

  it('are none once nothing of the glove is sterile', () => {
    const spoiled = logged(['fingers', 'palm', 'back', 'cuff'].reduce((facts, part) => facts.tap(`gloveR#1:${part}`, 'railR:all'), log()).wait(2000));
    expect(nearMisses(spoiled, [series([0.02, 0.001, 0.02])])).toEqual([]);
    expect(nearMisses(spoiled, [series([0.02, 0.001, 0.02], { side: 'left' })]).length).toBe(1);
  });
});

describe('A heat map', () => {
  it('adds up the time in each cell of 2 cm', () => {
    const map = heatMapOf({ steps: Float64Array.of(0, 120, 132, 252), x: Float64Array.of(0.001, 0.001, 0.019, 0.041), y: Float64Array.of(1, 1.021, 1.021, 1.039) });
    expect([map.cellM, map.x, map.y, map.columns, map.rows]).toEqual([0.02, 0, 1, 3, 2]);
    expect([...map.seconds].map((s) => Math.round(s * 1e6) / 1e6)).toEqual([1, 0, 0, 1.1, 0, 0]);
    expect(heatMapOf({ steps: new Float64Array(0), x: new Float64Array(0), y: new Float64Array(0) }).seconds.length).toBe(0);
  });
});
