import { StateHash } from '../base/hash.ts';
import { canonicalJson } from '../scenario/scenarioHash.ts';

/** 16 hexadecimal digits over the content of a JSON value, whatever the order of its keys. */
export const contentHash = (value: unknown): string => new StateHash().addText(canonicalJson(value)).digest();

/**
 * Checksum of a run file's content, over everything but `checksum` itself. It tells damage and careless edits from a run whose
 * result does not follow; it is no proof of origin.
 */
export function checksumOf(content: Readonly<Record<string, unknown>>): string {
  const { checksum: _, ...rest } = content;
  return contentHash(rest);
}
