import type { Side } from '../../base/side.ts';
import type { ItemKind, Scenario } from '../../scenario/schema.ts';
import { CREEP_MPS, NEEDLE_AT_SITE_M } from './limits.ts';
import type { FieldObservation } from '../observation.ts';

/** What of one observation matters to the work, judged against the limits of the scenario. Plain JSON. */
export interface Seen {
  readonly gel: number;
  readonly anaesthetic: number;
  readonly probeHeldBy: Side | null;
  /** In a hand and on the skin of the site. */
  readonly probeAtSite: boolean;
  /** At the site, coupled to the film and slow enough for a picture. */
  readonly probeSteady: boolean;
  /** There while it is at the site with air under its face, and no picture can come. */
  readonly uncoupled?: true;
  readonly probeLies: boolean;
  /** Nobody holds it, and it slides or is off the field. */
  readonly probeSlides: boolean;
  readonly needleHeldBy: Side | null;
  /** In a hand with its tip at the site. */
  readonly needleAtSite: boolean;
  readonly rubbishLeft: readonly string[];
  /** All that is left of the rubbish has fallen to the floor. */
  readonly rubbishOutOfReach: boolean;
  readonly sharpsBinned: readonly string[];
  /** What cannot be used any more: the probe, or a kind of which every item is off the field or in the bin. */
  readonly lost: readonly ('probe' | ItemKind)[];
}

export function see(o: FieldObservation, scenario: Scenario): Seen {
  const probeAtSite = o.probe.heldBy !== null && o.probe.atSite;
  return {
    gel: o.gelOnSite,
    anaesthetic: o.anaesthetic,
    probeHeldBy: o.probe.heldBy,
    probeAtSite,
    probeSteady: probeAtSite && o.probe.coupled && o.probe.speed <= scenario.tasks.steadySpeedMps,
    ...(probeAtSite && !o.probe.coupled ? { uncoupled: true } : {}),
    probeLies: o.probe.heldBy === null && o.probe.lyingOnField,
    probeSlides: o.probe.heldBy === null && !o.probe.lyingOnField && (o.probe.speed > CREEP_MPS || o.dropped.includes('probe')),
    needleHeldBy: o.needle.heldBy,
    needleAtSite: o.needle.heldBy !== null && o.needle.tipToSite <= NEEDLE_AT_SITE_M,
    rubbishLeft: [...o.rubbishLeft],
    rubbishOutOfReach: o.rubbishLeft.every((id) => o.dropped.includes(id)),
    sharpsBinned: [...o.sharpsBinned],
    lost: lostOf(o, scenario),
  };
}

function lostOf({ dropped, binned }: FieldObservation, { items }: Scenario): ('probe' | ItemKind)[] {
  if (dropped.length + binned.length === 0) return [];
  const left = items.filter(({ id }) => !dropped.includes(id) && !binned.includes(id));
  const kinds = items.map(({ kind }) => kind).filter((kind, k, all) => all.indexOf(kind) === k && !left.some((item) => item.kind === kind));
  return dropped.includes('probe') ? ['probe', ...kinds] : kinds;
}

/** What is seen before the first step. */
export const unseen = (scenario: Scenario): Seen => ({
  gel: 0,
  anaesthetic: 0,
  probeHeldBy: null,
  probeAtSite: false,
  probeSteady: false,
  probeLies: false,
  probeSlides: false,
  needleHeldBy: null,
  needleAtSite: false,
  rubbishLeft: scenario.items.filter((item) => item.rubbish).map((item) => item.id),
  rubbishOutOfReach: false,
  sharpsBinned: [],
  lost: [],
});
