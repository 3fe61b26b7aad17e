import { rulesInForce } from '../../../src/core/ledger/rules/ruleBook.ts';
import type { Fact } from '../../../src/core/ledger/fact.ts';
import { replayLedger } from '../../../src/core/ledger/replayLedger.ts';
import type { RunLog } from '../../../src/core/debrief/runLog.ts';
import type { RemedyReport, RunResult } from '../../../src/core/run/result.ts';
import { shippedScenario } from '../../support/runOperator.ts';
import type { Log } from '../ledger/log.ts';

export const SCENARIO = shippedScenario('quiet-room');

/** A run log around facts: its result is what follows from them, the rest of it empty. */
export function runLog(facts: readonly Fact[], change: Partial<RunLog> = {}): RunLog {
  const steps = change.steps ?? facts[facts.length - 1]!.step + 1;
  return { scenario: SCENARIO, facts, commands: [], result: resultOf(facts, steps), steps, complete: true, ...change };
}

/** The run log of a log that is written as sentences, lasting `wait` steps longer. */
export const logged = (log: Log, wait = 0): RunLog => runLog(log.facts, { steps: log.step + wait + 1 });

/** The same with gloves named as they are in the room, so that hands are told apart. */
export function roomLogged(log: Log, wait = 0): RunLog {
  const named = JSON.stringify(log.facts).replaceAll('gloveR#', 'glove.right#').replaceAll('gloveL#', 'glove.left#');
  const worded = named.replace(/"words":"glove\.(left|right)#\d+:(\w+)"/g, '"words":"$1 glove, $2"');
  return runLog(JSON.parse(worded) as Fact[], { steps: log.step + wait + 1 });
}

function resultOf(facts: readonly Fact[], steps: number): RunResult {
  const ledger = replayLedger(facts, rulesInForce(SCENARIO));
  const words = Object.fromEntries(ledger.surfaces.map((surface) => [surface.id, surface.words]));
  const remedies = facts.flatMap((fact): RemedyReport[] => (fact.kind === 'remedied' ? [{ remedy: fact.remedy, things: fact.things, startStep: fact.step - 20, endStep: fact.step }] : []));
  return {
    steps, breaks: ledger.breaks, words, notices: ledger.notices, remedies, cues: [], challenges: [],
    progress: { tasks: [], current: 'gel', hint: '', steadyShare: null, sharpsBinned: [] },
    handling: { pathM: { left: 0, right: 0 }, driftM: { left: 0, right: 0 }, dropped: [], measured: null },
  };
}
