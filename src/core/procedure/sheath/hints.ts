import type { Scenario } from '../../scenario/schema.ts';
import type { SheathTaskId } from '../observation.ts';
import { FACE_CLEAR, GATHERED_ENOUGH } from './limits.ts';
import { isGelComing, isLaid, isOn, isTaken, type LoadingThing, type Seen } from './seen.ts';

const OPEN_MOUTH = 'Take the sheath, and open its mouth with the other hand.';
const GEL_IN = 'Sterile gel into the closed end: hold the packet over the mouth and squeeze.';
const TORN = 'The film is torn. Stop and take a new sheath.';
const TOO_LITTLE_GEL = 'Too little gel went in for a picture. Stop and take a new sheath.';

/** One line for the operator on what to do now, as a calm colleague would say it. */
export function sheathHint(current: SheathTaskId | 'finished', seen: Seen, scenario: Scenario): string {
  if (current === 'finished') return HINTS.finished(seen, scenario);
  if (seen.torn) return TORN;
  const lost = lostFor(current, seen);
  return lost === undefined ? HINTS[current](seen, scenario) : LOST[lost];
}

/** What is lost that the task cannot be done without, or undefined. */
export const lostFor = (task: SheathTaskId, seen: Seen): LoadingThing | undefined => NEEDED[task].find((thing) => seen.lost?.includes(thing));

/** What a task cannot be done without. */
const NEEDED: Readonly<Record<SheathTaskId, readonly LoadingThing[]>> = {
  gelInside: ['sheath', 'gelPacket'],
  probeTaken: ['sheath', 'probe'],
  covered: ['sheath', 'probe'],
  airOut: ['sheath', 'probe'],
  banded: ['sheath', 'probe', 'band'],
  laidDown: ['sheath', 'probe'],
};

const LOST: Readonly<Record<LoadingThing, string>> = {
  sheath: 'The sheath is off the field. Stop and take a new sheath.',
  gelPacket: 'The gel packet is off the field. Have it replaced.',
  band: 'The band is off the field. Have it replaced.',
  probe: 'The probe is off the field. Stop and have its sheath replaced.',
};

/** Share of the asked length from which on the assistant draws the rest: one pull from a probe held before the chest; farther up the hand comes to the face. */
export const TAIL_SHARE = 0.25;

const HINTS: Readonly<Record<SheathTaskId | 'finished', (seen: Seen, scenario: Scenario) => string>> = {
  gelInside: (seen, scenario) => {
    if (seen.probe.inside) return TOO_LITTLE_GEL;
    if (isGelComing(seen, scenario)) return 'Enough gel is in. Wait until it has run down into the closed end.';
    if (seen.packed?.includes('gelPacket')) return inPacket('gel', seen);
    return opening(seen) ?? (seen.gelMl > 0 ? 'A little more sterile gel into the closed end.' : GEL_IN);
  },
  probeTaken: (seen) => (isTaken(seen) && isOn(seen) ? 'You have it. Hold it like this for a moment.' : putting(seen)),
  covered: (seen, { tasks }) => {
    if (!isOn(seen)) return putting(seen);
    if (seen.coveredM >= TAIL_SHARE * tasks.coveredM) return 'Ask the assistant to pull the tail.';
    return seen.endHeld ? 'Draw the film along the cord.' : 'Take the open end of the film, and draw it along the cord.';
  },
  airOut: (seen) => {
    if (!isOn(seen)) return putting(seen);
    return seen.faceSpoiled <= FACE_CLEAR ? 'The face is clear. See that it stays so.' : 'Stroke the air away from the face.';
  },
  banded: (seen) => {
    if (!isOn(seen)) return putting(seen);
    if (seen.packed?.includes('band')) return inPacket('band', seen);
    if (seen.bands.head) return 'A second band along the handle or cord.';
    return seen.bands.cord ? 'One more band, behind the head.' : 'A band behind the head, a second along the handle or cord.';
  },
  laidDown: (seen) => {
    if (!isOn(seen)) return putting(seen);
    return isLaid(seen) ? 'Hands off the probe for a moment and see that it stays.' : 'Lay the probe on the field and see that it stays.';
  },
  finished: () => 'All done. You can end the run.',
};

/** Who holds the cord has no hand free for a packet. */
const inPacket = (what: string, { cordHeld }: Seen): string =>
  cordHeld ? `Have the assistant let go of the cord, and then open a packet: the ${what} is in it.` : `Ask the assistant to open a packet: the ${what} is in it.`;

/** What is still to be done until the mouth of the sheath is open, or null. */
function opening(seen: Seen): string | null {
  if (seen.sheath === 'lying') return OPEN_MOUTH;
  if (seen.sheath !== 'held') return null;
  return seen.gathered < GATHERED_ENOUGH ? 'Gather the sheath before you open it: squeeze.' : 'Open its mouth with the other hand.';
}

/** What is still to be done until the sheath is on the probe and the probe in the operator's hand. */
function putting(seen: Seen): string {
  const { probe } = seen;
  if (probe.stopped === 'lowering' && probe.heldThrough === null) return 'Have it lowered on: the assistant has stopped.';
  if (probe.inside && probe.heldThrough === null) return 'Take hold of it through the film.';
  if (probe.inside) return probe.withAssistant ? 'Have the assistant let go.' : 'Bring the face all the way into the closed end.';
  const closed = opening(seen);
  if (closed !== null) return closed;
  if (probe.stopped === 'bringing') return 'Ask for the probe again: the assistant has stopped.';
  if (probe.overMouth) return 'Have it lowered into the mouth. Keep hands and film clear of it.';
  return probe.withAssistant ? 'Hold the mouth open and keep still while the probe comes.' : 'Ask for the probe.';
}
