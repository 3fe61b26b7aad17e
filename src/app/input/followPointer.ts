/** A point in the room, in metres. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Share of each movement by which the hand may drift towards the pointer. */
const CATCH_UP_SHARE = 0.5;

/**
 * Offset from pointer to hand after the pointer moved by `travel` metres. The hand never jumps: it moves as the pointer moves
 * and uses part of each movement to come to `rest`, its place relative to the pointer (on it for a mouse, above it for a finger).
 */
export function easedOffset(offset: Point, rest: Point, travel: number): Point {
  const dx = rest.x - offset.x;
  const dy = rest.y - offset.y;
  const gap = Math.sqrt(dx * dx + dy * dy);
  const step = CATCH_UP_SHARE * travel;
  if (gap <= step || gap === 0) return rest;
  return { x: offset.x + (dx / gap) * step, y: offset.y + (dy / gap) * step };
}

/** One pointer that leads one hand. */
export class PointerFollow {
  private offset: Point;

  constructor(
    private pointer: Point,
    hand: Point,
    private readonly rest: Point,
  ) {
    this.offset = { x: hand.x - pointer.x, y: hand.y - pointer.y };
  }

  /** Where the hand goes when the pointer goes to `pointer`. */
  moveTo(pointer: Point): Point {
    const dx = pointer.x - this.pointer.x;
    const dy = pointer.y - this.pointer.y;
    this.pointer = pointer;
    this.offset = easedOffset(this.offset, this.rest, Math.sqrt(dx * dx + dy * dy));
    return { x: pointer.x + this.offset.x, y: pointer.y + this.offset.y };
  }
}
