/** A lump of gel in the pocket that has not reached the closed end: metres from that end, millilitres. */
export interface GelLump {
  readonly toEndM: number;
  readonly ml: number;
}

/**
 * Air between film and probe. `sM` is the arc coordinate of its middle along the outline in metres: 0 at the middle of the face,
 * positive up one flank and negative up the other.
 */
export interface Bubble {
  readonly sM: number;
  readonly ml: number;
}

/** An elastic band round the film: metres from the face along probe and cord, and how often it is wound. */
export interface Band {
  readonly alongM: number;
  readonly turns: number;
}

/** What is between the film and the probe, and what holds the film. Plain data: a snapshot is a copy. */
export interface SheathInside {
  /** Gel at the closed end: between face and film once the face is in. */
  readonly gelMl: number;
  readonly lumps: readonly GelLump[];
  /** In the order of `sM`. */
  readonly bubbles: readonly Bubble[];
  readonly bands: readonly Band[];
  /** Film in excess round the face, by which it can still be drawn toward the cord, in metres. */
  readonly slackM: number;
  readonly torn: boolean;
}

/** An empty sheath. */
export const newInside = (): SheathInside => ({ gelMl: 0, lumps: [], bubbles: [], bands: [], slackM: 0, torn: false });
