import type { ArrivedFile } from '../../../storage/archive/readArchive.ts';
import type { Kept } from '../../../storage/keepRun.ts';
import type { RunStore } from '../../../storage/RunStore.ts';
import type { ImportOutcome, Refusal } from '../../library/libraryService.ts';
import type { OnShare } from '../../services.ts';
import type { ImportReply, ImportRequest } from './importMessages.ts';

/** Takes runs in from files, one file after the other and one run at a time: each is kept whole or not at all. */
export async function importFiles(store: RunStore, files: readonly File[], onShare: OnShare): Promise<ImportOutcome> {
  const counts: Record<Kept, number> = { new: 0, same: 0, takenBack: 0, beside: 0 };
  const refused: Refusal[] = [];
  for (const [k, file] of files.entries()) {
    for await (const arrived of readBeside(file)) {
      onShare((k + arrived.share) / files.length);
      const kept = 'run' in arrived ? await store.keep(arrived.run) : { ok: false as const, error: arrived.refusal };
      if (kept.ok) counts[kept.value]++;
      else refused.push({ name: arrived.name, words: kept.error });
    }
  }
  return { added: counts.new, same: counts.same, takenBack: counts.takenBack, beside: counts.beside, refused };
}

/** Reads a file in a worker; the worker waits until each run is kept. */
async function* readBeside(file: File): AsyncGenerator<ArrivedFile, void> {
  const worker = new Worker(new URL('./importWorker.ts', import.meta.url), { type: 'module' });
  const ask = (request: ImportRequest): void => worker.postMessage(request);
  try {
    ask({ file, arrivedAt: new Date().toISOString() });
    for (;;) {
      const reply = await new Promise<ImportReply>((resolve, reject) => {
        worker.addEventListener('message', ({ data }: MessageEvent<ImportReply>) => resolve(data), { once: true });
        worker.addEventListener('error', () => reject(new Error('the worker stopped')), { once: true });
        ask('next');
      });
      if (!reply) return;
      yield reply;
    }
  } catch {
    yield { name: file.name, share: 1, refusal: 'Reading this file was broken off; import it again, what is here already is skipped.' };
  } finally {
    worker.terminate();
  }
}
