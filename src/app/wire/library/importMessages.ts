import type { ArrivedFile } from '../../../storage/archive/readArchive.ts';

/** What the page asks of the worker that reads files: to begin with one, then for what is in it, one by one. */
export type ImportRequest = { readonly file: File; readonly arrivedAt: string } | 'next';

/** One file that was looked at, or null at the end. */
export type ImportReply = ArrivedFile | null;
