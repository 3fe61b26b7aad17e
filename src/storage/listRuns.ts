import { contentHashOf } from './contentHash.ts';
import { RECORD_VERSION, type RunDatabase } from './database.ts';
import { loadRun } from './runBody.ts';
import { marksOf, NO_HASH, readSummary, SUMMARY_VERSION, summaryOf, type RunSummary } from './runSummary.ts';
import { LOST_RECORDING, NEWER_RECORD, UNREADABLE_RECORD, unreadableRun, versionOf, type StoredRun } from './storedRun.ts';

/** All kept runs, and sentences about what of the list itself was damaged. */
export interface RunListing {
  readonly runs: readonly StoredRun[];
  readonly notes: readonly string[];
}

/**
 * Lists every kept run without reading its recording. A line that is missing, damaged or of an older version is made again from its
 * recording; a run that cannot be read is listed with its fault.
 */
export async function listRuns(database: RunDatabase): Promise<RunListing> {
  const { summaries, kept } = await readLines(database);
  const runs: StoredRun[] = [];
  const notes: string[] = [];
  for (const key of new Set([...summaries.keys(), ...kept.keys()])) {
    const record = summaries.get(key);
    const summary = readSummary(record);
    if (summary) runs.push({ ...summary, inParts: kept.get(key) ?? false, fault: kept.has(key) ? null : LOST_RECORDING });
    else if (versionOf(record) > SUMMARY_VERSION) runs.push(unreadableRun(key, NEWER_RECORD, marksOf(record)));
    else {
      const again = await makeAgain(database, key, record);
      runs.push(again);
      if (record !== undefined && versionOf(record) === SUMMARY_VERSION && !again.fault) notes.push(lineMadeAgain(again));
    }
  }
  return { runs, notes };
}

const lineMadeAgain = ({ title, startedAt }: RunSummary): string =>
  `The line of “${title}” of ${startedAt.slice(0, 16).replace('T', ' ')} in the list was damaged and has been made again from its recording.`;

/** Lines by key as they are kept, and the keys of all recordings with whether they are kept in parts. */
async function readLines(database: RunDatabase): Promise<{ summaries: Map<string, unknown>; kept: Map<string, boolean> }> {
  const transaction = database.transaction(['summaries', 'bodies', 'runs']);
  const [keys, bodies, runs] = await Promise.all([
    transaction.objectStore('summaries').getAllKeys(),
    transaction.objectStore('bodies').getAllKeys(),
    transaction.objectStore('runs').getAllKeys(),
  ]);
  const records = await allOrSingly(database, keys);
  return { summaries: new Map(keys.map((key, k) => [key, records[k]])), kept: new Map([...runs.map((key) => [key, true] as const), ...bodies.map((key) => [key, false] as const)]) };
}

/** All lines at once; where one of them spoils that, one by one, so that only that one is missed. */
async function allOrSingly(database: RunDatabase, keys: readonly string[]): Promise<readonly unknown[]> {
  const all: unknown[] = await database.getAll('summaries').catch(() => []);
  if (all.length === keys.length) return all;
  return Promise.all(keys.map((key) => database.get('summaries', key).catch(() => ({ version: SUMMARY_VERSION }))));
}

/** Makes the line of a run from its recording and keeps it. */
async function makeAgain(database: RunDatabase, key: string, record: unknown): Promise<StoredRun> {
  const marks = marksOf(record);
  const run = await database.get('runs', key).catch(() => undefined);
  if (versionOf(run) > RECORD_VERSION) return unreadableRun(key, NEWER_RECORD, marks);
  const made = run ? summaryOf(key, run, NO_HASH) : await fromBody(database, key);
  if (typeof made === 'string' || made === null) return unreadableRun(key, made ?? UNREADABLE_RECORD, marks);
  const summary = { ...made, ...marks };
  await database.put('summaries', summary).catch(() => undefined);
  return { ...summary, inParts: run !== undefined, fault: null };
}

/** Line of a run from its body, or the sentence that says why there is none. */
async function fromBody(database: RunDatabase, key: string): Promise<RunSummary | string | null> {
  if ((await database.getKey('bodies', key)) === undefined) return LOST_RECORDING;
  const loaded = await loadRun(database, key);
  return loaded.ok ? summaryOf(key, loaded.value.recording, contentHashOf(loaded.value.recording)) : loaded.error;
}
