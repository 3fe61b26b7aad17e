import { z } from 'zod';
import { RECORD_VERSION } from './database.ts';

/** What a list of kept runs shows of one. */
export interface StoredRun {
  readonly runId: string;
  /** Title of its scenario. */
  readonly title: string;
  /** Start in ISO 8601. */
  readonly startedAt: string;
  readonly steps: number;
  readonly finished: boolean;
  /** One sentence when the run cannot be opened, or null. */
  readonly fault: string | null;
}

const recordSchema = z.object({
  header: z.object({ startedAt: z.string(), scenario: z.object({ title: z.string() }) }),
  steps: z.int(),
  result: z.unknown(),
});

export const NEWER_RECORD = 'This run was kept by a newer trainer; it is left as it is and can be opened with that one.';
export const UNREADABLE_RECORD = 'What the browser kept of this run is damaged and cannot be read; it is left as it is until you delete it.';

/** Summary of a record of the list of runs, whatever stands in it. */
export function storedRun(runId: string, record: unknown): StoredRun {
  const version = z.object({ version: z.int() }).safeParse(record);
  if (version.success && version.data.version > RECORD_VERSION) return unreadable(runId, NEWER_RECORD);
  const read = recordSchema.safeParse(record);
  if (!version.success || !read.success) return unreadable(runId, UNREADABLE_RECORD);
  const { header, steps, result } = read.data;
  return { runId, title: header.scenario.title, startedAt: header.startedAt, steps, finished: result !== null, fault: null };
}

const unreadable = (runId: string, fault: string): StoredRun => ({ runId, title: '', startedAt: '', steps: 0, finished: false, fault });
