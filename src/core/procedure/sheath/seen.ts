import type { Scenario } from '../../scenario/schema.ts';
import type { SheathObservation } from '../observation.ts';

/** What was last seen of the sheath. Plain JSON. */
export type Seen = Omit<SheathObservation, 'step'>;

/** What is seen before the first step: the sheath lies folded on the kit table, the probe hangs on its machine. */
export const unseen = ({ sheath }: Scenario): Seen => ({
  sheath: 'lying',
  gathered: sheath.form === 'telescoped' ? 1 : 0,
  gelMl: 0,
  otherGelMl: 0,
  probe: { withAssistant: false, overMouth: false, inside: false, heldThrough: null, lyingOnField: false },
  coveredM: 0,
  coverableM: 0,
  endHeld: false,
  faceSpoiled: 1,
  bands: { head: false, cord: false },
  torn: false,
});

export const isOn = ({ sheath }: Seen): boolean => sheath === 'on';

/** The operator alone has the probe, through the film. */
export const isTaken = ({ probe }: Seen): boolean => probe.inside && probe.heldThrough !== null && !probe.withAssistant;

/** Nobody holds the sheathed probe, and it lies still on the field. */
export const isLaid = (seen: Seen): boolean => isOn(seen) && seen.probe.heldThrough === null && seen.probe.lyingOnField;

/** Nobody holds the sheathed probe, and it does not lie still on the field. */
export const isLoose = (seen: Seen): boolean => isOn(seen) && seen.probe.heldThrough === null && !seen.probe.withAssistant && !seen.probe.lyingOnField;

/** Another sheath lies in place of the one before: none comes off the probe to lie folded again, loses its gel by that, or is mended. */
export const isFresh = (seen: Seen, before: Seen): boolean => (seen.sheath === 'lying' && (isOn(before) || (before.gelMl > 0 && seen.gelMl === 0))) || (before.torn && !seen.torn);
