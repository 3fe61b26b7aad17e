import { failure, type Result } from '../core/base/result.ts';
import { readRunFile } from '../core/recording/readRunFile.ts';
import type { RunFile } from '../core/recording/recording.ts';
import { runFileErrorWords } from '../core/recording/runFileError.ts';

const bytesOf = async (stream: ReadableStream<Uint8Array<ArrayBuffer>>): Promise<Uint8Array<ArrayBuffer>> => new Uint8Array(await new Response(stream).arrayBuffer());

/** Gzipped UTF-8 of a text. */
export const gzip = (text: string): Promise<Uint8Array<ArrayBuffer>> => bytesOf(new Blob([text]).stream().pipeThrough(new CompressionStream('gzip')));

/** Text of gzipped UTF-8; rejects when the bytes are no whole gzip. */
export const gunzip = async (bytes: Uint8Array<ArrayBuffer>): Promise<string> =>
  new TextDecoder().decode(await bytesOf(new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'))));

const isGzip = (bytes: Uint8Array): boolean => bytes[0] === 0x1f && bytes[1] === 0x8b;

/** Reads a run file that a person chose, gzipped or not. The error is one sentence. Never rejects. */
export async function readRunBytes(bytes: Uint8Array<ArrayBuffer>): Promise<Result<RunFile, string>> {
  let text: string;
  try {
    text = isGzip(bytes) ? await gunzip(bytes) : new TextDecoder().decode(bytes);
  } catch {
    return failure('The zipped run file is damaged or cut off; copy or download it again from where it was saved.');
  }
  const read = readRunFile(text);
  return read.ok ? read : failure(runFileErrorWords(read.error));
}
