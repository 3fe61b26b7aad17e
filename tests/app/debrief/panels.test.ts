import { describe, expect, it } from 'vitest';
import { clearanceCharts, clearancePath, yOf } from '../../../src/app/debrief/clearance/clearanceLines.ts';
import { followRows, rowAt } from '../../../src/app/debrief/follow/followRows.ts';
import { debriefOrder } from '../../../src/app/debrief/keys/debriefKeys.ts';
import { leadSentence } from '../../../src/app/debrief/leadSentence.ts';
import { replayNotice } from '../../../src/app/debrief/replayNotice.ts';
import { handWords } from '../../../src/app/debrief/room/InstantTwin.tsx';
import type { DebriefSource } from '../../../src/core/debrief/debriefSource.ts';
import { follow } from '../../../src/core/debrief/follow.ts';
import type { RunFile } from '../../../src/core/recording/recording.ts';
import type { Verification } from '../../../src/core/recording/verifyRun.ts';
import type { RoomPicture } from '../../../src/core/room/picture.ts';
import { log } from '../../core/ledger/log.ts';
import { roomLogged, SCENARIO } from '../../core/debrief/runLogs.ts';
import { breakWith } from '../support/breakWith.ts';

describe('Following a thing', () => {
  it('lists what it touched in order, repeated touches as one, and where it became unsterile', () => {
    const run = roomLogged(log().tap('gloveR#1:palm', 'gel#1:all').wait(20).tap('gloveR#1:palm', 'gel#1:all').wait(20).tap('gloveR#1:palm', 'railR:all').wait(20).tap('gloveR#1:palm', 'drape#1:1'));
    const rows = followRows(follow(run, { object: 'glove.right' }));
    expect(rows.map(({ fromStep, part, other, count, changed, spoils }) => [fromStep, part, other, count, changed, spoils])).toEqual([
      [0, 'palm', 'gel#1:all', 2, false, false],
      [42, 'palm', 'railR:all', 1, true, true],
      [63, 'palm', 'drape#1:1', 1, false, true],
    ]);
    expect([-1, 0, 41, 42, 900].map((step) => rowAt(rows, step))).toEqual([-1, 0, 0, 1, 2]);
  });
});

describe('Clearance', () => {
  const series = (side: 'left' | 'right', thing: string, metres: number[]) => ({ side, thing, steps: Float64Array.from(metres, (_, k) => 4 * k), metres: Float64Array.from(metres) }) as never;

  it('has a chart for each thing, the nearest approach first, with its instant and hand', () => {
    const charts = clearanceCharts([series('left', 'pole', [0.3, 0.25]), series('right', 'pole', [0.4, 0.1]), series('right', 'face', [0.2, 0]), series('left', 'bin', [Infinity])]);
    expect(charts.map(({ thing, least }) => [thing, least])).toEqual([
      ['face', { metres: 0, step: 4, side: 'right' }],
      ['pole', { metres: 0.1, step: 4, side: 'right' }],
    ]);
  });

  it('loses no short approach when many readings share a pixel', () => {
    const metres = Array.from({ length: 1000 }, () => 0.15);
    metres[501] = 0;
    const path = clearancePath(series('left', 'pole', metres), 4000, 50, 100);
    expect(path.match(/[ML]/g)).toHaveLength(51);
    expect(path).toContain(` ${yOf(0, 100).toFixed(1)}`);
    expect(yOf(5, 100)).toBe(0);
  });
});

describe('Keys', () => {
  const key = (code: string, shiftKey = false) => debriefOrder({ code, key: code, shiftKey });

  it('move by tenths and seconds, step from event to event, and back with Shift', () => {
    expect(key('ArrowRight')).toEqual({ kind: 'by', seconds: 0.1 });
    expect(key('ArrowLeft', true)).toEqual({ kind: 'by', seconds: -1 });
    expect(key('KeyT', true)).toEqual({ kind: 'event', event: 'touch', direction: -1 });
    expect(key('KeyZ')).toEqual({ kind: 'layer', layer: 'zones' });
    expect(debriefOrder({ code: 'Slash', key: '?', shiftKey: true })).toEqual({ kind: 'help' });
    expect(key('KeyQ')).toBeNull();
  });
});

describe('What is said of the run', () => {
  const progress = { tasks: [], current: 'finished', hint: '', steadyShare: null, sharpsBinned: [] } as const;
  const lead = (...breaks: ReturnType<typeof breakWith>[]): string => leadSentence({ breaks, progress } as never, SCENARIO);

  it('is plain', () => {
    expect(lead()).toBe('Nothing lost its sterility.');
    expect(lead(breakWith({ step: 0, noticedStep: 240, remediedStep: 900 }))).toBe('1 break, 1 noticed in time. All were put right.');
    expect(lead(breakWith({ step: 0, noticedStep: 24_000 }))).toBe('1 break, 0 noticed in time. None was put right.');
    expect(lead(breakWith({ reach: 'site', severity: 'critical' }), breakWith({ remediedStep: 9 }))).toBe('2 breaks, 0 noticed in time. The site was not prepared again.');
  });

  const file = { header: { simulation: 1 } } as RunFile;
  const source = (exact: boolean, verification: Verification | null): DebriefSource => ({ exact, verification }) as DebriefSource;

  it('names why the room may not be as it was', () => {
    expect(replayNotice(file, null, null)).toBeNull();
    expect(replayNotice(file, source(true, null), null)).toBeNull();
    expect(replayNotice(file, source(false, null), null)).toMatch(/version 1 .*cannot be verified/);
    expect(replayNotice(file, source(true, { verdict: 'diverged', firstDivergentStep: 7200, recorded: '', played: '' } as never), null)).toMatch(/from 01:00 on/);
    expect(replayNotice(file, source(true, null), 'It broke.')).toBe('It broke.');
  });

  it('names what the hands hold and what became unsterile', () => {
    const hand = (holds: string | null) => ({ holds, surfaces: { fingers: 'f', palm: 'p', back: 'b', cuff: 'c' } });
    const picture = { hands: { left: hand('probe'), right: hand(null) }, items: [{ id: 'probe', kind: 'probe' }], marks: new Map([['f', 'became'], ['p', 'became']]) } as unknown as RoomPicture;
    expect(handWords(picture, 'left')).toBe('left hand: holds the probe; fingers and palm became unsterile');
    expect(handWords({ ...picture, marks: new Map() }, 'right')).toBe('right hand: empty; sterile');
    const loading = { ...picture, hands: { left: hand('pocket'), right: hand('film') }, items: [{ id: 'roll', kind: 'sheathRoll' }], marks: new Map() } as unknown as RoomPicture;
    expect([handWords(loading, 'left'), handWords(loading, 'right')]).toEqual(['left hand: holds the mouth of the sheath; sterile', 'right hand: holds the open end of the sheath; sterile']);
    expect(handWords({ ...loading, hands: { ...loading.hands, left: { ...loading.hands.left, holds: 'roll' } } }, 'left')).toBe('left hand: holds the sheath; sterile');
  });
});
