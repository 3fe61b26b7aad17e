import type { RunLog } from '../../core/debrief/runLog.ts';
import type { Break } from '../../core/ledger/break.ts';
import { reachedStep } from './reachedStep.ts';

/**
 * The log that what-ifs of a break are worked out on: the whole one as soon as it is there, before that the first one in which the
 * break had got as far as it did. Null while it has not. `held` is the one used so far: a log that merely grew does not take its
 * place, so that nothing changes under the reader but once, at the end.
 */
export function logForWhatIf(log: RunLog | null, broken: Break | null, held: RunLog | null): RunLog | null {
  if (log === null || log.complete) return log;
  if (broken === null) return null;
  const far = reachedStep(broken);
  if (held !== null && held.scenario === log.scenario && held.steps > far) return held;
  return log.steps > far ? log : null;
}
