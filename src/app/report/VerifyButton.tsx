import { useEffect, useRef, useState } from 'preact/hooks';
import type { RunFile } from '../../core/recording/recording.ts';
import type { Verification } from '../../core/recording/verifyRun.ts';
import type { Replaying, Services } from '../services.ts';
import { verificationWords } from './verificationWords.ts';

interface VerifyButtonProps {
  readonly file: RunFile;
  readonly verify: Services['verify'];
}

/** Plays the recording again beside the page and says whether the report follows from it. */
export function VerifyButton({ file, verify }: VerifyButtonProps) {
  const work = useRef<Replaying<Verification> | null>(null);
  const [share, setShare] = useState<number | null>(null);
  const [answer, setAnswer] = useState<{ readonly good: boolean; readonly words: string } | null>(null);
  useEffect(() => () => work.current?.stop(), []);
  const begin = (): void => {
    setShare(0);
    work.current = verify(file, setShare);
    work.current.outcome.then(
      (verification) => setAnswer(verificationWords(verification)),
      () => setAnswer({ good: false, words: 'Checking was broken off. Try again.' }),
    ).finally(() => setShare(null));
  };
  return (
    <section class="verify" aria-label="Recording">
      {share === null ? (
        <button onClick={begin}>Verify the recording</button>
      ) : (
        <label class="verify-progress">
          Playing it again <progress max={1} value={share} />
        </label>
      )}
      <p class={answer && !answer.good ? 'broken-words' : undefined} role="status">
        {answer?.words}
      </p>
    </section>
  );
}
