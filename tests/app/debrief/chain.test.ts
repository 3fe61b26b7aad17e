import { describe, expect, it } from 'vitest';
import { chainLinks, isSpared, writtenLinks } from '../../../src/app/debrief/room/chainLinks.ts';
import { partOf } from '../../../src/app/debrief/room/partOf.ts';
import { reachedStep } from '../../../src/app/debrief/reachedStep.ts';
import { gravest } from '../../../src/app/debrief/useSelectedBreak.ts';
import { breakGraph } from '../../../src/core/debrief/causeGraph.ts';
import { thingGraph } from '../../../src/core/debrief/thingGraph.ts';
import { log } from '../../core/ledger/log.ts';
import { roomLogged } from '../../core/debrief/runLogs.ts';
import { scenarioWith } from '../support/scenario.ts';
import { breakWith } from '../support/breakWith.ts';

const run = roomLogged(log().tap('gloveR#1:palm', 'railR:all').wait(99).tap('gloveR#1:palm', 'gel#1:all').wait(99).tap('gel#1:all', 'drape#1:1').wait(99).tap('gloveR#1:fingers', 'railR:all'));
const links = chainLinks(thingGraph(breakGraph(run, 1)), run);

describe('The chain of a break', () => {
  it('goes from the root to all that it reached, each link by the one that it came from', () => {
    expect(links.map(({ number, step, from, how }) => [number, step, from, how])).toEqual([
      [1, 0, null, 'met the railR:all'],
      [2, 100, 1, 'touched by the right glove'],
      [3, 200, 2, 'touched by the gel#1:all'],
    ]);
    expect(links[0]!.words).toBe('right glove, palm');
    expect(links.every(({ x, y }) => x === 0.1 && y === 1.2)).toBe(true);
  });

  it('can be told from the written result before the run has been played again', () => {
    const written = writtenLinks(run.result.breaks[0]!, run.result.words);
    expect(written.map(({ number, step, from }) => [number, step, from])).toEqual(links.map(({ number, step, from }) => [number, step, from]));
    expect(written.map(({ x }) => x === null)).toEqual([false, true, true]);
  });

  it('tells long things as a whole', () => {
    const broken = breakWith({ spread: [{ surface: 'glove:a', depth: 0, step: 0, touch: 1, from: null }, ...[4, 6].map((k) => ({ surface: `sheath#1:${k}`, depth: 1, step: 9, touch: k, from: 'glove:a' }))] });
    const written = writtenLinks(broken, { 'glove:a': 'left glove, palm', 'sheath#1:4': 'sheathed cord, 4 cm from the probe', 'sheath#1:6': 'sheathed cord, 6 cm from the probe' });
    expect(written.map(({ words }) => words)).toEqual(['left glove, palm', 'sheathed cord']);
  });

  it('is spared when nothing of a link is lost', () => {
    const link = links[1]!;
    expect([isSpared(link, null), isSpared(link, new Set()), isSpared(link, new Set(link.surfaces))]).toEqual([false, false, true]);
  });

  it('is framed whole, with the field', () => {
    const far = partOf([{ ...links[0]!, x: 1.2, y: 1.9 }, { ...links[1]!, x: null, y: null }], null);
    expect(far.right).toBeGreaterThan(1.2);
    expect(far.top).toBeGreaterThan(1.9);
    expect(far.left).toBe(partOf([], null).left);
  });

  it('is framed with where the gown is put on, and with the field where the run goes on there', () => {
    const gowning = scenarioWith({ station: 'gown', items: [] });
    const alone = partOf([], gowning);
    expect(alone.left).toBeLessThan(gowning.gown.table.xM - gowning.gown.table.widthM / 2);
    expect([alone.right > gowning.gown.standXM, alone.right < 0, alone.bottom, alone.top > gowning.operator.faceM]).toEqual([true, true, 0, true]);
    const on = partOf([], { ...gowning, followedBy: ['sheath'] });
    expect([on.left, on.right]).toEqual([alone.left, partOf([], null).right]);
  });
});

describe('The break that is shown first', () => {
  it('is the gravest, and of equals the one that got farther, was left open, came first', () => {
    const minor = breakWith({ number: 1, severity: 'minor', reach: 'none' });
    const field = breakWith({ number: 2, severity: 'major', reach: 'field', remediedStep: 5 });
    const open = breakWith({ number: 3, severity: 'major', reach: 'field', step: 9 });
    const site = breakWith({ number: 4, severity: 'critical', reach: 'site' });
    expect([[], [minor], [minor, field], [minor, field, open], [minor, field, open, site]].map((list) => gravest(list)?.number ?? null)).toEqual([null, 1, 2, 3, 4]);
  });

  it('is shown at the instant at which it had got as far as it did', () => {
    const spread = [['glove#1:palm', 3], ['sheath#1:probe', 10], ['site#1:4', 20], ['drape.left#1:3', 90]].map(([surface, step], depth) => ({ surface: String(surface), step: Number(step), depth, touch: depth, from: null }));
    expect(reachedStep(breakWith({ spread, reach: 'site' }))).toBe(20);
    expect(reachedStep(breakWith({ spread, reach: 'device' }))).toBe(10);
    expect(reachedStep(breakWith({ spread, reach: 'field' }))).toBe(90);
    expect(reachedStep(breakWith({ spread: [], step: 7, reach: 'none' }))).toBe(7);
  });
});
