import { failure, success, type Result } from '../core/base/result.ts';
import { readRunFile } from '../core/recording/readRunFile.ts';
import type { RunFile } from '../core/recording/recording.ts';
import { assembleRun, textOfRecords, type LoadedRun } from './assembleRun.ts';
import { partsOf, RECORD_VERSION, type RunDatabase } from './database.ts';
import { fileText, zipText } from './gzip.ts';
import { NEWER_RECORD, UNREADABLE_RECORD, versionOf } from './storedRun.ts';

const GONE = 'This run is no longer kept in this browser.';

/** The run that a kept body holds. The error is one sentence. */
async function readBody(body: unknown): Promise<Result<RunFile, string>> {
  if (versionOf(body) > RECORD_VERSION) return failure(NEWER_RECORD);
  const zipped = zippedOf(body);
  const text = zipped && (await fileText(new Blob([zipped])));
  if (!text) return failure(UNREADABLE_RECORD);
  const read = readRunFile(text);
  if (read.ok) return success(read.value);
  return failure(read.error.kind === 'newer' ? NEWER_RECORD : UNREADABLE_RECORD);
}

function zippedOf(body: unknown): Uint8Array<ArrayBuffer> | null {
  const zipped = typeof body === 'object' && body !== null && 'zipped' in body ? body.zipped : null;
  return ArrayBuffer.isView(zipped) ? new Uint8Array(zipped.buffer as ArrayBuffer, zipped.byteOffset, zipped.byteLength) : null;
}

/** A kept run, from its body or its parts, as far as it is whole. */
export async function loadRun(database: RunDatabase, key: string): Promise<Result<LoadedRun, string>> {
  const transaction = database.transaction(['bodies', 'runs', 'parts', 'snapshots']);
  const [body, run, parts, snapshot] = await Promise.all([
    transaction.objectStore('bodies').get(key),
    transaction.objectStore('runs').get(key),
    transaction.objectStore('parts').getAll(partsOf(key)),
    transaction.objectStore('snapshots').get(key),
  ]);
  if (body !== undefined) {
    const read = await readBody(body);
    return read.ok ? success({ recording: read.value, snapshot: null, fault: null }) : read;
  }
  return run ? assembleRun({ run, parts, snapshot }) : failure(GONE);
}

/** A kept run as a zipped file: as it was saved or imported, or packed now from its parts. */
export async function zippedRun(database: RunDatabase, key: string): Promise<Result<Uint8Array<ArrayBuffer>, string>> {
  const transaction = database.transaction(['bodies', 'runs', 'parts']);
  const [body, run, parts] = await Promise.all([
    transaction.objectStore('bodies').get(key),
    transaction.objectStore('runs').get(key),
    transaction.objectStore('parts').getAll(partsOf(key)),
  ]);
  if (body !== undefined) {
    const zipped = zippedOf(body);
    return zipped ? success(zipped) : failure(UNREADABLE_RECORD);
  }
  if (!run) return failure(GONE);
  const text = textOfRecords({ run, parts, snapshot: null });
  return text.ok ? success(await zipText(text.value)) : text;
}
