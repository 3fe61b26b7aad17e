import type { RunResult } from '../../../core/run/result.ts';
import { clockText } from '../../parts/clockText.ts';
import { afterwardsWords, answerWords } from '../challengeWords.ts';
import { secondsAt } from '../reportFacts.ts';

/** Times the assistant spoke up that two pages have room for. */
const PRINTED = 6;

/** What the assistant spoke up about, and how that was answered, in a row each; nothing where nobody spoke. */
export function PrintChallenges({ result }: { readonly result: RunResult }) {
  const { challenges } = result;
  if (challenges.length === 0) return null;
  return (
    <section>
      <h2>The assistant spoke up ({challenges.length})</h2>
      <table class="print-table print-challenges">
        <thead>
          <tr>
            {['Time', 'Break', 'What was said', 'Answer'].map((name) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {challenges.slice(0, PRINTED).map((challenge) => (
            <tr key={challenge.step}>
              <td>{clockText(secondsAt(challenge.step))}</td>
              <td>{challenge.break}</td>
              <td>{challenge.said.map(({ words }) => words).join(' ')}</td>
              <td>
                {answerWords(challenge)} {afterwardsWords(challenge, result)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {challenges.length > PRINTED && <p>And {challenges.length - PRINTED} more, which the report on screen and the run file have.</p>}
    </section>
  );
}
