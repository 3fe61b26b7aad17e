import type { ItemKind, Scenario } from '../../scenario/schema.ts';
import type { FieldTaskId } from '../observation.ts';
import type { Seen } from './seen.ts';

const ITEM_WORDS: Readonly<Record<ItemKind, string>> = { gelPacket: 'gel packet', syringe: 'syringe', needleSyringe: 'needle syringe', gauze: 'gauze', band: 'band', gelBottle: 'gel bottle' };

/** What a hint is made from: the scene, and whether the parked probe slid off. */
export interface HintView {
  readonly seen: Seen;
  readonly probeSlid: boolean;
  readonly scenario: Scenario;
}

/** One line for the operator on what to do now, as a calm colleague would say it. */
export function hintFor(current: FieldTaskId | 'finished', view: HintView): string {
  const lost = current === 'finished' ? undefined : lostFor(current, view.seen);
  if (lost === undefined) return HINTS[current](view);
  return lost === 'probe' ? 'The probe is off the field. Stop and have its sheath replaced.' : `The ${ITEM_WORDS[lost]} is off the field. Have it replaced.`;
}

/** What is lost that the task cannot be done without, or undefined. */
export const lostFor = (task: FieldTaskId, seen: Seen): 'probe' | ItemKind | undefined => NEEDED[task].find((thing) => seen.lost.includes(thing));

/** No clip ties the cord to the drape: what hangs over the rail would draw a probe off that nobody holds (common practice: it is held meanwhile). */
export const isCordLoose = ({ cord }: Scenario): boolean => cord.clipN === 0;

/** What a task cannot be done without. */
const NEEDED: Readonly<Record<FieldTaskId, readonly ('probe' | ItemKind)[]>> = {
  gel: ['gelPacket'],
  view: ['probe'],
  park: ['probe'],
  anaesthetic: ['syringe'],
  ready: ['probe', 'needleSyringe'],
  rubbish: [],
};

const HINTS: Readonly<Record<FieldTaskId | 'finished', (view: HintView) => string>> = {
  gel: ({ seen }) => (seen.gel > 0 ? 'A little more gel on the site.' : 'Take the gel packet and put gel on the site.'),
  view: ({ seen }) => {
    if (seen.uncoupled) return 'No picture: there is air under the face of the probe. Stroke it away.';
    if (seen.probeSteady) return 'Good picture. Hold it just there.';
    return seen.probeAtSite ? 'You are there. Now keep the probe still.' : 'Set the probe on the gel and hold the picture still.';
  },
  park: ({ seen, probeSlid, scenario }) => {
    if (seen.probeLies) return 'Hands off the probe for a moment and see that it stays.';
    if (isCordLoose(scenario)) return `${probeSlid ? 'The probe slid off. ' : ''}Have the cord held, and lay the probe where it will stay.`;
    return probeSlid ? 'The probe slid off. Lay it where it stays, with slack in the cord.' : 'Lay the probe on the field where it will stay.';
  },
  anaesthetic: ({ seen }) => (seen.anaesthetic > 0 ? 'Go on with the anaesthetic until the syringe is empty.' : 'Give the local anaesthetic at the site.'),
  ready: ({ seen }) => {
    if (seen.probeAtSite && seen.needleAtSite) return 'Both are there. Stay just like this.';
    if (seen.probeHeldBy === null && seen.needleHeldBy === null) return 'Probe in one hand, needle syringe in the other: bring both to the site.';
    if (seen.probeHeldBy === null) return 'Take the probe in your other hand.';
    if (seen.needleHeldBy === null) return 'Take the needle syringe in your other hand.';
    return seen.probeAtSite ? 'Bring the tip of the needle to the site.' : 'Set the probe on the site again.';
  },
  rubbish: ({ seen, scenario }) =>
    seen.rubbishOutOfReach ? 'What fell on the floor stays there. You can end the run.' : `Drop the ${rubbishWords(seen.rubbishLeft, scenario)} into the bin. Needles do not go in there.`,
  finished: ({ seen }) =>
    seen.sharpsBinned.length > 0 ? 'All done. One thing for next time: needles belong in the sharps container.' : 'All done. You can end the run.',
};

function rubbishWords(ids: readonly string[], { items }: Scenario): string {
  const words = ids.map((id) => ITEM_WORDS[items.find((item) => item.id === id)?.kind ?? 'gauze']);
  const once = words.filter((word, k) => words.indexOf(word) === k);
  return once.length < 2 ? once.join('') : `${once.slice(0, -1).join(', ')} and ${once[once.length - 1]}`;
}
