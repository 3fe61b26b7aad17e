import type { RemedyStatus } from '../../core/run/contract.ts';
import { REMEDY_WORDS, WAITING_WORDS } from './words.ts';

interface RemedyProgressProps {
  readonly status: RemedyStatus;
  readonly onCancel: () => void;
}

/** The remedy under way: first it waits for the hands, then its time runs. */
export function RemedyProgress({ status, onCancel }: RemedyProgressProps) {
  const waiting = status.phase !== 'running';
  return (
    <div class="remedy-progress">
      <p class="remedy-name">
        <strong>{REMEDY_WORDS[status.remedy]}</strong>
        <button class="quiet" onClick={onCancel}>
          Cancel
        </button>
      </p>
      <progress max={1} value={waiting ? 0 : status.progress} aria-label={REMEDY_WORDS[status.remedy]} />
      <p role="status">{saying(status)}</p>
    </div>
  );
}

function saying({ phase, remedy, secondsLeft }: RemedyStatus): string {
  if (phase === 'waitingForHands') return WAITING_WORDS[remedy];
  if (phase === 'waitingForAssistant') return 'The assistant comes as soon as both hands are free.';
  return secondsLeft === null ? 'The assistant is at it.' : `${Math.ceil(secondsLeft)} s to go.`;
}
