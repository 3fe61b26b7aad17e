/** Work arrays of the chain solve, as long as the longest strand. Index k is a node, or the link after it, counted from the strand's start. */
export class ChainScratch {
  /** Unit vector and excess length (m) of each link at the predicted positions. */
  readonly dirX: Float64Array;
  readonly dirY: Float64Array;
  readonly excess: Float64Array;
  /** What node k adds to the system: to the diagonals of the links before and after it, and off the diagonal of both rows. */
  readonly before: Float64Array;
  readonly after: Float64Array;
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  /** What its offset adds to the right sides of the links before and after it. */
  readonly shiftBefore: Float64Array;
  readonly shiftAfter: Float64Array;
  /** Eliminated pivots and right sides, and the solution: minus the tension times h². */
  readonly pivot: Float64Array;
  readonly forward: Float64Array;
  readonly multiplier: Float64Array;
  /** Links solvedFrom .. solvedTo − 1 are those whose tension the last solve may have changed. */
  solvedFrom = 0;
  solvedTo = 0;
  /** Displacement (m) by which a touching node closes its contact, apart from the chain. */
  readonly offsetX: Float64Array;
  readonly offsetY: Float64Array;
  /** Touching nodes of the strand: `touching` of them. */
  touching = 0;
  readonly touch: Int32Array;
  /** Nodes whose answers are to be written anew. */
  readonly changed: Int32Array;
  /** What closes the gap of a touching node, that plus its load, and how far it has slipped along the surface in this sub-step so far (m). */
  readonly close: Float64Array;
  readonly pressed: Float64Array;
  readonly slip: Float64Array;
  /** Tension (N) at which a link yields because its glued end peels, or −1. */
  readonly yieldTension: Float64Array;

  constructor(size: number) {
    const numbers = (): Float64Array => new Float64Array(size + 1);
    this.dirX = numbers();
    this.dirY = numbers();
    this.excess = numbers();
    this.before = numbers();
    this.after = numbers();
    this.lower = numbers();
    this.upper = numbers();
    this.shiftBefore = numbers();
    this.shiftAfter = numbers();
    this.pivot = numbers();
    this.forward = numbers();
    this.multiplier = numbers();
    this.offsetX = numbers();
    this.offsetY = numbers();
    this.close = numbers();
    this.pressed = numbers();
    this.slip = numbers();
    this.touch = new Int32Array(size + 1);
    this.changed = new Int32Array(size + 1);
    this.yieldTension = numbers().fill(-1);
  }
}
