import { describe, expect, it } from 'vitest';
import { whatIfMarks } from '../../../src/app/debrief/room/whatIfMarks.ts';
import { indexOf } from '../../../src/core/debrief/logIndex.ts';
import { MarkHistory } from '../../../src/core/debrief/MarkHistory.ts';
import type { RunLog } from '../../../src/core/debrief/runLog.ts';
import { whatIf } from '../../../src/core/debrief/whatIf.ts';
import type { Change } from '../../../src/core/debrief/whatIfTypes.ts';
import type { Fact } from '../../../src/core/ledger/fact.ts';
import { insertRemedy, removeTouch } from '../../core/ledger/plainWhatIf.ts';
import { rulesInForce } from '../../../src/core/ledger/rules/ruleBook.ts';
import type { RoomPicture } from '../../../src/core/room/picture.ts';
import { log } from '../../core/ledger/log.ts';
import { logged } from '../../core/debrief/runLogs.ts';

/*
 *   railR ──1──▶ right palm ──2──▶ gel ──3──▶ drape 1            steps 0, 100, 200
 *                     └──4──▶ syringe ──5──▶ site                steps 300, 301
 */
const run = logged(log().tap('gloveR#1:palm', 'railR:all').wait(99).tap('gloveR#1:palm', 'gel#1:all').wait(99).tap('gel#1:all', 'drape#1:1').wait(99).tap('gloveR#1:palm', 'syringe#1:barrel').tap('syringe#1:barrel', 'site#1:all').wait(50));

/** Surfaces that are shown as become unsterile at a step. */
function became(marks: ReadonlyMap<string, string>): string[] {
  return [...marks].filter(([, mark]) => mark === 'became').map(([surface]) => surface).sort();
}

function shownUnder(log: RunLog, change: Change, step: number): string[] {
  const marks = indexOf(log).history.marksAt(step);
  const picture = { step, marks } as unknown as RoomPicture;
  return became(whatIfMarks(whatIf(log, change), (surface) => indexOf(log).surfaces.get(surface)!.initial)(picture).marks);
}

/** The same by applying the changed log to a ledger of its own; a renewed thing counts from its remedy on under its old name. */
function expectedUnder(facts: readonly Fact[], step: number, renewed: { readonly thing: string; readonly step: number } | null): string[] {
  const history = new MarkHistory(rulesInForce(run.scenario));
  history.take(facts);
  const names = [...indexOf(run).surfaces.keys()];
  return names.filter((id) => history.markAt(renewed && id.startsWith(`${renewed.thing}:`) && step > renewed.step ? id.replace(':', '~:') : id, step) === 'became').sort();
}

const STEPS = [0, 50, 100, 150, 201, 260, 300, 302, 340];

describe('The room under a what-if', () => {
  it.each(STEPS)('at step %d without one touch is as the log without it says', (step) => {
    for (const touch of [1, 2, 3, 4, 5]) expect(shownUnder(run, { kind: 'undoTouch', touch }, step), `touch ${touch}`).toEqual(expectedUnder(removeTouch(run.facts, touch), step, null));
  });

  it.each(STEPS)('at step %d with a glove changed is as the log with that remedy says', (step) => {
    for (const at of [0, 40, 150, 250, 320]) {
      const remedy = { remedy: 'changeGlove', things: ['gloveR#1'], step: at } as const;
      expect(shownUnder(run, { kind: 'remedy', ...remedy }, step), `at ${at}`).toEqual(expectedUnder(insertRemedy(run.facts, remedy), step, { thing: 'gloveR#1', step: at }));
    }
  });

  it('is the run itself when nothing were otherwise', () => {
    for (const step of STEPS) expect(shownUnder(run, { kind: 'nothing' }, step)).toEqual(became(indexOf(run).history.marksAt(step)));
  });
});
