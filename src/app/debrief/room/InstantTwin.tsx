import { SIDES, type Side } from '../../../core/base/side.ts';
import type { RoomPicture, SurfaceMark } from '../../../core/room/picture.ts';
import { capital, listed } from '../../parts/sentence.ts';
import { THING_WORDS } from '../../run/words.ts';

const PART_WORDS = { fingers: 'fingers', palm: 'palm', back: 'back of the hand', cuff: 'cuff' } as const;
type Part = keyof typeof PART_WORDS;

/** What can be seen of the hands at the instant shown, in words, for those who cannot see the room. */
export const InstantTwin = ({ picture }: { readonly picture: RoomPicture }) => (
  <ul class="unseen" aria-label="Hands at the instant shown">
    {SIDES.map((side) => (
      <li key={side}>{capital(handWords(picture, side))}.</li>
    ))}
  </ul>
);

/** "left hand: holds the probe; fingers and palm became unsterile". */
export function handWords(picture: RoomPicture, side: Side): string {
  const { holds, surfaces } = picture.hands[side];
  const spoiled = (Object.keys(PART_WORDS) as Part[]).filter((part) => markOf(picture, surfaces[part]) === 'became');
  const state = spoiled.length === 0 ? 'sterile' : `${listed(spoiled.map((part) => PART_WORDS[part]))} became unsterile`;
  return `${side} hand: ${holds === null ? 'empty' : `holds the ${thingWords(picture, holds)}`}; ${state}`;
}

const markOf = ({ marks }: RoomPicture, surface: string): SurfaceMark => marks.get(surface) ?? 'sterile';

/** What can be held that is no thing by itself. */
const PARTS: Readonly<Record<string, string>> = { cord: 'cord', pocket: 'mouth of the sheath', film: 'open end of the sheath' };

function thingWords({ items }: RoomPicture, id: string): string {
  const kind = items.find((item) => item.id === id)?.kind;
  return kind === undefined ? (PARTS[id] ?? 'drape') : THING_WORDS[kind];
}
