import { useEffect, useState } from 'preact/hooks';
import type { KeptRun, Services } from '../services.ts';

interface KeptRuns {
  readonly brokenOff: readonly KeptRun[];
  readonly finished: readonly KeptRun[];
}

/** Runs in this browser, read when the page opens and on demand. */
export function useKeptRuns(services: Services): { readonly runs: KeptRuns; readonly refresh: () => void } {
  const [runs, setRuns] = useState<KeptRuns>({ brokenOff: [], finished: [] });
  const refresh = (): void => void services.keptRuns().then(setRuns);
  useEffect(refresh, [services]);
  return { runs, refresh };
}
