import { assert } from '../base/assert.ts';

/** One change of the shape of scenario files. `up` gets a file of the version before and returns it in the shape of `to`. */
export interface Migration {
  readonly to: number;
  /** What changed, as a verb and a noun: 'RenameRailHeight'. */
  readonly name: string;
  readonly up: (source: Readonly<Record<string, unknown>>) => Record<string, unknown>;
}

/** All changes since version 1, in order. A new one raises the version of the schema and brings an old file to its tests. */
export const MIGRATIONS: readonly Migration[] = [];

/** Version that the schema describes. */
export const CURRENT_VERSION = MIGRATIONS.length + 1;

/** Lifts a file of version `from` through all later migrations; it may be left half right, since the schema judges it afterwards. */
export function migrate(source: Readonly<Record<string, unknown>>, from: number, migrations: readonly Migration[]): Record<string, unknown> {
  migrations.forEach((migration, k) => assert(migration.to === k + 2, `migration ${migration.name} is number ${migration.to}, expected ${k + 2}`));
  let file = { ...source };
  for (const migration of migrations.slice(from - 1)) file = { ...migration.up(file), version: migration.to };
  return file;
}
