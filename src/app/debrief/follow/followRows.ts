import type { Followed, FollowedTouch } from '../../../core/debrief/followTypes.ts';
import { roughWords } from '../roughWords.ts';

/** Touches of the same part with the same thing, one after the other, told as one. */
export interface FollowRow {
  readonly fromStep: number;
  readonly toStep: number;
  readonly part: string;
  readonly other: string;
  readonly count: number;
  readonly spoils: boolean;
  /** Its state was changed by the first of them. */
  readonly changed: boolean;
}

/** "left glove, palm" of the left glove is told as "palm", and the glove itself not at all. */
const partOnly = (part: string, whole: string): string => (part === whole ? '' : part.replace(`${whole}, `, ''));

/** Everything that something touched, in order of time. */
export function followRows({ touches, words }: Followed): readonly FollowRow[] {
  const rows: { fromStep: number; toStep: number; part: string; other: string; count: number; spoils: boolean; changed: boolean }[] = [];
  for (const touch of touches) {
    const last = rows.at(-1);
    const [part, other, changed] = [partOnly(roughWords(touch.surfaceWords), words), roughWords(touch.otherWords), isChanged(touch)];
    if (last && last.part === part && last.other === other && last.spoils === touch.spoils && !changed) {
      last.count++;
      last.toStep = Math.max(last.toStep, touch.toStep);
    } else rows.push({ fromStep: touch.fromStep, toStep: touch.toStep, part, other, count: 1, spoils: touch.spoils, changed });
  }
  return rows;
}

const isChanged = ({ before, after }: FollowedTouch): boolean => before !== after && after === 'became';

/** Place of the last row that had begun by a step, or −1. */
export function rowAt(rows: readonly FollowRow[], step: number): number {
  let low = 0;
  let high = rows.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (rows[middle]!.fromStep <= step) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}
