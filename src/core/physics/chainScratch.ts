/** Work arrays of the chain solve, as long as the longest strand. Index k is a link or node counted from the strand's start. */
export class ChainScratch {
  /** Unit vector and excess length of each link at the predicted positions. */
  readonly dirX: Float64Array;
  readonly dirY: Float64Array;
  readonly excess: Float64Array;
  /** The tridiagonal system, its right side that becomes the solution, and the eliminated pivots. */
  readonly lower: Float64Array;
  readonly diagonal: Float64Array;
  readonly upper: Float64Array;
  readonly multiplier: Float64Array;
  readonly pivot: Float64Array;
  /** Nodes whose answer to a force is a matrix (held, or touching something fixed), that matrix (1/kg) and an offset (m). */
  readonly isSpecial: Uint8Array;
  readonly xx: Float64Array;
  readonly xy: Float64Array;
  readonly yx: Float64Array;
  readonly yy: Float64Array;
  readonly offsetX: Float64Array;
  readonly offsetY: Float64Array;
  /** Tension (N) at which a link yields because its glued end peels, or −1. */
  readonly yieldTension: Float64Array;

  constructor(size: number) {
    this.dirX = new Float64Array(size);
    this.dirY = new Float64Array(size);
    this.excess = new Float64Array(size);
    this.lower = new Float64Array(size);
    this.diagonal = new Float64Array(size);
    this.upper = new Float64Array(size);
    this.multiplier = new Float64Array(size);
    this.pivot = new Float64Array(size);
    this.isSpecial = new Uint8Array(size);
    this.xx = new Float64Array(size);
    this.xy = new Float64Array(size);
    this.yx = new Float64Array(size);
    this.yy = new Float64Array(size);
    this.offsetX = new Float64Array(size);
    this.offsetY = new Float64Array(size);
    this.yieldTension = new Float64Array(size).fill(-1);
  }
}
