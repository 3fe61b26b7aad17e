import type { RunResult } from '../../../core/run/result.ts';
import { clockText } from '../../parts/clockText.ts';
import { afterwardsWords, answerWords } from '../challengeWords.ts';
import { secondsAt } from '../reportFacts.ts';
import { PrintTable } from './PrintTable.tsx';

/** What the assistant spoke up about, and how that was answered, in a row each; nothing where nobody spoke. */
export const PrintChallenges = ({ result }: { readonly result: RunResult }) =>
  result.challenges.length === 0 ? null : (
    <PrintTable
      title="The assistant spoke up"
      name="print-challenges"
      columns={['Time', 'Break', 'What was said', 'Answer']}
      rows={result.challenges}
      most={6}
      keyOf={({ step }) => step}
      cells={(challenge) => [
        clockText(secondsAt(challenge.step)),
        challenge.break,
        challenge.said.map(({ words }) => words).join(' '),
        `${answerWords(challenge)} ${afterwardsWords(challenge, result)}`,
      ]}
    />
  );
