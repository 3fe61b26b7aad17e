import { failure, type Result } from '../base/result.ts';
import { migrate, type Migration } from '../scenario/migrations.ts';
import { checksumOf } from './checksum.ts';
import { jsonFault } from './jsonFault.ts';
import { latestVersion, MIGRATIONS } from './migrations.ts';
import { readRunContent } from './readRunContent.ts';
import type { RunFile } from './recording.ts';
import { RUN_FORMAT } from './runFileSchema.ts';
import type { RunFileError } from './runFileError.ts';
import { isShallow } from './shallow.ts';

/**
 * Reads the text of a run file (unzipped). Never throws: whatever the text, the answer is a run or one error. In order: JSON, what
 * it says it is, its version, its checksum, migrations, its shape, and whether its parts fit together.
 */
export function readRunFile(text: string, migrations: readonly Migration[] = MIGRATIONS): Result<RunFile, RunFileError> {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return failure(jsonFault(text));
  }
  const fault = headFault(json, latestVersion(migrations));
  if (fault) return failure(fault);
  const content = json as Record<string, unknown> & { version: number };
  const found = checksumOf(content);
  const written = typeof content['checksum'] === 'string' ? content['checksum'].slice(0, 16) : 'no text';
  if (written !== found) return failure({ kind: 'damaged', written, found });
  const { format: _, version: __, checksum: ___, ...latest } = migrate(content, content.version, migrations);
  return readRunContent(latest);
}

/** What is wrong with the few members that say what the file is. */
function headFault(json: unknown, known: number): RunFileError | null {
  if (typeof json !== 'object' || json === null || !('format' in json)) return { kind: 'foreign', format: null };
  if (json.format !== RUN_FORMAT) return { kind: 'foreign', format: typeof json.format === 'string' ? json.format.slice(0, 40) : null };
  const version = 'version' in json ? json.version : undefined;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) return { kind: 'wrongShape', path: 'version', fault: 'is not a whole number from 1 on' };
  if (version > known) return { kind: 'newer', version, known };
  if (!isShallow(json)) return { kind: 'wrongShape', path: 'the file', fault: 'nests deeper than any run' };
  return 'checksum' in json ? null : { kind: 'wrongShape', path: 'checksum', fault: 'is missing' };
}
