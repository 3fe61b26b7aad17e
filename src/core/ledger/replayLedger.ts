import type { Fact } from './fact.ts';
import type { LedgerView } from './Ledger.ts';
import { Ledger } from './Ledger.ts';
import type { Rule } from './rules/rule.ts';

/** The ledger that follows from a log from its beginning: the same as one that took in the facts as they happened. */
export function replayLedger(facts: readonly Fact[], rules: readonly Rule[]): LedgerView {
  const ledger = new Ledger(rules);
  for (const fact of facts) ledger.apply(fact);
  return ledger;
}
