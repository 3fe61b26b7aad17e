import { settleBubbles, squeeze } from './air.ts';
import { staysOn, tensionN } from './bands.ts';
import { bubbleHalfM } from './bubble.ts';
import { arcFromAlong } from './fromFace.ts';
import type { HeadShape } from './headShape.ts';
import type { Band, Bubble, SheathInside } from './inside.ts';

/** A band put round the film; null if it rolls off over the face or would break. A tight one parts the air under it. */
export function putBand(inside: SheathInside, head: HeadShape, band: Band): SheathInside | null {
  if (!staysOn(band, head)) return null;
  const seal = arcFromAlong(head, band.alongM);
  const tight = tensionN(band, head) > 0;
  const bubbles = tight ? inside.bubbles.flatMap((bubble) => parted(bubble, -seal, inside, head)).flatMap((bubble) => parted(bubble, seal, inside, head)) : inside.bubbles;
  return settleBubbles({ ...inside, bubbles, bands: [...inside.bands, band] }, head);
}

/** The band with that index rolled to another place with as many turns, driving the air before it if tight; null as for `putBand`. */
export function rollBand(inside: SheathInside, head: HeadShape, index: number, alongM: number): SheathInside | null {
  const band = inside.bands[index]!;
  const rest = takeBandOff(inside, index);
  const tight = tensionN(band, head) > 0 && tensionN({ ...band, alongM }, head) > 0;
  return putBand(tight ? squeeze(rest, head, band.alongM, alongM, Infinity) : rest, head, { ...band, alongM });
}

/** The sheath without the band of that index. */
export const takeBandOff = (inside: SheathInside, index: number): SheathInside => ({ ...inside, bands: inside.bands.filter((_, k) => k !== index) });

/** A bubble that a seal comes down on, as what is on either side of it. */
function parted(bubble: Bubble, seal: number, inside: SheathInside, head: HeadShape): Bubble[] {
  const half = bubbleHalfM(bubble, inside, head);
  const below = (seal - bubble.sM + half) / (2 * half);
  if (!(below > 0 && below < 1)) return [bubble];
  return ([[-1, below], [1, 1 - below]] as const).map(([side, share]) => {
    const part = { sM: seal, ml: bubble.ml * share };
    return { ...part, sM: seal + side * bubbleHalfM(part, inside, head) };
  });
}
