import { useEffect, useState } from 'preact/hooks';
import type { RunFile } from '../../core/recording/recording.ts';
import type { RunResult } from '../../core/run/result.ts';
import type { Services } from '../services.ts';

/** The written result, or for a run that was broken off what comes of playing it again; `share` is null when that is not possible. */
export function useResult(services: Services, file: RunFile): { readonly result: RunResult | null; readonly share: number | null } {
  const [result, setResult] = useState(file.result);
  const [share, setShare] = useState<number | null>(services.isSameSimulation(file) ? 0 : null);
  useEffect(() => {
    setResult(file.result);
    if (file.result !== null || !services.isSameSimulation(file)) return;
    const work = services.replayResult(file, setShare);
    work.outcome.then(setResult, () => setShare(null));
    return () => work.stop();
  }, [file]);
  return { result, share };
}
