import { strToU8, Zip, ZipDeflate, ZipPassThrough } from 'fflate';
import type { RunSummary } from '../runSummary.ts';
import { MANIFEST, manifestText, sha256, type ListedFile } from './manifest.ts';
import { runsTable } from './runsTable.ts';

export const RUNS_TABLE = 'runs.csv';

/** Name of a run in an archive: day and time, scenario, key. */
export function memberName({ startedAt, scenarioId, key }: Pick<RunSummary, 'startedAt' | 'scenarioId' | 'key'>): string {
  const moment = startedAt.slice(0, 16).replace(/[^0-9T]/g, '').replace('T', '-');
  return `runs/${[moment, scenarioId, key].map((part) => part.replace(/[^A-Za-z0-9.-]/g, '')).join('-')}.json.gz`;
}

/** Grows an archive run by run, so that a page stays responsive between them; `finish` adds table and manifest and gives the whole. */
export class ArchiveWriter {
  private readonly chunks: Uint8Array<ArrayBuffer>[] = [];
  private readonly listed: ListedFile[] = [];
  private readonly runs: { summary: RunSummary; name: string }[] = [];
  private readonly zip = new Zip((error, chunk) => {
    if (error) throw error;
    this.chunks.push(chunk);
  });
  private readonly madeAt: string;

  /** `madeAt` in ISO 8601. */
  constructor(madeAt: string) {
    this.madeAt = madeAt;
  }

  async addRun(summary: RunSummary, zipped: Uint8Array<ArrayBuffer>): Promise<void> {
    const name = memberName(summary);
    this.runs.push({ summary, name });
    await this.add(name, zipped);
  }

  async finish(): Promise<Blob> {
    await this.add(RUNS_TABLE, encoded(runsTable(this.runs)));
    await this.add(MANIFEST, encoded(manifestText(this.madeAt, this.listed)));
    this.zip.end();
    return new Blob(this.chunks, { type: 'application/zip' });
  }

  private async add(name: string, bytes: Uint8Array<ArrayBuffer>): Promise<void> {
    this.listed.push({ name, bytes: bytes.length, sha256: await sha256(bytes) });
    const member = name.endsWith('.gz') ? new ZipPassThrough(name) : new ZipDeflate(name);
    member.mtime = this.madeAt;
    this.zip.add(member);
    member.push(bytes, true);
  }
}

const encoded = (text: string): Uint8Array<ArrayBuffer> => new Uint8Array(strToU8(text));
