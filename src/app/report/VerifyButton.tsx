import type { VerificationState } from './useVerification.ts';

/** Plays the recording again beside the page and says whether the report follows from it. */
export const VerifyButton = ({ share, answer, begin }: Pick<VerificationState, 'share' | 'answer' | 'begin'>) => (
  <section class="verify" aria-label="Verification">
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
