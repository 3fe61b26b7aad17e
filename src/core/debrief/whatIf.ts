import type { Ledger } from '../ledger/Ledger.ts';
import type { Reach } from '../ledger/surface.ts';
import type { RemedyReport, RunResult } from '../run/result.ts';
import { scoreOf } from '../scoring/scoreRun.ts';
import { ledgerAfter } from './changedLedger.ts';
import { indexOf, surfaceOf } from './logIndex.ts';
import type { RunLog } from './runLog.ts';
import { wholeOf } from './surfaceWords.ts';
import type { Change, Spared, WhatIfOutcome } from './whatIfTypes.ts';

/** What the run would have come to with one thing otherwise, all movements being the same. */
export function whatIf(log: RunLog, change: Change): WhatIfOutcome {
  const { ledger: was } = indexOf(log);
  const is = ledgerOf(log, change);
  const result = resultOf(log, change, is);
  return { change, breaks: is.breaks, reach: farthest(is), ...fates(log, was, is), result, score: scoreOf(result, log.scenario) };
}

/** Its reach alone, which is found faster. */
export const reachAfter = (log: RunLog, change: Change): Reach => farthest(ledgerOf(log, change));

const ledgerOf = (log: RunLog, change: Change): Ledger => (change.kind === 'nothing' ? indexOf(log).ledger : ledgerAfter(log, change));

const REACHES: readonly Reach[] = ['none', 'field', 'device', 'site'];

/** Largest reach of all breaks. */
const farthest = ({ breaks }: Pick<Ledger, 'breaks'>): Reach => REACHES[Math.max(0, ...breaks.map(({ reach }) => REACHES.indexOf(reach)))]!;

/** The surface that takes another's place after an inserted remedy is named like it with a "~" after the thing. */
const original = (id: string): string => id.replace('~', '');

function fates(log: RunLog, was: Ledger, is: Ledger): Pick<WhatIfOutcome, 'spared' | 'stillSpoiled' | 'newlySpoiled'> {
  const spoiledIn = (ledger: Ledger): Set<string> => new Set(ledger.breaks.flatMap(({ spread }) => spread.map(({ surface }) => original(surface))));
  const [before, after] = [spoiledIn(was), spoiledIn(is)];
  const told = (surface: string): Spared => {
    const whole = wholeOf(surfaceOf(log, surface));
    return { surface, thing: whole.id, words: surfaceOf(log, surface).words, prose: whole.prose };
  };
  return {
    spared: [...before].filter((id) => !after.has(id)).map(told),
    stillSpoiled: [...before].filter((id) => after.has(id)).map(told),
    newlySpoiled: [...after].filter((id) => !before.has(id)).map(told),
  };
}

function resultOf(log: RunLog, change: Change, ledger: Ledger): RunResult {
  const { result } = log;
  if (change.kind === 'nothing') return result;
  const words: Record<string, string> = {};
  for (const { spread, surface, against } of ledger.breaks)
    for (const id of [...spread.map((one) => one.surface), surface, against]) if (id !== null) words[id] = surfaceOf(log, original(id)).words;
  const notices = ledger.notices.map(({ step, breaks }) => ({ step, breaks }));
  return { ...result, breaks: ledger.breaks, words, notices, remedies: remediesWith(result.remedies, change) };
}

function remediesWith(remedies: readonly RemedyReport[], change: Change): readonly RemedyReport[] {
  if (change.kind !== 'remedy') return remedies;
  const { remedy, step, things } = change;
  return [...remedies, { remedy, startStep: step, endStep: step, things }].sort((p, q) => p.endStep - q.endStep);
}
