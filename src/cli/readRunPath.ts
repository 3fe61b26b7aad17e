import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import { failure, type Result } from '../core/base/result.ts';
import { readRunFile } from '../core/recording/readRunFile.ts';
import type { RunFile } from '../core/recording/recording.ts';
import { runFileErrorWords } from '../core/recording/runFileError.ts';

/** A run of hours unzips to a few megabytes; more than this is no run. */
const UNZIPPED_BYTES_MAX = 256 * 1024 * 1024;

/** The run in a file, gzipped or not, whatever its name. The error is one sentence. */
export function readRunPath(path: string): Result<RunFile, string> {
  let bytes: Buffer;
  try {
    bytes = readFileSync(path);
  } catch (error) {
    return failure(openingFault(error));
  }
  try {
    if (bytes[0] === 0x1f && bytes[1] === 0x8b) bytes = gunzipSync(bytes, { maxOutputLength: UNZIPPED_BYTES_MAX });
  } catch {
    return failure('The zipped run file is damaged, cut off or no run at all; copy or download it again from where it was saved.');
  }
  const read = readRunFile(bytes.toString('utf8'));
  return read.ok ? read : failure(runFileErrorWords(read.error));
}

function openingFault(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  if (code === 'ENOENT') return 'There is no such file; check its name.';
  if (code === 'EISDIR') return 'This is a folder; name the run files in it.';
  return `The file cannot be read (${code || 'unknown fault'}).`;
}
