import { z } from 'zod';
import { failure, success, type Result } from '../core/base/result.ts';
import { clock } from '../core/recording/clock.ts';
import { MIGRATIONS } from '../core/recording/migrations.ts';
import { packCommands, packedCommandsSchema, unpackCommands } from '../core/recording/packedCommands.ts';
import { readRunContent } from '../core/recording/readRunContent.ts';
import { hashCount, type RunFile, type StepCommands } from '../core/recording/recording.ts';
import { runFileText } from '../core/recording/writeRunFile.ts';
import type { RunSnapshot } from '../core/run/contract.ts';
import { migrate } from '../core/scenario/migrations.ts';
import { RECORD_VERSION } from './database.ts';
import { NEWER_RECORD, UNREADABLE_RECORD, versionOf } from './storedRun.ts';

/** A kept run. With `fault`, only its beginning could be read: it can be looked at and saved, but not continued. */
export interface LoadedRun {
  readonly recording: RunFile;
  readonly snapshot: RunSnapshot | null;
  readonly fault: string | null;
}

/** The records of one run that is kept in parts, as they came out of the database. */
export interface RunRecords {
  readonly run: unknown;
  readonly parts: readonly unknown[];
  readonly snapshot: unknown;
}

const runSchema = z.object({ shape: z.int().min(1).default(1), header: z.unknown(), steps: z.int().min(0), result: z.unknown() });
const partSchema = z.object({ part: z.int(), fromStep: z.int(), toStep: z.int(), commands: packedCommandsSchema, hashes: z.array(z.string()) });
const snapshotSchema = z.object({ version: z.literal(RECORD_VERSION), snapshot: z.object({ step: z.int().min(0), parts: z.record(z.string(), z.unknown()) }) });

/** Puts a run together from its records, as far as they are whole. The error is one sentence. */
export function assembleRun(records: RunRecords): Result<LoadedRun, string> {
  const found = contentOf(records);
  if (!found.ok) return found;
  const { shape, content, steps } = found.value;
  const read = readContent(shape, content);
  if (!read) return failure(UNREADABLE_RECORD);
  if (content.steps !== steps) return success({ recording: read, snapshot: null, fault: partFault(content.steps, steps) });
  const snapshot = snapshotSchema.safeParse(records.snapshot);
  return success({ recording: read, snapshot: snapshot.success ? snapshot.data.snapshot : null, fault: null });
}

/** The same as the text of a run file, in the shape in which it was kept. */
export function textOfRecords(records: RunRecords): Result<string, string> {
  const found = contentOf(records);
  if (!found.ok) return found;
  return readContent(found.value.shape, found.value.content) ? success(runFileText(found.value.shape, { ...found.value.content })) : failure(UNREADABLE_RECORD);
}

/** From this version on a run file says what its run is worth. A run in parts of that version has no end and is worth nothing yet. */
const SCORED_SHAPE = 2;

interface Content {
  readonly header: unknown;
  readonly steps: number;
  readonly commands: unknown;
  readonly hashes: string;
  readonly result: unknown;
  readonly score?: null;
}

/** Content of a run file as far as the parts are whole, and the steps that there should be. */
function contentOf(records: RunRecords): Result<{ readonly shape: number; readonly content: Content; readonly steps: number }, string> {
  if (Math.max(...[records.run, ...records.parts].map(versionOf)) > RECORD_VERSION) return failure(NEWER_RECORD);
  const run = runSchema.safeParse(records.run);
  if (!run.success) return failure(UNREADABLE_RECORD);
  const { shape, header, steps, result } = run.data;
  if (shape > MIGRATIONS.length + 1) return failure(NEWER_RECORD);
  const played = wholeParts(records.parts);
  const finished = played.steps === steps && result !== null;
  const hashes = played.hashes.slice(0, hashCount(played.steps, finished)).join('');
  const content = { header, steps: played.steps, commands: packCommands(played.commands), hashes, result: finished ? result : null };
  return success({ shape, content: shape < SCORED_SHAPE ? content : { ...content, score: null }, steps });
}

/** Content lifted to the present shape and read, or null. */
function readContent(shape: number, content: Content): RunFile | null {
  try {
    const { version: _, ...latest } = migrate({ version: shape, ...content }, shape, MIGRATIONS);
    const read = readRunContent(latest);
    return read.ok ? read.value : null;
  } catch {
    return null;
  }
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

const partFault = (steps: number, of: number): string =>
  `The kept run is damaged after ${clock(steps)} of ${clock(of)}; the part before can be looked at and saved, but not continued.`;
