import { length } from '../../base/portableMath.ts';
import { secondsToSteps } from '../../base/time.ts';
import type { Scene } from '../scene.ts';
import { nearestAlong } from '../sheath/alongCord.ts';
import { tailOf } from './cordEnds.ts';
import { cordWay, crestOf } from './cordPlace.ts';
import { hangingAt, type Place } from './hangingCord.ts';
import { shareOf, type ReachPath } from './reachPath.ts';

/** A place of the cord that stays where it is, and how far from the probe it is along the cord (m). */
export interface Support extends Place {
  readonly s: number;
}

/** Cord that passes the edge of the bed this near lies on it (m). */
const ON_EDGE_M = 0.03;
/** A hand that is over the field or nearer beside it than this first goes out so far, so high above the edge of the bed (m). */
const OUTSIDE_M = 0.3;
const ABOVE_EDGE_M = 0.3;
/** Skill up to which a hand opens where it is, and from which on it opens only when the cord hangs; between, on the way down. */
const DROPS_UP_TO = 0.25;
const LOWERS_FROM = 0.75;
/** How long a careful hand then waits for the cord to hang still (s); common practice. */
const WAITS_S = 0.4;

/** Where the cord will hang at `s` metres from the probe, held at `from` and by its outlet, once the hands between let it go (m). */
export function hangsAt(scene: Scene, from: Support, s: number): Place {
  const { lengthM } = scene.scenario.cord;
  const { outletXM, outletYM } = scene.scenario.room.machine;
  const outlet = { x: outletXM, y: outletYM };
  const edge = edgeUnder(scene, from, outlet);
  if (!edge) return hangingAt(from, outlet, lengthM - from.s, s - from.s);
  return s >= edge.s ? hangingAt(edge, outlet, lengthM - edge.s, s - edge.s) : hangingAt(from, edge, edge.s - from.s, s - from.s);
}

/** The same once no hand but the operator's holds it (m). */
export const hangsFree = (scene: Scene, s: number): Place => hangsAt(scene, { ...tailOf(scene), s: 0 }, s);

/** Where a hand first goes that is over the field or close beside it, or null (m). */
export function outOfField(scene: Scene, { x, y }: Place): Place | null {
  const crest = crestOf(scene);
  const way = cordWay(scene);
  return way * (x - crest.x) >= OUTSIDE_M ? null : { x: crest.x + way * OUTSIDE_M, y: Math.max(y, crest.y + ABOVE_EDGE_M) };
}

/** The edge of the bed where the cord lies on it, or would come to; null where it hangs clear. */
function edgeUnder(scene: Scene, from: Support, outlet: Place): Support | null {
  const { world, cord, scenario } = scene;
  const { linkM, lengthM, radiusM } = scenario.cord;
  const crest = crestOf(scene);
  if (cordWay(scene) * (crest.x - from.x) <= 0) return null;
  const at = { x: crest.x, y: crest.y + radiusM };
  const lies = nearestAlong(world, cord, linkM, at.x, at.y);
  if (lies.gap < ON_EDGE_M && lies.s > from.s) return { ...at, s: lies.s };
  const left = lengthM - from.s;
  for (let s = 0; s < left; s += linkM) {
    const hangs = hangingAt(from, outlet, left, s);
    if (cordWay(scene) * (hangs.x - at.x) >= 0) return hangs.y > at.y ? null : { ...at, s: from.s + length(at.x - from.x, at.y - from.y) };
  }
  return null;
}

/** Share of the way down after which a hand of that skill (0 to 1) opens. */
export const loweredShare = (skill: number): number => Math.min(1, Math.max(0, (skill - DROPS_UP_TO) / (LOWERS_FROM - DROPS_UP_TO)));

/** Whether such a hand that lets the cord down opens now. */
export function opens(path: ReachPath, skill: number, step: number): boolean {
  const share = loweredShare(skill);
  return share < 1 ? shareOf(path, step) >= share : step >= path.startStep + path.steps + secondsToSteps(WAITS_S);
}
