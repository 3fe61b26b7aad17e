import type { Fact } from '../ledger/fact.ts';
import { Ledger } from '../ledger/Ledger.ts';
import type { LedgerSnapshot } from '../ledger/ledgerSnapshot.ts';
import { indexOf } from './logIndex.ts';
import type { RunLog } from './runLog.ts';

/** Facts between two states that are kept to start from. */
const RESTART_FACTS = 1000;

const known = new WeakMap<RunLog, readonly LedgerSnapshot[]>();

/** The ledger of a log that begins as the given one does; it starts from the last kept state before the first difference. */
export function replayChanged(log: RunLog, facts: readonly Fact[]): Ledger {
  let same = 0;
  while (same < facts.length && facts[same] === log.facts[same]) same++;
  const restart = restartsOf(log)[Math.floor(same / RESTART_FACTS) - 1];
  const ledger = new Ledger(indexOf(log).rules);
  if (restart) ledger.restore(restart);
  for (let k = restart?.factCount ?? 0; k < facts.length; k++) ledger.apply(facts[k]!);
  return ledger;
}

/** States after 1000, 2000 … facts of the log. */
function restartsOf(log: RunLog): readonly LedgerSnapshot[] {
  let restarts = known.get(log);
  if (restarts) return restarts;
  const ledger = new Ledger(indexOf(log).rules);
  const made: LedgerSnapshot[] = [];
  log.facts.forEach((fact, k) => {
    ledger.apply(fact);
    if ((k + 1) % RESTART_FACTS === 0) made.push(ledger.snapshot());
  });
  known.set(log, (restarts = made));
  return restarts;
}
