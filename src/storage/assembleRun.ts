import { z } from 'zod';
import { failure, success, type Result } from '../core/base/result.ts';
import { clock } from '../core/recording/clock.ts';
import { packCommands, packedCommandsSchema, unpackCommands } from '../core/recording/packedCommands.ts';
import { readRunContent } from '../core/recording/readRunContent.ts';
import { hashCount, type RunFile, type StepCommands } from '../core/recording/recording.ts';
import type { RunSnapshot } from '../core/run/contract.ts';
import { RECORD_VERSION } from './database.ts';
import { NEWER_RECORD, UNREADABLE_RECORD } from './storedRun.ts';

/** A kept run. With `fault`, only its beginning could be read: it can be looked at and saved, but not continued. */
export interface LoadedRun {
  readonly recording: RunFile;
  readonly snapshot: RunSnapshot | null;
  readonly fault: string | null;
}

/** The records of one run, as they came out of the database. */
export interface RunRecords {
  readonly run: unknown;
  readonly parts: readonly unknown[];
  readonly snapshot: unknown;
}

const runSchema = z.object({ header: z.unknown(), steps: z.int().min(0), result: z.unknown() });
const partSchema = z.object({ part: z.int(), fromStep: z.int(), toStep: z.int(), commands: packedCommandsSchema, hashes: z.array(z.string()) });
const snapshotSchema = z.object({ version: z.literal(RECORD_VERSION), snapshot: z.object({ step: z.int().min(0), parts: z.record(z.string(), z.unknown()) }) });

/** Puts a run together from its records, as far as they are whole. The error is one sentence. */
export function assembleRun(records: RunRecords): Result<LoadedRun, string> {
  const newest = Math.max(...[records.run, ...records.parts].map(versionOf));
  if (newest > RECORD_VERSION) return failure(NEWER_RECORD);
  const run = runSchema.safeParse(records.run);
  if (!run.success) return failure(UNREADABLE_RECORD);
  const { header, steps, result } = run.data;
  const played = wholeParts(records.parts);
  const whole = played.steps === steps;
  const finished = whole && result !== null;
  const hashes = played.hashes.slice(0, hashCount(played.steps, finished)).join('');
  const read = readRunContent({ header, steps: played.steps, commands: packCommands(played.commands), hashes, result: finished ? result : null });
  if (!read.ok) return failure(UNREADABLE_RECORD);
  if (!whole) return success({ recording: read.value, snapshot: null, fault: partFault(played.steps, steps) });
  const snapshot = snapshotSchema.safeParse(records.snapshot);
  return success({ recording: read.value, snapshot: snapshot.success ? snapshot.data.snapshot : null, fault: null });
}

/** Commands and hashes of the parts up to the first that is missing, out of place or unreadable. */
function wholeParts(records: readonly unknown[]): { steps: number; commands: StepCommands[]; hashes: string[] } {
  const played = { steps: 0, commands: [] as StepCommands[], hashes: [] as string[] };
  for (const [k, record] of records.entries()) {
    const part = partSchema.safeParse(record);
    if (!part.success || part.data.part !== k || part.data.fromStep !== played.steps || part.data.toStep <= played.steps) break;
    const commands = unpackCommands(part.data.commands, part.data.toStep);
    if (!commands.ok || commands.value.some(({ step }) => step < played.steps)) break;
    played.steps = part.data.toStep;
    played.commands.push(...commands.value);
    played.hashes.push(...part.data.hashes);
  }
  return played;
}

const versionOf = (record: unknown): number => {
  const read = z.object({ version: z.int() }).safeParse(record);
  return read.success ? read.data.version : 0;
};

const partFault = (steps: number, of: number): string =>
  `The kept run is damaged after ${clock(steps)} of ${clock(of)}; the part before can be looked at and saved, but not continued.`;
