import { describe, expect, it } from 'vitest';
import { alternatives } from '../../../src/core/debrief/alternatives.ts';
import { breakGraph } from '../../../src/core/debrief/causeGraph.ts';
import type { RunLog } from '../../../src/core/debrief/runLog.ts';
import { suggestion } from '../../../src/core/debrief/suggestion.ts';
import { clockWords, listed, wholeOf } from '../../../src/core/debrief/surfaceWords.ts';
import { thingGraph } from '../../../src/core/debrief/thingGraph.ts';
import type { Fact } from '../../../src/core/ledger/fact.ts';
import { freshRun } from '../../support/runOperator.ts';
import { runLog } from './runLogs.ts';

const OPENING = freshRun().openingFacts;
const at = (minutes: number, seconds: number): number => (minutes * 60 + seconds) * 120;

/** A log over the surfaces of the quiet room; touches as [from, to, a, b]. */
function inRoom(touches: readonly (readonly [number, number, string, string])[], others: readonly Fact[] = []): RunLog {
  const lines = touches.flatMap(([from, to, a, b], k): Fact[] => [
    { kind: 'touch.began', step: from, touch: k + 1, a, b, x: 0.3, y: 1.1 },
    { kind: 'touch.ended', step: to, touch: k + 1 },
  ]);
  const facts = [...OPENING, ...[...lines, ...others].sort((p, q) => p.step - q.step)];
  return runLog(facts, { steps: at(8, 0) });
}

const site = (): string => OPENING.flatMap((fact) => (fact.kind === 'surface.added' && fact.surface.kind === 'site' ? [fact.surface.id] : []))[0]!;
const bareCord = (): string => OPENING.flatMap((fact) => (fact.kind === 'surface.added' && fact.surface.kind === 'bareCord' ? [fact.surface.id] : []))[0]!;

/*
 * 6:48  bare cord ──▶ drape, left side ──┬──▶ cuff of the left glove (6:58)
 *                                        └──▶ its fingers (7:02) ──▶ probe sheath (7:05) ──▶ site (7:06)
 */
const story = (): RunLog =>
  inRoom([
    [at(6, 48), at(6, 50), bareCord(), 'drape.left#1:30'],
    [at(6, 58), at(6, 59), 'glove.left#1:cuff', 'drape.left#1:30'],
    [at(7, 2), at(7, 3), 'glove.left#1:fingers', 'drape.left#1:30'],
    [at(7, 5), at(7, 30), 'glove.left#1:fingers', 'sheath#1:probe'],
    [at(7, 6), at(7, 20), 'sheath#1:probe', site()],
  ]);

describe('A break in the room', () => {
  it('is told by things, each with its parts', () => {
    const { nodes } = thingGraph(breakGraph(story(), 1));
    expect(nodes.map(({ words, step, parts }) => `${clockWords(step)} ${words}: ${parts.map((part) => part.words).join('; ')}`)).toEqual([
      '06:48 drape, left side: drape, left side, 55 cm from the opening',
      '06:58 left glove: left glove, cuff; left glove, fingers',
      '07:05 probe sheath: probe in its sheath',
      '07:06 site: site',
    ]);
  });

  it('could have gone otherwise, told in plain sentences', () => {
    expect(alternatives(story(), 1).map(({ title, sentence }) => `${title} ${sentence}`)).toEqual([
      'Left side of the drape covered by 06:50. The left glove, the probe sheath and the site stay sterile. Reach: the field.',
      'The left side of the drape kept clear of the bare cord at 06:48. Nothing loses its sterility.',
    ]);
  });

  it('the suggestion is the drape, covered just before the glove took it to the sheath', () => {
    const found = suggestion(story())!;
    expect(`${found.title} ${found.sentence}`).toBe('Left side of the drape covered by 07:01. The probe sheath and the site stay sterile. Reach: the field.');
    expect([found.fromStep, found.byStep]).toEqual([at(6, 50), at(7, 2) - 1]);
  });

  it('that was no touch is told by where the hand should have stayed', () => {
    const low = inRoom([[at(1, 10), at(1, 11), 'glove.right#1:palm', 'gel#1:body']], [
      { kind: 'zone.entered', step: at(1, 0), surface: 'glove.right#1:palm', zone: 'belowField', x: -0.6, y: 0.9 },
      { kind: 'zone.left', step: at(1, 2), surface: 'glove.right#1:palm', zone: 'belowField' },
    ]);
    expect(alternatives(low, 1).map(({ title, sentence }) => `${title} ${sentence}`)).toEqual([
      'Right glove changed by 01:02. The gel packet stays sterile. Reach: no further.',
      'The right glove kept above the field at 01:00. Nothing loses its sterility.',
    ]);
  });
});

describe('Words', () => {
  it('name the whole that each surface of the room belongs to', () => {
    const wholes = new Map(OPENING.flatMap((fact) => (fact.kind === 'surface.added' && fact.surface.role !== 'none' ? [[wholeOf(fact.surface).id, wholeOf(fact.surface)] as const] : [])));
    expect([...wholes.values()].map(({ words, prose }) => (prose === `the ${words}` ? words : `${words} / ${prose}`))).toEqual([
      'kit table', 'right glove', 'left glove', 'right sleeve', 'left sleeve', 'site', 'drape, right side / the right side of the drape',
      'drape, left side / the left side of the drape', 'probe sheath', 'sheathed cord', 'gel packet', 'anaesthetic syringe', 'needle syringe', 'gauze',
    ]);
  });

  it('call film that is loaded in the run the sheath, folded or not, and as one whole with its open end', () => {
    const { surfaces } = freshRun('sheath-short').room;
    surfaces.openEnd(40);
    const film = [...surfaces.known.values()].filter(({ kind }) => kind === 'sheath' || kind === 'sheathTail').map((surface) => `${wholeOf(surface).id} ${wholeOf(surface).prose}`);
    expect(film.length).toBeGreaterThan(40);
    expect(new Set(film)).toEqual(new Set(['sheath#1:cord the sheath']));
  });

  it('list what there is and count what is too much', () => {
    expect([listed([]), listed(['a']), listed(['a', 'b', 'a']), listed(['a', 'b', 'c']), listed(['a', 'b', 'c', 'd'])]).toEqual(['', 'a', 'a and b', 'a, b and c', 'a, b and 2 more things']);
    expect([clockWords(0), clockWords(at(7, 1) + 119), clockWords(at(75, 9))]).toEqual(['00:00', '07:01', '75:09']);
  });
});
