import { z } from 'zod';
import { STEPS_PER_SECOND } from '../core/base/time.ts';

/** Raised when a line of the list holds something else; older lines are made again from their recordings. */
export const SUMMARY_VERSION = 1;

/** One line of the list of runs: all that a list shows, without the recording. */
const summarySchema = z.object({
  version: z.literal(SUMMARY_VERSION),
  /** Key in this browser: the run's id, or for a second recording under the same id that and its content hash. */
  key: z.string(),
  runId: z.string(),
  scenarioId: z.string(),
  /** Title of its scenario. */
  title: z.string(),
  /** Start in ISO 8601. */
  startedAt: z.string(),
  /** Length in seconds. */
  seconds: z.number(),
  finished: z.boolean(),
  /** Version of the simulation that recorded it. */
  simulation: z.int(),
  /** Breaks by severity; nothing while the run has no result. */
  breaks: z.object({ minor: z.int(), major: z.int(), critical: z.int() }),
  unremediedCriticals: z.int(),
  verdict: z.enum(['met', 'notYet']).nullable(),
  /** Score from 0 to 100. */
  total: z.number().nullable(),
  /** What `contentHashOf` gives, and the `HASH_SHAPE` for which it was taken; null while not known. */
  contentHash: z.string().nullable(),
  hashShape: z.string(),
  /** When it was last written to an archive, or came from a file; ISO 8601. */
  exportedAt: z.string().nullable(),
  /** Since when it is deleted and can still be taken back; ISO 8601. */
  deletedAt: z.string().nullable(),
});

export type RunSummary = z.output<typeof summarySchema>;

/** What a summary is drawn from: a read recording, or the record of a run that is kept in parts. */
const sourceSchema = z.object({
  header: z.object({
    runId: z.string(),
    startedAt: z.string(),
    simulation: z.int(),
    stepsPerSecond: z.number().min(1).default(STEPS_PER_SECOND),
    scenario: z.object({ id: z.string(), title: z.string() }),
  }),
  steps: z.int(),
  result: z
    .object({
      breaks: z.array(z.object({ severity: z.enum(['minor', 'major', 'critical']), remediedStep: z.int().nullable() })),
    })
    .nullable(),
  score: z.object({ verdict: z.enum(['met', 'notYet']), total: z.number() }).nullable().default(null),
});

/** Content hash of a run, and how files were read when it was taken. */
export interface HashOfContent {
  readonly contentHash: string | null;
  readonly hashShape: string;
}

export const NO_HASH: HashOfContent = { contentHash: null, hashShape: '' };

/** The line of a run, or null when not even that can be made of it. */
export function summaryOf(key: string, run: unknown, hash: HashOfContent): RunSummary | null {
  const read = sourceSchema.safeParse(run);
  if (!read.success) return null;
  const { header, steps, result, score } = read.data;
  const breaks = result?.breaks ?? [];
  const count = (severity: string): number => breaks.filter((broken) => broken.severity === severity).length;
  return {
    version: SUMMARY_VERSION,
    key,
    runId: header.runId,
    scenarioId: header.scenario.id,
    title: header.scenario.title,
    startedAt: header.startedAt,
    seconds: steps / header.stepsPerSecond,
    finished: result !== null,
    simulation: header.simulation,
    breaks: { minor: count('minor'), major: count('major'), critical: count('critical') },
    unremediedCriticals: breaks.filter(({ severity, remediedStep }) => severity === 'critical' && remediedStep === null).length,
    verdict: score?.verdict ?? null,
    total: score?.total ?? null,
    ...hash,
    exportedAt: null,
    deletedAt: null,
  };
}

/** A line as it is kept, or null when it is damaged or of another version. */
export function readSummary(record: unknown): RunSummary | null {
  const read = summarySchema.safeParse(record);
  return read.success ? read.data : null;
}

const marksSchema = z.object({ exportedAt: z.string().nullable().catch(null), deletedAt: z.string().nullable().catch(null) });

/** What a person did to a run, even where the rest of its line is damaged. */
export function marksOf(record: unknown): Pick<RunSummary, 'exportedAt' | 'deletedAt'> {
  const read = marksSchema.safeParse(record);
  return read.success ? read.data : { exportedAt: null, deletedAt: null };
}
