import type { Scenario } from '../../scenario/schema.ts';
import type { LoadingObservation, SheathObservation } from '../observation.ts';

/** What loading cannot go on without. */
export type LoadingThing = 'sheath' | 'gelPacket' | 'band' | 'probe';

/** What was last seen of the sheath. Plain JSON. */
export interface Seen extends Omit<SheathObservation, 'step'> {
  /** There while things are off the field and what is left of their kind is not enough. */
  readonly lost?: readonly LoadingThing[];
  /** There while all that is left of a kind is still in its packets. */
  readonly packed?: readonly PackedThing[];
}

/** What loading needs that may come in a packet. */
export type PackedThing = 'gelPacket' | 'band';

/** One goes behind the head, the other along the handle or the cord. */
const BANDS = 2;

export function see(seen: Omit<SheathObservation, 'step'>, { dropped, packed, used }: Pick<LoadingObservation, 'dropped' | 'packed' | 'used'>, scenario: Scenario): Seen {
  const lost = dropped.length === 0 ? [] : lostOf(seen, dropped, scenario);
  const free = ({ id }: Scenario['items'][number]): boolean => !packed.includes(id) && !used.includes(id) && !dropped.includes(id);
  const inPackets = (['gelPacket', 'band'] as const).filter((kind) => {
    const all = scenario.items.filter((item) => item.kind === kind);
    return !all.some(free) && all.some(({ id }) => packed.includes(id));
  });
  return { ...seen, ...(lost.length > 0 && { lost }), ...(inPackets.length > 0 && { packed: inPackets }) };
}

function lostOf(seen: Seen, dropped: readonly string[], { items }: Scenario): LoadingThing[] {
  const left = (kind: 'gelPacket' | 'band'): number => items.filter((item) => item.kind === kind && !dropped.includes(item.id)).length;
  const { probe } = seen;
  return [
    ...(seen.sheath === 'lying' && dropped.includes('sheathRoll') ? (['sheath'] as const) : []),
    // Once the probe is inside, no packet helps any more.
    ...(!probe.inside && left('gelPacket') === 0 ? (['gelPacket'] as const) : []),
    // One that sits on the probe does not fall.
    ...(left('band') < BANDS ? (['band'] as const) : []),
    ...(isOn(seen) && !probe.withAssistant && dropped.includes('probe') ? (['probe'] as const) : []),
  ];
}

/** What is seen before the first step: the sheath lies folded on the kit table, the probe hangs on its machine. */
export const unseen = ({ sheath }: Scenario): Seen => ({
  sheath: 'lying',
  gathered: sheath.form === 'telescoped' ? 1 : 0,
  gelMl: 0,
  gelComingMl: 0,
  otherGelMl: 0,
  probe: { withAssistant: false, stopped: null, overMouth: false, inside: false, heldThrough: null, lyingOnField: false },
  coveredM: 0,
  coverableM: 0,
  endHeld: false,
  faceSpoiled: 1,
  bands: { head: false, cord: false },
  torn: false,
  cordHeld: false,
});

export const isOn = ({ sheath }: Seen): boolean => sheath === 'on';

/** What is in the closed end and on its way there is enough, and only has to run down. */
export const isGelComing = ({ gelMl, gelComingMl }: Seen, { tasks }: Scenario): boolean => gelComingMl > 0 && gelMl + gelComingMl >= tasks.gelInsideMl;

/** The operator alone has the probe, through the film. */
export const isTaken = ({ probe }: Seen): boolean => probe.inside && probe.heldThrough !== null && !probe.withAssistant;

/** Nobody holds the sheathed probe, and it lies still on the field. */
export const isLaid = (seen: Seen): boolean => isOn(seen) && seen.probe.heldThrough === null && seen.probe.lyingOnField;

/** Nobody holds the sheathed probe, and it does not lie still on the field. */
export const isLoose = (seen: Seen): boolean => isOn(seen) && seen.probe.heldThrough === null && !seen.probe.withAssistant && !seen.probe.lyingOnField;

/** Another sheath lies in place of the one before: none comes off the probe to lie folded again, loses its gel by that, or is mended. */
export const isFresh = (seen: Seen, before: Seen): boolean => (seen.sheath === 'lying' && (isOn(before) || (before.gelMl > 0 && seen.gelMl === 0))) || (before.torn && !seen.torn);
