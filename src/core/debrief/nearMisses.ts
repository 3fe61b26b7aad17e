import type { Side } from '../base/side.ts';
import { STEPS_PER_SECOND } from '../base/time.ts';
import { objectOf } from '../ledger/ledgerState.ts';
import type { Surface } from '../ledger/surface.ts';
import type { ClearanceThing } from '../room/clearanceThings.ts';
import { indexOf, surfaceOf } from './logIndex.ts';
import type { RunLog } from './runLog.ts';
import { sideOf } from './surfaceWords.ts';
import type { NearMiss } from './timelineTypes.ts';
import { SAMPLE_STEPS } from './traceChunk.ts';
import type { ClearanceSeries } from './traceTypes.ts';

/** Nearer than this without a touch is a near miss, in metres (own choice). */
const NEAR_M = 0.03;
/** Approaches to the same thing within this time are one. */
const ONE_APPROACH_STEPS = 2 * STEPS_PER_SECOND;
/** At most this gap is a touch, in metres: clearances are kept in tenths of a millimetre. */
const TOUCH_M = 0.0005;

/**
 * Approaches of a hand or forearm, with what it holds, to something unsterile, nearer than 3 cm and without touching it; each at its
 * nearest moment. Once everything of a glove is unsterile there is nothing left to miss.
 */
export function nearMisses(log: RunLog, clearances: readonly ClearanceSeries[]): NearMiss[] {
  return clearances
    .flatMap((series) => approaches(series).filter((approach) => isMiss(log, series, approach)).map((approach) => told(series, approach)))
    .sort((p, q) => p.step - q.step);
}

/** Places in a series, of its first, last and nearest reading. */
interface Approach {
  readonly first: number;
  readonly last: number;
  readonly nearest: number;
}

function approaches({ steps, metres }: ClearanceSeries): Approach[] {
  const found: Approach[] = [];
  for (let k = 0; k < steps.length; k++) {
    if (metres[k]! >= NEAR_M) continue;
    const before = found[found.length - 1];
    if (before && steps[k]! - steps[before.last]! < ONE_APPROACH_STEPS) {
      found[found.length - 1] = { first: before.first, last: k, nearest: metres[k]! < metres[before.nearest]! ? k : before.nearest };
    } else found.push({ first: k, last: k, nearest: k });
  }
  return found;
}

/** Touches between two readings are in the log alone. */
function isMiss(log: RunLog, { side, thing, steps, metres }: ClearanceSeries, { first, last, nearest }: Approach): boolean {
  if (metres[nearest]! <= TOUCH_M || !isSterile(log, side, steps[nearest]!)) return false;
  const [from, to] = [steps[first]! - SAMPLE_STEPS, steps[last]! + SAMPLE_STEPS];
  return !indexOf(log).touches.some((touch) => touch.side === side && touch.fromStep <= to && touch.toStep >= from && [touch.a, touch.b].some((id) => isOf(surfaceOf(log, id), thing)));
}

function isSterile(log: RunLog, side: Side, step: number): boolean {
  const { surfaces, history, retired } = indexOf(log);
  return [...surfaces.values()].some((surface) => surface.kind === 'glove' && sideOf(surface) === side && (retired.get(surface.id) ?? Infinity) > step && history.markAt(surface.id, step) === 'sterile');
}

function isOf({ kind, thing }: Surface, named: ClearanceThing): boolean {
  if (named === 'edge.left' || named === 'edge.right') return kind === 'drapeTop' && objectOf(thing) === `drape${named.slice('edge'.length)}`;
  if (named === 'bareCord') return kind === 'bareCord' || kind === 'sheathTail';
  return named === 'patientSkin' ? kind === 'patientSkin' : objectOf(thing) === named;
}

/** What the things are called to which clearances are measured. */
export const THING_WORDS: Readonly<Record<ClearanceThing, string>> = {
  'rail.left': 'left bed rail', 'rail.right': 'right bed rail', 'edge.left': 'left edge of the drape', 'edge.right': 'right edge of the drape', bed: 'bed',
  pole: 'pole', machine: 'ultrasound machine', tableEdge: 'side of the kit table', bin: 'bin', floor: 'floor', bareCord: 'bare cord', patientSkin: 'skin of the patient', face: 'face',
};

const told = ({ side, thing, steps, metres }: ClearanceSeries, { nearest }: Approach): NearMiss => ({
  step: steps[nearest]!, side, thing, words: THING_WORDS[thing], metres: metres[nearest]!,
});
