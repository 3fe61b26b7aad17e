import type { Break } from '../../../core/ledger/break.ts';
import { capital } from '../../parts/sentence.ts';
import { noticedWords, remediedWords } from '../../report/reportFacts.ts';

interface AnswerLinesProps {
  readonly broken: Break;
  readonly onGo: (step: number) => void;
}

/** Where the operator noticed the break and what was done about it; leads to those instants. */
export const AnswerLines = ({ broken, onGo }: AnswerLinesProps) => (
  <ul class="answer-lines" aria-label="What you did about it">
    <AnswerLine words={noticedWords(broken)} step={broken.noticedStep} onGo={onGo} />
    <AnswerLine words={remediedWords(broken)} step={broken.remediedStep} onGo={onGo} />
  </ul>
);

function AnswerLine({ words, step, onGo }: { readonly words: string; readonly step: number | null; readonly onGo: (step: number) => void }) {
  if (step === null) return <li class="broken-words">{capital(words)}</li>;
  return (
    <li>
      <button class="link-button" onClick={() => onGo(step)}>
        {capital(words)}
      </button>
    </li>
  );
}
