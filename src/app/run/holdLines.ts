import { SIDES, type Side } from '../../core/base/side.ts';
import { holdTask } from '../../core/procedure/holdWords.ts';
import { HAND } from '../../core/room/handShape.ts';
import { placeHolds, type PlacedHold } from '../../core/room/placedHold.ts';
import type { RoomPicture } from '../../core/room/picture.ts';
import type { LiveRun } from './LiveRun.ts';
import { shownHolds } from './shownHolds.ts';

/** Nearer than this the hand is there (m). */
const THERE_M = 0.02;
/** Far ways are told in steps of this many centimetres, from so many on. */
const COARSE_CM = 5;
const FAR_CM = 20;

/** The marked holds in words, with the way to them on the screen: "right hand: grip the inner neck of the folded gown, 25 cm left, 35 cm down". */
export function holdLines(live: Pick<LiveRun, 'run' | 'coaching' | 'current'>): string[] {
  return placeHolds(live.current, shownHolds(live)).map((placed) => {
    const { hand } = placed.hold;
    const nearer = hand ?? [...SIDES].sort((a, b) => farFrom(live.current, placed, a) - farFrom(live.current, placed, b))[0]!;
    return `${hand ?? 'either'} hand: ${holdTask(placed.hold)}${wayWords(...wayTo(live.current, placed, nearer))}`;
  });
}

/** From the fingertips, or from the palm for a place in the air, to the hold (m). */
function wayTo({ hands }: RoomPicture, { hold: { act }, at }: PlacedHold, side: Side): readonly [number, number] {
  const { x, y, c, s } = hands[side];
  const along = act === 'push' || act === 'stay' ? 0 : HAND.gripU;
  return [at[0] - x - c * along, at[1] - y - s * along];
}

const farFrom = (picture: RoomPicture, placed: PlacedHold, side: Side): number => Math.hypot(...wayTo(picture, placed, side));

function wayWords(dx: number, dy: number): string {
  if (Math.hypot(dx, dy) < THERE_M) return ': you are there';
  const parts = [...part(dx, 'right', 'left'), ...part(dy, 'up', 'down')];
  return parts.map((words) => `, ${words}`).join('');
}

function part(metres: number, forward: string, back: string): string[] {
  const cm = Math.abs(metres) * 100;
  const told = cm < FAR_CM ? Math.round(cm) : Math.round(cm / COARSE_CM) * COARSE_CM;
  return told === 0 ? [] : [`${told} cm ${metres > 0 ? forward : back}`];
}
