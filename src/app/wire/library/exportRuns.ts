import { ArchiveWriter } from '../../../storage/archive/writeArchive.ts';
import type { RunStore } from '../../../storage/RunStore.ts';
import type { StoredRun } from '../../../storage/storedRun.ts';
import type { ExportOutcome, Refusal } from '../../library/libraryService.ts';
import type { OnShare } from '../../services.ts';
import { saveBlob } from '../saveBlob.ts';

/** Writes runs into one archive, one after the other, and hands it to the browser to be saved. */
export async function exportRuns(store: RunStore, runs: readonly StoredRun[], onShare: OnShare): Promise<ExportOutcome> {
  const madeAt = new Date().toISOString();
  const archive = new ArchiveWriter(madeAt);
  const failed: Refusal[] = [];
  const saved: string[] = [];
  for (const [k, run] of runs.entries()) {
    const zipped = await store.zipped(run.key);
    if (zipped.ok) {
      await archive.addRun(run, zipped.value);
      saved.push(run.key);
    } else failed.push({ name: run.title || run.key, words: zipped.error });
    onShare((k + 1) / runs.length);
  }
  if (saved.length > 0) {
    saveBlob(await archive.finish(), `runs-${madeAt.slice(0, 10)}-${saved.length}.zip`);
    await store.setExported(saved, madeAt);
  }
  return { saved: saved.length, failed };
}
