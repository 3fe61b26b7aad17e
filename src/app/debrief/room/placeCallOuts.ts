import { boxAround, cross, nearestIn, overlap, passes, type Box, type Spot } from './boxes.ts';

/** Words that belong to a marker, with the size that they take up. */
export interface CallOut {
  readonly key: string;
  readonly marker: Spot;
  readonly wide: number;
  readonly high: number;
}

/** A call-out that found room: its box and the end of its leader there. */
export interface PlacedCallOut extends Box {
  readonly key: string;
  readonly tie: Spot;
}

export interface Screen {
  readonly width: number;
  readonly height: number;
  /** What no call-out may cover: hands, face, buttons, legend. */
  readonly taken: readonly Box[];
  /** Lines that are better not covered: the arrows between markers. */
  readonly lines: readonly (readonly [Spot, Spot])[];
}

const EDGE = 10;
const GAP = 8;
const MARKER_HALF = 17;
const FARS = [30, 54, 84, 120, 165, 220, 285, 360, 450];
const WAYS = 20;
/** What a fault of a place costs, in pixels of distance. */
const COST = { leaderCrosses: 260, leaderOverBox: 320, leaderOverTaken: 60, coversLeader: 260, coversLine: 110 };
/** A call-out stays where it is while another place is not better by this much, so that words do not jump about. */
const STAY = 140;

/**
 * Puts call-outs near their markers so that none covers another, a marker, the edge or what is taken, with leaders that cross as little
 * as can be. Those that find no room are left out.
 */
export function placeCallOuts(wanted: readonly CallOut[], before: readonly PlacedCallOut[], screen: Screen): PlacedCallOut[] {
  const markers = wanted.map(({ marker }) => boxAround([marker], MARKER_HALF));
  const placed: Placed[] = [];
  for (const callOut of wanted) {
    const found = best(callOut, before.find(({ key }) => key === callOut.key), placed, markers, screen);
    if (found !== null) placed.push(found);
  }
  return placed.map(({ key, tie, x0, y0, x1, y1 }) => ({ key, tie, x0, y0, x1, y1 }));
}

type Placed = PlacedCallOut & { readonly marker: Spot };

function best(callOut: CallOut, old: PlacedCallOut | undefined, placed: readonly Placed[], markers: readonly Box[], screen: Screen): Placed | null {
  const fits = (box: Box): boolean =>
    box.x0 >= EDGE && box.y0 >= EDGE && box.x1 <= screen.width - EDGE && box.y1 <= screen.height - EDGE
    && !screen.taken.some((other) => overlap(box, other)) && !markers.some((other) => overlap(box, other, 2)) && !placed.some((other) => overlap(box, other, GAP));
  const costOf = (box: Box): number => cost(box, callOut.marker, placed, screen);
  let found: Box | null = null;
  let least = Infinity;
  const { marker: { x, y }, wide, high } = callOut;
  if (x < 0 || y < 0 || x > screen.width || y > screen.height) return null;
  for (const box of candidates(callOut)) {
    if (!fits(box)) continue;
    const price = costOf(box);
    if (price < least) [found, least] = [box, price];
  }
  const kept = old && { x0: old.x0, y0: old.y0, x1: old.x0 + wide, y1: old.y0 + high };
  if (kept && fits(kept) && costOf(kept) < least + STAY) found = kept;
  return found && { ...found, key: callOut.key, marker: { x, y }, tie: nearestIn(found, { x, y }) };
}

function* candidates({ marker, wide, high }: CallOut): Generator<Box> {
  for (const far of FARS) {
    for (let k = 0; k < WAYS; k++) {
      const c = Math.cos((2 * Math.PI * k) / WAYS);
      const s = Math.sin((2 * Math.PI * k) / WAYS);
      const x0 = marker.x + c * (far + wide / 2) - wide / 2;
      const y0 = marker.y + s * (far + high / 2) - high / 2;
      yield { x0, y0, x1: x0 + wide, y1: y0 + high };
    }
  }
}

function cost(box: Box, marker: Spot, placed: readonly Placed[], { taken, lines }: Screen): number {
  const tie = nearestIn(box, marker);
  let price = Math.hypot(tie.x - marker.x, tie.y - marker.y);
  for (const other of placed) {
    if (cross(marker, tie, other.marker, other.tie)) price += COST.leaderCrosses;
    if (passes(marker, tie, other)) price += COST.leaderOverBox;
    if (passes(other.marker, other.tie, box)) price += COST.coversLeader;
  }
  for (const [from, to] of lines) if (passes(from, to, box)) price += COST.coversLine;
  for (const other of taken) if (passes(marker, tie, other)) price += COST.leaderOverTaken;
  return price;
}
