import { useState } from 'preact/hooks';
import type { Result } from '../../core/base/result.ts';

export interface Work {
  readonly busy: boolean;
  /** What went wrong last, in a sentence. */
  readonly trouble: string | null;
  /** Does one thing at a time; passes on its value, or keeps its error to be shown. */
  run<Value>(task: () => Promise<Result<Value, string> | void>, onDone?: (value: Value) => void): Promise<void>;
}

/** Work that takes a moment and may fail: starting a run, reading a file. */
export function useWork(): Work {
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  return {
    busy,
    trouble,
    async run(task, onDone) {
      setBusy(true);
      setTrouble(null);
      try {
        const result = await task();
        if (result?.ok) onDone?.(result.value);
        else if (result) setTrouble(result.error);
      } catch (error) {
        setTrouble(`That did not work: ${error instanceof Error ? error.message : String(error)}`);
      }
      setBusy(false);
    },
  };
}
