import { z } from 'zod';

export const MANIFEST = 'manifest.json';
export const ARCHIVE_FORMAT = 'sterile-field-run-archive';
const ARCHIVE_VERSION = 1;

/** A file of an archive, with its length in bytes and its SHA-256 in hexadecimal digits. */
export interface ListedFile {
  readonly name: string;
  readonly bytes: number;
  readonly sha256: string;
}

const manifestSchema = z.object({
  format: z.literal(ARCHIVE_FORMAT),
  version: z.int().min(1),
  madeAt: z.string(),
  files: z.array(z.object({ name: z.string(), bytes: z.int().min(0), sha256: z.string().regex(/^[0-9a-f]{64}$/) })),
});

export const manifestText = (madeAt: string, files: readonly ListedFile[]): string =>
  `${JSON.stringify({ format: ARCHIVE_FORMAT, version: ARCHIVE_VERSION, madeAt, files }, null, 1)}\n`;

/** The files that a manifest lists, by name; `newer` when a newer trainer wrote it; null when it is damaged. */
export function readManifest(text: string): ReadonlyMap<string, ListedFile> | 'newer' | null {
  try {
    const json: unknown = JSON.parse(text);
    const version = z.object({ format: z.literal(ARCHIVE_FORMAT), version: z.int() }).safeParse(json);
    if (version.success && version.data.version > ARCHIVE_VERSION) return 'newer';
    const read = manifestSchema.safeParse(json);
    return read.success ? new Map(read.data.files.map((file) => [file.name, file])) : null;
  } catch {
    return null;
  }
}

/** SHA-256 of bytes in hexadecimal digits. */
export async function sha256(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
