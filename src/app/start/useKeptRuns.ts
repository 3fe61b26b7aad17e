import { useEffect, useState } from 'preact/hooks';
import type { KeptRuns, Services } from '../services.ts';

/** Runs in this browser, read when the page opens and on demand. */
export function useKeptRuns(services: Services): { readonly runs: KeptRuns; readonly refresh: () => void } {
  const [runs, setRuns] = useState<KeptRuns>({ brokenOff: [], finished: [] });
  const refresh = (): void => void services.keptRuns().then(setRuns);
  useEffect(refresh, [services]);
  return { runs, refresh };
}
