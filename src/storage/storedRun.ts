import { z } from 'zod';
import { NO_HASH, type RunSummary } from './runSummary.ts';

/** One run of the list. */
export interface StoredRun extends RunSummary {
  /** Kept as it was being played, so that it can go on where it was broken off. */
  readonly inParts: boolean;
  /** One sentence when it cannot be opened, or null. */
  readonly fault: string | null;
}

/** Whether a run waits to be taken up again, or is so damaged that it cannot be told. */
export const isBrokenOff = ({ finished, inParts, fault }: StoredRun): boolean => !finished && (inParts || fault !== null);

export const NEWER_RECORD = 'This run was kept by a newer trainer; it is left as it is and can be opened with that one.';
export const UNREADABLE_RECORD = 'What the browser kept of this run is damaged and cannot be read; it is left as it is until you delete it.';
export const LOST_RECORDING = 'The recording of this run is no longer in this browser, only its line in the list; import it again if you exported it, or delete the line.';

/** Line of a run of which nothing can be read but its key. */
export const unreadableRun = (key: string, fault: string, marks: Pick<RunSummary, 'exportedAt' | 'deletedAt'>): StoredRun => ({
  version: 1,
  key,
  runId: key,
  scenarioId: '',
  title: '',
  startedAt: '',
  seconds: 0,
  finished: false,
  simulation: 0,
  breaks: { minor: 0, major: 0, critical: 0 },
  unremediedCriticals: 0,
  verdict: null,
  total: null,
  ...NO_HASH,
  ...marks,
  inParts: false,
  fault,
});

const versionSchema = z.object({ version: z.number() });

/** Version that a record says it has, or 0. */
export function versionOf(record: unknown): number {
  const read = versionSchema.safeParse(record);
  return read.success ? read.data.version : 0;
}
