import { contentHash } from '../core/recording/checksum.ts';
import { latestVersion, MIGRATIONS } from '../core/recording/migrations.ts';
import { packCommands } from '../core/recording/packedCommands.ts';
import type { RunFile } from '../core/recording/recording.ts';
import { CURRENT_VERSION } from '../core/scenario/migrations.ts';
import { scenarioHash } from '../core/scenario/scenarioHash.ts';
import { scenarioSchema } from '../core/scenario/schema.ts';
import type { HashOfContent } from './runSummary.ts';

/**
 * Names what a run file says, whatever the version in which it was written: two files of a run have the same hash when header,
 * commands, state hashes, result and score agree. The scenario goes in by its own hash. Only hashes of one `hashShape` are compared.
 */
export function contentHashOf({ header, steps, commands, hashes, result, score }: RunFile): HashOfContent & { readonly contentHash: string } {
  const { scenario: _, ...named } = header;
  return { contentHash: contentHash({ header: named, steps, commands: packCommands(commands), hashes: hashes.join(''), result, score }), hashShape: HASH_SHAPE };
}

/** Names how run files and scenarios are read now: with another shape, or other defaults filled in, hashes are no longer comparable. */
export const HASH_SHAPE = `${latestVersion(MIGRATIONS)}.${scenarioHash(scenarioSchema.parse({ format: 'sterile-field-scenario', version: CURRENT_VERSION, id: 'plain', title: 'Plain', summary: 'Plain.', seed: 0, station: 'field' }))}`;
