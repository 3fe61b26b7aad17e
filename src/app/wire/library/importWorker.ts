import '../noEval.ts';
import { readArchive, type ArrivedFile } from '../../../storage/archive/readArchive.ts';
import type { ImportReply, ImportRequest } from './importMessages.ts';

/** Unpacks, hashes and reads runs beside the page, one each time it is asked for the next. */
let arriving: AsyncGenerator<ArrivedFile, void> | null = null;

self.addEventListener('message', ({ data }: MessageEvent<ImportRequest>) => {
  if (data !== 'next') arriving = readArchive(data.file, data.arrivedAt);
  else void arriving?.next().then(({ value }) => self.postMessage((value ?? null) satisfies ImportReply));
});
