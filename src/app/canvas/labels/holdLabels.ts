import { holdName } from '../../../core/procedure/holdWords.ts';
import type { PlacedHold } from '../../../core/room/placedHold.ts';
import { HOLD_CLEAR_PX } from '../holds/paintHolds.ts';
import type { LabelPlace, Offset } from './places.ts';

const AROUND: readonly Offset[] = [
  [0, -30, 'centre'], [0, -54, 'centre'], [34, -14, 'left'], [-34, -14, 'right'], [34, 24, 'left'], [-34, 24, 'right'], [0, 32, 'centre'], [0, -80, 'centre'],
  [60, -60, 'left'], [-60, -60, 'right'], [90, 0, 'left'], [-90, 0, 'right'], [0, -110, 'centre'], [0, 90, 'centre'],
];

/** Names of the places where hands go next. */
export const holdLabels = (holds: readonly PlacedHold[]): LabelPlace[] =>
  holds
    .map(({ hold, at }): LabelPlace => ({ words: holdName(hold), x: at[0], y: at[1], offsets: AROUND, clearPx: HOLD_CLEAR_PX }))
    .filter(({ words }, k, all) => all.findIndex((other) => other.words === words) === k);
