import { checksumOf } from './checksum.ts';
import { latestVersion, MIGRATIONS } from './migrations.ts';
import { packCommands } from './packedCommands.ts';
import type { RunFile } from './recording.ts';
import { RUN_FORMAT } from './runFileSchema.ts';

/** Text of a run file (JSON on one line, what identifies it first). */
export const writeRunFile = (run: RunFile): string =>
  runFileText(latestVersion(MIGRATIONS), { header: run.header, steps: run.steps, commands: packCommands(run.commands), hashes: run.hashes.join(''), result: run.result, score: run.score });

/** Text of a run file with content in the shape of a version. */
export function runFileText(version: number, content: Readonly<Record<string, unknown>>): string {
  const named = { format: RUN_FORMAT, version };
  // The checksum is of what a reader will find: plain JSON, without members that have no value.
  const plain = JSON.parse(JSON.stringify({ ...named, ...content })) as Record<string, unknown>;
  return `${JSON.stringify({ ...named, checksum: checksumOf(plain), ...content })}\n`;
}
