import type { RunFile } from '../../core/recording/recording.ts';
import { writeRunFile } from '../../core/recording/writeRunFile.ts';
import { zipText } from '../../storage/gzip.ts';
import { saveBlob } from './saveBlob.ts';

/** Name of a run's file: scenario, day, time and the beginning of its id; no names of persons. */
export function runFileName({ header }: Pick<RunFile, 'header'>): string {
  const moment = header.startedAt.slice(0, 16).replace(/[^0-9T]/g, '').replace('T', '-');
  return `run-${header.scenario.id}-${moment}-${header.runId.slice(0, 6)}.json.gz`;
}

/** Hands the zipped recording to the browser to be saved. */
export async function saveFile(file: RunFile): Promise<void> {
  saveBlob(new Blob([await zipText(writeRunFile(file))]), runFileName(file));
}
