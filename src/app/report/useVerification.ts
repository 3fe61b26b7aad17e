import { useEffect, useRef, useState } from 'preact/hooks';
import type { RunFile } from '../../core/recording/recording.ts';
import type { Verification } from '../../core/recording/verifyRun.ts';
import type { Replaying, Services } from '../services.ts';
import { verificationWords } from './verificationWords.ts';

/** Whether a recording was checked, and what came of it. */
export interface VerificationState {
  /** Share that is checked, or null when nothing is being checked. */
  readonly share: number | null;
  /** What it came to, once that is known. */
  readonly verification: Verification | null;
  readonly answer: { readonly good: boolean; readonly words: string } | null;
  begin(): void;
}

/** Checks a recording beside the page when it is asked to. */
export function useVerification(file: RunFile, verify: Services['verify']): VerificationState {
  const work = useRef<Replaying<Verification> | null>(null);
  const [share, setShare] = useState<number | null>(null);
  const [verification, setVerification] = useState<Verification | null>(null);
  const [answer, setAnswer] = useState<VerificationState['answer']>(null);
  useEffect(() => () => work.current?.stop(), []);
  const begin = (): void => {
    setShare(0);
    work.current = verify(file, setShare);
    work.current.outcome.then(
      (outcome) => {
        setVerification(outcome);
        setAnswer(verificationWords(outcome));
      },
      () => setAnswer({ good: false, words: 'Checking was broken off. Try again.' }),
    ).finally(() => setShare(null));
  };
  return { share, verification, answer, begin };
}
