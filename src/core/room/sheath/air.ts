import { seals } from './bands.ts';
import { bubbleHalfM, movingPressurePa } from './bubble.ts';
import { alongFromArc, arcFromAlong } from './fromFace.ts';
import { gelLayer } from './gelFlow.ts';
import { footprint, sectionAt, type HeadShape } from './headShape.ts';
import type { Bubble, SheathInside } from './inside.ts';

/** Length of a fingertip along the film (m), ANSUR II: a finger's breadth is 15 to 20 mm. */
const PAD_M = 0.015;

/**
 * A hand closes round the film at `fromM` and slides to `toM`, both in metres from the face along probe and cord; 0 to begin with is
 * the middle of the face. It drives the air in its way ahead of it on both flanks, away from the face or back toward it.
 * @param gripN force of the fingers on each flank
 */
export function squeeze(inside: SheathInside, head: HeadShape, fromM: number, toM: number, gripN: number): SheathInside {
  const from = fromM <= 0 ? 0 : arcFromAlong(head, fromM);
  const to = arcFromAlong(head, Math.max(0, toM));
  return stroke(stroke(inside, head, from, to, gripN), head, -from, -to, gripN);
}

/**
 * Fingers on one side of the film stroke from one arc coordinate to another (m); a thumb that wipes the face is one such. Bubbles ahead
 * of them go along as far as a tight band. One that needs more pressure than the fingers give (N over their area) slips below them.
 */
export function stroke(inside: SheathInside, head: HeadShape, fromS: number, toS: number, pressN: number): SheathInside {
  const way = toS < fromS ? -1 : 1;
  const bubbles = inside.bubbles.map((bubble) => {
    const caught = way * (bubble.sM - fromS) >= 0 && way * (bubble.sM - toS) < bubbleHalfM(bubble, inside, head);
    const pad = PAD_M * 2 * sectionAt(head, alongFromArc(head, bubble.sM)).halfDepthM;
    return caught && pressN / pad >= movingPressurePa(bubble, inside, head) ? pushed(bubble, toS, way, inside, head) : bubble;
  });
  return settleBubbles({ ...inside, bubbles }, head);
}

/**
 * The film between `fromM` and `toM` along (m) slides over the probe by `slideM` toward the face (m, negative away from it). Between a
 * wall at rest and one that moves gel goes half as far (plane Couette flow), and bubbles with it; toward the middle of the face less,
 * evenly, since the film bunches there.
 */
export function dragAir(inside: SheathInside, head: HeadShape, slideM: number, fromM: number, toM: number): SheathInside {
  const [, edge] = footprint(head);
  const from = fromM <= 0 ? 0 : arcFromAlong(head, fromM);
  const to = arcFromAlong(head, toM);
  const bubbles = inside.bubbles.map((bubble) => {
    const arc = Math.abs(bubble.sM);
    if (arc < from || arc > to) return bubble;
    const goal = Math.max(0, arc - 0.5 * slideM * Math.min(1, arc / edge));
    return moved(bubble, bubble.sM < 0 ? 0 - goal : goal, inside, head);
  });
  return settleBubbles({ ...inside, bubbles }, head);
}

/** Lets out what has come to the open end of the sheath, `openM` from the face along probe and cord (m). */
export const ventAir = (inside: SheathInside, head: HeadShape, openM: number): SheathInside => ({ ...inside, bubbles: inside.bubbles.filter(({ sM }) => alongFromArc(head, sM) < openM) });

/** Part of the footprint that lies under air, 0 to 1. Sound does not pass: at tissue against air 99.9 % of it is thrown back. */
export function coveredByAir(inside: SheathInside, head: HeadShape): number {
  const [from, to] = footprint(head);
  let [covered, reached] = [0, from];
  for (const bubble of inside.bubbles) {
    const half = bubbleHalfM(bubble, inside, head);
    const end = Math.min(to, bubble.sM + half);
    covered += Math.max(0, end - Math.max(reached, bubble.sM - half));
    reached = Math.max(reached, end);
  }
  return covered / (to - from);
}

/** Part of the footprint through which sound passes, 0 to 1: neither under air nor without gel. */
export const coupledShare = (inside: SheathInside, head: HeadShape): number => Math.min(1 - coveredByAir(inside, head), gelLayer(inside, head).wetted);

/** Bubbles in order along the outline; those that overlap are one, at the middle of their volume, unless a tight band parts them. */
export function settleBubbles(inside: SheathInside, head: HeadShape): SheathInside {
  const sorted: Bubble[] = [];
  for (let next of [...inside.bubbles].sort((a, b) => a.sM - b.sM || a.ml - b.ml)) {
    for (let last = sorted.at(-1); last && meet(last, next, inside, head); last = sorted.at(-1)) {
      const ml = last.ml + next.ml;
      const one = { sM: (last.sM * last.ml + next.sM * next.ml) / ml, ml };
      next = moved(one, one.sM, inside, head);
      sorted.pop();
    }
    sorted.push(next);
  }
  return { ...inside, bubbles: sorted };
}

function meet(a: Bubble, b: Bubble, inside: SheathInside, head: HeadShape): boolean {
  if (seals(inside, head).some((seal) => seal > a.sM && seal < b.sM)) return false;
  return a.sM + bubbleHalfM(a, inside, head) >= b.sM - bubbleHalfM(b, inside, head);
}

/** The bubble driven so far that its trailing end lies at that arc coordinate: in a narrower gap it is longer. */
function pushed(bubble: Bubble, toS: number, way: 1 | -1, inside: SheathInside, head: HeadShape): Bubble {
  const there = { ...bubble, sM: toS + way * bubbleHalfM(bubble, inside, head) };
  return moved(bubble, toS + way * bubbleHalfM(there, inside, head), inside, head);
}

/** The bubble brought to that arc coordinate, or up to the tight band on the way. */
function moved(bubble: Bubble, toS: number, inside: SheathInside, head: HeadShape): Bubble {
  let [low, high] = [-Infinity, Infinity];
  for (const seal of seals(inside, head)) {
    if (seal <= bubble.sM) low = seal;
    else if (high === Infinity) high = seal;
  }
  const half = Math.min(bubbleHalfM({ ...bubble, sM: Math.min(high, Math.max(low, toS)) }, inside, head), (high - low) / 2);
  return { ...bubble, sM: Math.min(high - half, Math.max(low + half, toS)) };
}
