import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lanePlan, markUnder } from '../../../src/app/debrief/timeline/lanePlan.ts';
import { labelSides, lanesOf, packRows, spoilingColumns, stateWords, touchColumns, type LaneMark } from '../../../src/app/debrief/timeline/lanes.ts';
import { writtenTimeline } from '../../../src/app/debrief/writtenTimeline.ts';
import { timeline } from '../../../src/core/debrief/timeline.ts';
import { log } from '../../core/ledger/log.ts';
import { logged } from '../../core/debrief/runLogs.ts';

const run = logged(log().tap('gloveR#1:palm', 'railR:all').wait(300).notice().wait(900).tap('gloveL#1:palm', 'railL:all').wait(100), 600);
const lanes = lanesOf(timeline(run), [{ step: 500, side: 'left', thing: 'rail.left', words: 'left bed rail', metres: 0.012 }]);
const scale = { from: 0, to: run.steps, left: 100, right: 900 };
const markAt = (step: number, label = '', toStep = step): LaneMark => ({ kind: 'cue', step, toStep, label, sentence: '', bad: false, breakNumber: 0 });

describe('Lanes', () => {
  it('tell every event once, each in a sentence', () => {
    expect(lanes.map(({ name, marks }) => [name, marks.map(({ step }) => step)])).toEqual([
      ['breaks', [0, 1201]], ['near misses', [500]], ['notices', [301]], ['remedies', []], ['cues', []], ['tasks', []],
    ]);
    expect(lanes[0]!.marks[0]!.sentence).toMatch(/^Break 1, major: .*, not remedied$/);
    expect(lanes[1]!.marks[0]!.sentence).toBe('Near miss: left hand or sleeve 12 mm from the left bed rail');
  });

  it('are the same from the written result, but for touches', () => {
    const written = writtenTimeline(run.result);
    const played = timeline(run);
    expect(written.breaks.map(({ number, fromStep, open }) => [number, fromStep, open])).toEqual(played.breaks.map(({ number, fromStep, open }) => [number, fromStep, open]));
    expect(written.notices.map(({ step, lateSteps }) => [step, lateSteps])).toEqual(played.notices.map(({ step, lateSteps }) => [step, lateSteps]));
    expect(written.touches).toEqual([]);
  });

  it('find the mark under a pointer, and nothing where nothing is', () => {
    const plan = lanePlan(lanes, scale, false);
    for (const { marks } of plan.lanes) for (const { mark, x, y } of marks) expect(markUnder(plan, x + 2, y - 2)).toBe(mark);
    const { x, y } = plan.lanes[1]!.marks[0]!;
    expect(markUnder(plan, x + 30, y)).toBeNull();
  });

  it('show only what lies in the stretch of time', () => {
    const plan = lanePlan(lanes, { ...scale, from: 280, to: 520 }, false);
    expect(plan.lanes.map(({ marks }) => marks.length)).toEqual([1, 1, 1, 0, 0, 0]);
  });

  it('put spans that last at the same time into rows of their own', () => {
    expect(packRows([{ step: 0, toStep: 100 }, { step: 50, toStep: 60 }, { step: 70, toStep: 90 }, { step: 80, toStep: 85 }, { step: 81, toStep: 99 }], 3)).toEqual([0, 1, 1, 2, 2]);
  });

  it('never lay words over words or marks', () => {
    fc.assert(
      fc.property(fc.array(fc.record({ at: fc.integer({ min: 100, max: 880 }), words: fc.integer({ min: 0, max: 20 }) }), { maxLength: 25 }), (made) => {
        const marks = made.sort((a, b) => a.at - b.at).map(({ at, words }) => markAt(at, 'x'.repeat(words)));
        const wide = (words: string): number => words.length * 7;
        const sides = labelSides(marks, (step) => step, wide, [94, 920]);
        const boxes = marks.flatMap((mark, k) => {
          if (sides[k] === null) return [];
          return [sides[k] === 'right' ? [mark.step + 10, mark.step + 10 + wide(mark.label)] : [mark.step - 10 - wide(mark.label), mark.step - 10]];
        });
        for (const [a0, a1] of boxes) {
          expect(marks.every(({ step }) => step + 6 <= a0! || step - 6 >= a1!)).toBe(true);
          expect(boxes.filter(([b0, b1]) => b0! < a1! && a0! < b1!)).toHaveLength(1);
        }
      }),
      { seed: 3, numRuns: 200 },
    );
  });
});

describe('The lane of touches', () => {
  it('shows touches of hands, and where something became unsterile by any touch', () => {
    const touch = (number: number, fromStep: number, side: 'left' | null) => ({ touch: number, fromStep, toStep: fromStep, a: '', b: '', x: 0, y: 0, side, spoils: true });
    const columns = touchColumns([touch(1, 10, 'left'), touch(2, 11, 'left'), touch(3, 12, 'left'), touch(4, 50, null), touch(5, 999, 'left')], (step) => step, 0, 100);
    expect(columns).toEqual([{ x: 9, count: 1 }, { x: 12, count: 2 }]);
    expect(spoilingColumns([10, 10, 50, 51, 101], (step) => step, 0, 100)).toEqual([9, 51]);
  });

  it('tells the state of what is followed', () => {
    const intervals = [{ fromStep: 0, toStep: 5, mark: 'sterile' }, { fromStep: 5, toStep: 9, mark: 'became' }] as const;
    expect([0, 4, 5, 8, 20].map((step) => stateWords(intervals, step))).toEqual(['sterile', 'sterile', 'became unsterile', 'became unsterile', 'became unsterile']);
    expect(stateWords([], 3)).toBe('');
  });
});
