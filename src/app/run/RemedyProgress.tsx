import type { RemedyStatus } from '../../core/run/contract.ts';
import { REMEDY_WORDS, WAITING_WORDS } from './words.ts';

interface RemedyProgressProps {
  readonly status: RemedyStatus;
  readonly onCancel: () => void;
}

/** The remedy under way: first it waits for the hands, then its time runs. */
export function RemedyProgress({ status, onCancel }: RemedyProgressProps) {
  const waiting = status.phase === 'waitingForHands';
  return (
    <div class="remedy-progress">
      <p class="remedy-name">
        <strong>{REMEDY_WORDS[status.remedy]}</strong>
        <button class="quiet" onClick={onCancel}>
          Cancel
        </button>
      </p>
      <progress max={1} value={waiting ? 0 : status.progress} aria-label={REMEDY_WORDS[status.remedy]} />
      <p role="status">{waiting ? WAITING_WORDS[status.remedy] : `${Math.ceil(status.secondsLeft)} s to go.`}</p>
    </div>
  );
}
