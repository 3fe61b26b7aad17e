import type { StoredRun } from '../../../src/storage/storedRun.ts';

/** Line of a finished run, with some of it changed. */
export const storedRun = (change: Partial<StoredRun> = {}): StoredRun => ({
  version: 1,
  key: 'a',
  runId: 'a',
  scenarioId: 'quiet-room',
  title: 'A quiet room',
  startedAt: '2026-03-04T12:00:00.000Z',
  seconds: 90,
  finished: true,
  simulation: 1,
  breaks: { minor: 0, major: 0, critical: 0 },
  unremediedCriticals: 0,
  verdict: 'met',
  total: 97.5,
  contentHash: null,
  hashShape: '',
  exportedAt: null,
  deletedAt: null,
  inParts: false,
  fault: null,
  ...change,
});
