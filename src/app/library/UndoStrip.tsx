import { useState } from 'preact/hooks';
import { UNDO_HOURS } from '../../storage/deleteRuns.ts';
import type { StoredRun } from '../../storage/storedRun.ts';
import { dateText } from '../parts/dateText.ts';
import { counted } from '../parts/sentence.ts';

interface UndoStripProps {
  readonly deleted: readonly StoredRun[];
  readonly onTakeBack: (keys: readonly string[]) => void;
  readonly onDeleteForGood: (keys: readonly string[]) => void;
}

/** Deleted runs, which can be taken back for a while, also after the page was closed. */
export function UndoStrip({ deleted, onTakeBack, onDeleteForGood }: UndoStripProps) {
  const [asked, setAsked] = useState(false);
  if (deleted.length === 0) return null;
  const latest = deleted.map(({ deletedAt }) => deletedAt!).sort().at(-1)!;
  const newest = deleted.filter(({ deletedAt }) => deletedAt === latest);
  const all = deleted.map(({ key }) => key);
  return (
    <section class="undo-strip" aria-label="Deleted runs">
      <span>
        {counted(deleted.length, 'run')} deleted. {deleted.length === 1 ? 'It' : 'They'} can be taken back for {UNDO_HOURS} hours{deleted.length === 1 && `, until ${untilText(latest)}`}.
      </span>
      <span class="undo-actions">
        <button class="main-button" onClick={() => onTakeBack(newest.map(({ key }) => key))}>
          Undo{newest.length < deleted.length && ' the last'}
        </button>
        {newest.length < deleted.length && <button onClick={() => onTakeBack(all)}>Take all back</button>}
        {asked ? (
          <button class="warn" onClick={() => onDeleteForGood(all)}>
            Yes, delete for good
          </button>
        ) : (
          <button onClick={() => setAsked(true)}>Delete for good</button>
        )}
      </span>
    </section>
  );
}

const untilText = (deletedAt: string): string => dateText(new Date(Date.parse(deletedAt) + UNDO_HOURS * 3_600_000).toISOString());
