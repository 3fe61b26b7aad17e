import { failure, success, type Result } from '../../core/base/result.ts';
import { readRunFile } from '../../core/recording/readRunFile.ts';
import { runFileErrorWords } from '../../core/recording/runFileError.ts';
import { contentHashOf } from '../contentHash.ts';
import { fileText, zipText } from '../gzip.ts';
import type { ArrivedRun } from '../keepRun.ts';
import { summaryOf } from '../runSummary.ts';

const DAMAGED = 'The file is a damaged zip or far too large; copy or download it again from where it was saved.';

/** A run from the bytes of its file, zipped or not, ready to be kept. The error is one sentence. */
export async function readRunMember(bytes: Uint8Array<ArrayBuffer>, arrivedAt: string): Promise<Result<ArrivedRun, string>> {
  const text = await fileText(new Blob([bytes]));
  if (text === null) return failure(DAMAGED);
  const read = readRunFile(text);
  if (!read.ok) return failure(runFileErrorWords(read.error));
  const summary = summaryOf(read.value.header.runId, read.value, contentHashOf(read.value))!;
  const isZipped = bytes[0] === 0x1f && bytes[1] === 0x8b;
  return success({ summary: { ...summary, exportedAt: arrivedAt }, zipped: isZipped ? bytes : await zipText(text) });
}
