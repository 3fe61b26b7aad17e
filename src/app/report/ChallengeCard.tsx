import type { RunResult } from '../../core/run/result.ts';
import { clockText } from '../parts/clockText.ts';
import { afterwardsWords, answerWords } from './challengeWords.ts';
import { secondsAt } from './reportFacts.ts';

/** What the assistant spoke up about and how that was answered; nothing where nobody spoke. */
export function ChallengeCard({ result }: { readonly result: RunResult }) {
  if (result.challenges.length === 0) return null;
  return (
    <section class="noticing" aria-labelledby="challenges-head">
      <h2 id="challenges-head">The assistant spoke up</h2>
      {result.challenges.map((challenge) => (
        <div key={challenge.step}>
          {challenge.said.map(({ step, words }) => (
            <p key={step}>
              {clockText(secondsAt(step))} {words}
            </p>
          ))}
          <p>
            Break {challenge.break}. {answerWords(challenge)} {afterwardsWords(challenge, result)}
          </p>
        </div>
      ))}
    </section>
  );
}
