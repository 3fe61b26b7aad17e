import type { Migration } from '../scenario/migrations.ts';

/** Changes of the run file's shape since version 1, in order. They change the shape alone, never what was played. */
export const MIGRATIONS: readonly Migration[] = [];

/** Version of the file's shape after these changes. */
export const latestVersion = (migrations: readonly Migration[]): number => migrations.length + 1;
