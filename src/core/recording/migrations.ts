import type { Migration } from '../scenario/migrations.ts';

type Members = Readonly<Record<string, unknown>>;

/** A run now says what it is worth, and how clear, how smoothly and how surely its hands worked; nobody measured that before. */
function addScore(file: Members): Record<string, unknown> {
  const { result } = file;
  if (!isMembers(result) || !isMembers(result['handling'])) return { ...file, score: null };
  return { ...file, score: null, result: { ...result, handling: { ...result['handling'], measured: null } } };
}

const isMembers = (value: unknown): value is Members => typeof value === 'object' && value !== null;

/** Changes of the run file's shape since version 1, in order. They change the shape alone, never what was played. */
export const MIGRATIONS: readonly Migration[] = [{ to: 2, name: 'AddScore', up: addScore }];

/** Version of the file's shape after these changes. */
export const latestVersion = (migrations: readonly Migration[]): number => migrations.length + 1;
