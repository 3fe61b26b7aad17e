import { strFromU8, unzipSync } from 'fflate';
import type { ArrivedRun } from '../keepRun.ts';
import { MANIFEST, readManifest, sha256, type ListedFile } from './manifest.ts';
import { readRunMember } from './readRunMember.ts';
import { RUNS_TABLE } from './writeArchive.ts';

/** One file that was looked at: a run, or one sentence why it is none. `share` is the part of the whole that is done, 0 to 1. */
export type ArrivedFile = { readonly name: string; readonly share: number } & ({ readonly run: ArrivedRun } | { readonly refusal: string });

const ARCHIVE_BYTES_MAX = 1024 * 1024 * 1024;
const MEMBER_BYTES_MAX = 64 * 1024 * 1024;
/** A damaged directory may name any number of members. */
const MEMBERS_MAX = 100_000;
const NAME_SHOWN_MAX = 120;
/** What packing programs put beside the files. */
const ASIDE = /(?:^|\/)(?:\.|__MACOSX\/|Thumbs\.db$)|\/$/;

/** Reads a file that may hold runs, a single run or an archive of many, one after the other. Never throws. */
export async function* readArchive(file: File, arrivedAt: string): AsyncGenerator<ArrivedFile, void> {
  const refused = (refusal: string): ArrivedFile => ({ name: file.name, share: 1, refusal });
  if (file.size > ARCHIVE_BYTES_MAX) return yield refused('The file is larger than 1 GB; export the runs again in several archives.');
  const bytes = await bytesOf(file);
  if (!bytes) return yield refused('The file cannot be read any more; choose it again.');
  if (bytes[0] === 0x50 && bytes[1] === 0x4b) return yield* members(file.name, bytes, arrivedAt);
  const read = await readRunMember(bytes, arrivedAt);
  yield read.ok ? { name: file.name, share: 1, run: read.value } : refused(read.error);
}

const bytesOf = async (file: File): Promise<Uint8Array<ArrayBuffer> | null> => file.arrayBuffer().then((buffer) => new Uint8Array(buffer), () => null);

async function* members(archive: string, bytes: Uint8Array<ArrayBuffer>, arrivedAt: string): AsyncGenerator<ArrivedFile, void> {
  const sizes = sizesOf(bytes);
  if (!sizes) return yield { name: archive, share: 1, refusal: 'The archive is cut off or damaged and cannot be opened; copy or download it again from where it was saved.' };
  const manifest = manifestOf(bytes, sizes);
  if (manifest === 'newer') return yield { name: archive, share: 1, refusal: 'The archive was made by a newer trainer; open it with that one.' };
  if (manifest === null) yield { name: MANIFEST, share: 0, refusal: 'The list of files in the archive is damaged, so each run was checked by its own checksum alone; ask for the archive again if one is missing.' };
  const listed = manifest ?? new Map<string, ListedFile>();
  const names = [...sizes.keys()].filter((name) => name !== MANIFEST && name !== RUNS_TABLE && !ASIDE.test(name));
  const lost = [...listed.keys()].filter((name) => !sizes.has(name));
  const all = [...names, ...lost];
  for (const [k, name] of all.entries()) {
    const told = { name: name.slice(0, NAME_SHOWN_MAX), share: (k + 1) / all.length };
    const answer = sizes.has(name) ? await readMember(bytes, name, sizes.get(name)!, listed.get(name), arrivedAt) : 'The archive lists this file but does not hold it; ask for the archive again.';
    yield typeof answer === 'string' ? { ...told, refusal: answer } : { ...told, run: answer };
  }
  if (all.length === 0) yield { name: archive, share: 1, refusal: 'The archive holds no runs; choose one that the trainer exported.' };
}

async function readMember(bytes: Uint8Array, name: string, size: number, listed: ListedFile | undefined, arrivedAt: string): Promise<ArrivedRun | string> {
  if (!/\.json(?:\.gz)?$/i.test(name)) return 'This is not a run file and was left out; everything else in the archive was looked at.';
  if (size > MEMBER_BYTES_MAX) return 'This file is far too large for a run; ask for the file as the trainer saved it.';
  const content = member(bytes, name);
  if (!content) return 'This file is damaged inside the archive; copy or download the archive again from where it was saved.';
  if (listed && listed.sha256 !== (await sha256(content))) return 'This file is not the one that the archive lists (its SHA-256 is another); ask for the archive again.';
  const read = await readRunMember(content, arrivedAt);
  return read.ok ? read.value : read.error;
}

/** Names of all members with their unpacked sizes in bytes, or null when it is no whole archive. */
function sizesOf(bytes: Uint8Array): Map<string, number> | null {
  const sizes = new Map<string, number>();
  let seen = 0;
  const note = ({ name, originalSize }: { readonly name: string; readonly originalSize: number }): false => {
    if (++seen > MEMBERS_MAX) throw new RangeError('too many members');
    sizes.set(name, originalSize);
    return false;
  };
  try {
    unzipSync(bytes, { filter: note });
    return sizes;
  } catch {
    return null;
  }
}

/** Bytes of one member, or null when it is damaged. */
function member(bytes: Uint8Array, name: string): Uint8Array<ArrayBuffer> | null {
  try {
    const found = unzipSync(bytes, { filter: (file) => file.name === name })[name];
    return found ? new Uint8Array(found) : null;
  } catch {
    return null;
  }
}

/** What the manifest lists; nothing when there is none (a zip made by hand), null when it is damaged. */
function manifestOf(bytes: Uint8Array, sizes: ReadonlyMap<string, number>): ReturnType<typeof readManifest> {
  const size = sizes.get(MANIFEST);
  if (size === undefined) return new Map();
  const content = size > MEMBER_BYTES_MAX ? null : member(bytes, MANIFEST);
  return content && readManifest(strFromU8(content));
}
